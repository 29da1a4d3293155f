using Fretloom.Exercises;
using Fretloom.Exhibits;
using Fretloom.Sentences;
using Fretloom.Testing;

namespace Fretloom.Tests.Exercises;

/// <summary>The values that exercises are made of: what they can hold, and what they refuse.</summary>
public class ExerciseValueTests
{
    private static readonly Exercise Scale = PlayQuestion.Answer("the scale", ShowDefaults.Standard).Value!;

    [Fact]
    public void An_exercise_has_notes_passes_and_a_key_from_the_beginning_on()
    {
        Assert.Throws<ArgumentException>(() => Scale with { Notes = [] });
        Assert.Throws<ArgumentException>(() => Scale with { Passes = [] });
        Assert.Throws<ArgumentException>(() => Scale with { Sections = [] });
        Assert.Throws<ArgumentException>(() => Scale with { Sections = [new(Beats.Quarter, Scale.Key, null)] });
        Assert.Throws<ArgumentOutOfRangeException>(() => Scale with { CountInBars = 5 });
        Assert.Throws<ArgumentOutOfRangeException>(() => Scale with { CountInBars = -1 });
    }

    [Fact]
    public void Notes_between_two_places_are_those_that_begin_there() =>
        Gen.Select(Gen.Int[0, 9000], Gen.Int[0, 9000])
            .Sample(
                (one, other) =>
                {
                    var (begin, end) = (Beats.FromTicks(Math.Min(one, other)), Beats.FromTicks(Math.Max(one, other)));
                    Assert.Equal(
                        Scale.Notes.Where(note => note.At >= begin && note.At < end),
                        Scale.NotesIn(begin, end)
                    );
                }
            );

    [Fact]
    public void A_sentence_holds_times_and_bars_in_range_only()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new PlaySentence { Times = 0 });
        Assert.Throws<ArgumentOutOfRangeException>(() => new PlaySentence { Times = 100 });
        Assert.Throws<ArgumentOutOfRangeException>(() => new PlaySentence { CountInBars = 5 });
        Assert.Throws<ArgumentOutOfRangeException>(() => new PlaySentence { EchoBars = 17 });
        Assert.Null(new PlaySentence { Times = null }.Times);
    }

    [Fact]
    public void Every_metre_reads_back_and_is_whole_beats_long()
    {
        foreach (var metre in Metre.All)
        {
            Assert.Equal(metre, Metre.Parse(metre.ToString()));
            Assert.Equal(metre.Bar, metre.Beat * metre.BeatsPerBar);
        }

        Assert.Equal("4/4", default(Metre).ToString());
        Assert.Throws<FormatException>(() => Metre.Parse("7/8"));
    }

    [Fact]
    public void A_ladder_climbs_by_its_step_and_ends_where_it_should()
    {
        for (var first = Tempo.Slowest; first <= Tempo.Fastest; first += 7)
        {
            for (var last = first; last <= Tempo.Fastest; last += 11)
            {
                for (var step = 5; step <= 280; step += 25)
                {
                    var rungs = new TempoLadder(new Tempo(first), new Tempo(last), step)
                        .Rungs.Select(rung => rung.BeatsPerMinute)
                        .ToList();
                    Assert.Equal((first, last), (rungs[0], rungs[^1]));
                    Assert.All(
                        rungs.Zip(rungs.Skip(1)).SkipLast(1),
                        pair => Assert.Equal(step, pair.Second - pair.First)
                    );
                }
            }
        }
    }

    [Theory]
    [InlineData(60, 96, 0)]
    [InlineData(60, 96, 281)]
    [InlineData(60, 96, int.MaxValue)]
    [InlineData(96, 60, 6)]
    [InlineData(20, 300, 1)]
    public void A_ladder_that_cannot_be_climbed_is_refused(int first, int last, int step) =>
        Assert.ThrowsAny<ArgumentException>(() => new TempoLadder(new Tempo(first), new Tempo(last), step));

    [Fact]
    public void A_tempo_is_20_to_300_and_72_by_default()
    {
        Assert.Equal(72, default(Tempo).BeatsPerMinute);
        Assert.Throws<ArgumentOutOfRangeException>(() => new Tempo(19));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Tempo(301));
    }

    // Every row of 4 to 9 notes in every way: what a teacher would write down note by note.
    [Fact]
    public void Groups_are_whole_overlap_and_come_back_the_way_they_went()
    {
        foreach (var grouping in Enum.GetValues<Grouping>())
        {
            for (var count = Ways.Least(grouping); count <= 9; count++)
            {
                var up = Ways.Through(count, Direction.Up, grouping).ToList();
                Assert.Equal((0, count - 1), (up.Min(), up.Max()));
                Assert.Equal(
                    up.ConvertAll(place => count - 1 - place),
                    Ways.Through(count, Direction.Down, grouping).ToList()
                );
            }
        }

        Assert.Equal("0 2 1 3 2 4", string.Join(' ', Ways.Through(5, Direction.Up, Grouping.BrokenThirds)));
        Assert.Equal("0 1 2 3 1 2 3 4", string.Join(' ', Ways.Through(5, Direction.Up, Grouping.Fours)));
        Assert.Equal("0 1 2 3 2 1 0", string.Join(' ', Ways.Through(4, Direction.UpAndDown, Grouping.Plain)));
        Assert.Equal("3 2 1 0 1 2 3", string.Join(' ', Ways.Through(4, Direction.DownAndUp, Grouping.Plain)));
    }

    [Fact]
    public void A_strum_pattern_reads_as_it_was_said_and_lies_in_its_bar()
    {
        Gen.Bool.Array[1, 3]
            .Array[1, 4]
            .Sample(groups =>
            {
                var pattern = new StrumPattern(groups.Select(group => group.ToValueList()));
                foreach (var metre in Metre.All)
                {
                    if (pattern.In(metre) is not { } strokes)
                    {
                        continue;
                    }

                    Assert.True(strokes.Count % pattern.Strokes.Count == 0);
                    Assert.All(
                        strokes.Zip(strokes.Skip(1)),
                        pair => Assert.True(pair.First.Eighth < pair.Second.Eighth)
                    );
                    Assert.True(Beats.Of(strokes[^1].Eighth + 1, 8) <= metre.Bar);
                    if (!metre.IsCompound)
                    {
                        Assert.All(strokes, stroke => Assert.Equal(stroke.IsDown, stroke.Eighth % 2 == 0));
                    }
                }
            });
        Assert.Throws<ArgumentException>(() => new StrumPattern([]));
        Assert.Throws<ArgumentException>(() =>
            new StrumPattern([
                [],
            ])
        );
    }
}
