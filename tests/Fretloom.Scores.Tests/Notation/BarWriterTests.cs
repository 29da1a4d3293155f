using CsCheck;
using Fretloom.Exercises;
using Fretloom.Exercises.Notation;
using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Testing;

namespace Fretloom.Scores.Tests.Notation;

public class BarWriterTests
{
    // A beat falls into four or three; each of its parts begins a note, begins a silence or goes on.
    private static readonly Gen<Exercise> Rhythms =
        from metre in Gen.Int[0, Metre.All.Count - 1].Select(at => Metre.All[at])
        from bars in Gen.Int[1, 3]
        from beats in Gen.Select(Gen.Int[0, 2].Select(at => new[] { 3, 4, 6 }[at]), Gen.Int[0, 5].Array[6])
            .Array[bars * metre.BeatsPerBar]
            .Where(beats => beats.Any(beat => beat.Item2.Take(3).Any(what => what is > 0 and < 4)))
        select Played.InRhythm(
            metre,
            beats.SelectMany(beat =>
            {
                var parts =
                    metre.IsCompound ? (beat.Item1 == 4 ? 6 : beat.Item1)
                    : beat.Item1 == 6 ? 4
                    : beat.Item1;
                return beat
                    .Item2.Take(parts)
                    .Select(what =>
                        (
                            Beats.FromTicks(metre.Beat.Ticks / parts),
                            what switch
                            {
                                0 => '.',
                                < 4 => 'o',
                                _ => '-',
                            }
                        )
                    );
            })
        );

    [Fact]
    public void Figures_fill_each_bar_without_gap() =>
        Rhythms.Sample(exercise =>
        {
            var bars = BarWriter.Write(exercise);
            Assert.Equal(exercise.Bars, bars.Count);
            foreach (var bar in bars)
            {
                var at = bar.At;
                foreach (var figure in bar.Figures)
                {
                    Assert.Equal(at, figure.At);
                    at = figure.End;
                }

                Assert.Equal(bar.At + exercise.Metre.Bar, at);
            }
        });

    [Fact]
    public void Tied_figures_give_the_notes_back() =>
        Rhythms.Sample(exercise =>
        {
            var figures = BarWriter.Write(exercise).SelectMany(bar => bar.Figures).ToList();
            var notes = new List<(Beats At, Beats End)>();
            for (var at = 0; at < figures.Count; at++)
            {
                Assert.Equal(at > 0 && figures[at - 1].IsTiedOn, figures[at].IsTiedBack);
                Assert.False(figures[at].IsRest && figures[at].IsTiedOn);
                if (figures[at].IsTiedBack)
                {
                    Assert.Equal(figures[at - 1].Notes, figures[at].Notes);
                    notes[^1] = (notes[^1].At, figures[at].End);
                }
                else if (!figures[at].IsRest)
                {
                    notes.Add((figures[at].At, figures[at].End));
                }
            }

            Assert.Equal(exercise.Notes.Select(note => (note.At, note.End)), notes);
        });

    [Fact]
    public void Nothing_begun_off_the_beat_hides_the_next_beat() =>
        Rhythms.Sample(exercise =>
        {
            var beat = exercise.Metre.Beat;
            foreach (var figure in BarWriter.Write(exercise).SelectMany(bar => bar.Figures))
            {
                var inBeat = figure.At % beat;
                Assert.True(inBeat.Ticks == 0 || inBeat + figure.Length <= beat, $"{figure.At} {figure.Value}");
                Assert.True(inBeat + figure.Length <= beat || (figure.End % beat).Ticks == 0);
            }
        });

    [Fact]
    public void Beams_are_well_formed() =>
        Rhythms.Sample(exercise =>
        {
            foreach (var bar in BarWriter.Write(exercise))
            {
                for (var level = 0; level < 3; level++)
                {
                    var isOpen = false;
                    foreach (var figure in bar.Figures)
                    {
                        Beam? beam = figure.Beams.Count > level ? figure.Beams[level] : null;
                        Assert.Equal(isOpen, beam is Beam.Continue or Beam.End);
                        isOpen = beam is Beam.Begin or Beam.Continue;
                    }

                    Assert.False(isOpen);
                }

                foreach (var figure in bar.Figures.Where(figure => figure.Beams.Count > 0))
                {
                    Assert.False(figure.IsRest);
                    Assert.Equal(figure.Value.Beams, figure.Beams.Count);
                    Assert.DoesNotContain(figure.Beams[0], new[] { Beam.ForwardHook, Beam.BackwardHook });
                }
            }
        });

    [Fact]
    public void Brackets_pair_and_hold_a_beat() =>
        Rhythms.Sample(exercise =>
        {
            foreach (var bar in BarWriter.Write(exercise))
            {
                Beats? begun = null;
                foreach (var figure in bar.Figures)
                {
                    Assert.Equal(figure.Value.IsTriplet, figure.Bracket != Bracket.None);
                    Assert.Equal(begun is not null, figure.Bracket is Bracket.Inside or Bracket.Stop);
                    if (figure.Bracket == Bracket.Start)
                    {
                        begun = figure.At;
                    }
                    else if (figure.Bracket == Bracket.Stop)
                    {
                        Assert.Equal(exercise.Metre.Beat, figure.End - begun!.Value);
                        begun = null;
                    }
                }

                Assert.Null(begun);
            }
        });

    [Fact]
    public void Rhythms_are_written_as_a_player_reads_them()
    {
        (string Metre, string Rhythm)[] rhythms =
        [
            ("4/4", "o--- o--- o--- o---"),
            ("4/4", "o-o- o-o- o-o- o-o-"),
            ("4/4", "oooo o-oo ooo- o-o-"),
            ("4/4", "o--o o-o- --o- --o-"),
            ("4/4", "o--- ---- ---- o---"),
            ("4/4", "o--- o--- ---- ----"),
            ("4/4", "o-o- ---- ---- ----"),
            ("4/4", "ooo o-o oo- o--"),
            ("4/4", ".oo o.o o-- oo."),
            ("4/4", "o--- .... .... o---"),
            ("4/4", "o--- .... .... ...."),
            ("4/4", ".... .... .... .... o--- ---- ---- ----"),
            ("4/4", "o-.. ..o- o.o. ..o."),
            ("3/4", "o--- ---- ---- o--- o--- ...."),
            ("5/4", "o--- ---- ---- ---- ----"),
            ("2/4", "o-o- o-oo"),
            ("6/8", "ooo ooo o-o o-o o-- ---"),
            ("6/8", "oooooo o-ooo- o-o--- ......"),
            ("9/8", "ooo o-- --- o-- --- ---"),
            ("12/8", "o-- --- --- ooo o-- --- --- ---"),
        ];
        Approved.Matches(
            string.Concat(rhythms.Select(rhythm => RhythmText.Of(rhythm.Metre, rhythm.Rhythm) + "\n")),
            "Fretloom.Scores.Tests",
            "Notation",
            "rhythms.txt"
        );
    }

    [Theory]
    [InlineData("guitar", 'G', -1)]
    [InlineData("bass", 'F', -1)]
    [InlineData("ukulele", 'G', 0)]
    [InlineData("mandolin", 'G', 0)]
    [InlineData("banjo", 'G', -1)]
    [InlineData("seven-string guitar", 'G', -1)]
    [InlineData("eight-string guitar", 'G', -1)]
    [InlineData("baritone guitar", 'G', -1)]
    [InlineData("five-string bass", 'F', -1)]
    [InlineData("bass in guitar tuning", 'F', -1)]
    public void Clefs_are_those_of_the_trade(string instrument, char sign, int octave)
    {
        var clef = StaffClef.For(Named(instrument));
        Assert.Equal((sign, octave), (clef.Sign, clef.OctaveChange));
    }

    [Fact]
    public void A_capo_changes_no_clef() =>
        Assert.All(
            Catalogue.All,
            instrument =>
                Assert.All(
                    Enumerable.Range(1, instrument.Frets - 1),
                    capo => Assert.Equal(StaffClef.For(instrument), StaffClef.For(instrument.WithCapo(capo)))
                )
        );

    private static Instrument Named(string name) =>
        Catalogue.TryFind(name, out var instrument) ? instrument : throw new ArgumentException(name, nameof(name));
}
