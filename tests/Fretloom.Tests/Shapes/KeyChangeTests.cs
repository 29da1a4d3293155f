using Fretloom.Neck;
using Fretloom.Shapes;
using Fretloom.Tests.Neck;
using Fretloom.Theory;

namespace Fretloom.Tests.Shapes;

public class KeyChangeTests
{
    private static readonly Gen<KeyChange> AnyChange = Gen.Select(Necks.AnyMap, Necks.AnyKey, KeyChange.Between);

    // Common practice, no source: C major and G major differ by F and F sharp.
    [Fact]
    public void From_C_major_to_G_major_only_F_gives_way()
    {
        var change = Change("guitar", "C major", "6-1", "0-12", "G major");

        Assert.All(change.Leaves, note => Assert.Equal("F", note.Pitch.Name.ToString()));
        Assert.All(change.Arrives, note => Assert.Equal("F#", note.Pitch.Name.ToString()));
        Assert.All(change.Stays, kept => Assert.Equal(kept.Before.Pitch, kept.After.Pitch));
        Assert.Equal("-5, -5, -5, -5, -5, -5, -5", change.FretOffsets.ToString());
    }

    [Fact]
    public void From_major_to_the_minor_of_one_tonic_three_degrees_move_down_a_fret() =>
        Assert.Equal(
            "0, 0, -1, 0, 0, -1, -1",
            Change("bass", "A major", "4-1", "0-12", "A minor").FretOffsets.ToString()
        );

    [Theory]
    [InlineData("C major", "F major", 5)]
    [InlineData("C major", "F# major", 6)]
    [InlineData("C major", "Gb major", 6)]
    [InlineData("C major", "G major", -5)]
    [InlineData("C major", "B major", -1)]
    [InlineData("B major", "C major", 1)]
    [InlineData("F# major", "Gb major", 0)]
    public void The_tonic_goes_the_shorter_way(string from, string to, int offset) =>
        Assert.Equal(offset, Change("guitar", from, "6-1", "0-12", to).FretOffsets[0]);

    [Fact]
    public void What_falls_off_one_end_comes_back_an_octave_away()
    {
        var down = Change("guitar", "C major", "6", "0-11", "B major").Moves;
        var up = Change("guitar", "C major", "6", "0-11", "Db major").Moves;

        Assert.Equal(
            ["0 > 11 AtLowEnd", "1 > 0 None", "3 > 2 None", "5 > 4 None", "7 > 6 None", "8 > 7 None", "10 > 9 None"],
            down.Select(Text)
        );
        Assert.Equal(
            ["0 > 1 None", "1 > 2 None", "3 > 4 None", "5 > 6 None", "7 > 8 None", "8 > 9 None", "10 > 11 None"],
            up.Select(Text)
        );
        Assert.Equal("11 > 0 AtHighEnd", Text(Change("guitar", "B major", "6", "0-11", "C major").Moves[^1]));
    }

    [Fact]
    public void On_a_short_range_a_note_may_have_nowhere_to_go() =>
        Assert.Equal(
            ["0 > nowhere AtLowEnd", "1 > 0 None"],
            Change("guitar", "C major", "6", "0-1", "B major").Moves.Select(Text)
        );

    [Fact]
    public void A_short_string_wraps_where_it_begins()
    {
        var moves = Change("banjo", "G major", "5", "0-17", "Gb major").Moves;

        Assert.Equal("5 > 16 AtLowEnd", Text(moves[0]));
    }

    [Fact]
    public void Every_note_becomes_the_note_of_its_own_degree_on_its_own_string() =>
        AnyChange.Sample(change =>
        {
            Assert.Equal(change.From.NotesOfKey, change.Moves.Select(move => move.Before));
            foreach (var move in change.Moves)
            {
                if (move.After is { } after)
                {
                    var octaves = move.Wrap switch
                    {
                        Wrap.AtLowEnd => 12,
                        Wrap.AtHighEnd => -12,
                        _ => 0,
                    };
                    Assert.Equal(move.Before.Degree, after.Degree);
                    Assert.Equal(move.Before.Spot.String, after.Spot.String);
                    Assert.Equal(move.Before.Spot.Fret + move.Offset + octaves, after.Spot.Fret);
                    Assert.True(change.To.Frets.Contains(after.Spot.Fret));
                }
                else
                {
                    Assert.NotEqual(Wrap.None, move.Wrap);
                    Assert.True(
                        change.From.Frets.Count < 14
                            || change.From.Instrument.Strings.Any(course => course.StartsAtFret > 0)
                    );
                }
            }
        });

    [Fact]
    public void What_stays_leaves_and_arrives_makes_up_both_keys() =>
        AnyChange.Sample(change =>
        {
            var kept = change.Stays.Select(kept => kept.Before.Spot).ToList();

            Assert.Equal(
                change.From.NotesOfKey.ToHashSet(),
                change.Stays.Select(kept => kept.Before).Concat(change.Leaves).ToHashSet()
            );
            Assert.Equal(
                change.To.NotesOfKey.ToHashSet(),
                change.Stays.Select(kept => kept.After).Concat(change.Arrives).ToHashSet()
            );
            Assert.Empty(kept.Intersect(change.Leaves.Select(note => note.Spot)));
            Assert.Empty(kept.Intersect(change.Arrives.Select(note => note.Spot)));
            Assert.All(change.Stays, kept => Assert.Equal(kept.Before.Pitch.MidiNumber, kept.After.Pitch.MidiNumber));
        });

    [Fact]
    public void On_twelve_frets_the_notes_of_two_keys_are_paired_one_to_one() =>
        Gen.Select(Necks.AnyInstrument, Necks.AnyKey, Necks.AnyKey, Gen.Int[0, 3])
            .Sample(
                (instrument, from, to, first) =>
                {
                    var strings = new StringSet(
                        instrument.AllStrings.Numbers.Where(number => instrument.String(number).StartsAtFret == 0)
                    );
                    if (instrument.Frets < first + 11)
                    {
                        return;
                    }

                    var map = new NeckMap(instrument, from, strings, new FretRange(first, first + 11));
                    var change = KeyChange.Between(map, to);

                    Assert.All(change.Moves, move => Assert.NotNull(move.After));
                    Assert.Equal(
                        change.To.NotesOfKey.ToHashSet(),
                        change.Moves.Select(move => move.After!.Value).ToHashSet()
                    );
                    Assert.Equal(change.Moves.Count, change.Moves.Select(move => move.After).Distinct().Count());
                }
            );

    [Fact]
    public void A_key_changed_into_itself_does_not_move() =>
        Necks.AnyMap.Sample(map =>
        {
            var change = KeyChange.Between(map, map.Key);

            Assert.All(
                change.Moves,
                move => Assert.Equal((move.Before, 0, Wrap.None), (move.After!.Value, move.Offset, move.Wrap))
            );
            Assert.Empty(change.Leaves);
            Assert.Empty(change.Arrives);
        });

    [Fact]
    public void The_way_back_lets_go_what_came_and_brings_what_left() =>
        AnyChange.Sample(change =>
        {
            var back = KeyChange.Between(change.To, change.From.Key);

            Assert.Equal(change.Leaves, back.Arrives);
            Assert.Equal(change.Arrives, back.Leaves);
            Assert.Equal(change.Stays.Select(kept => new KeptNote(kept.After, kept.Before)), back.Stays);
        });

    private static KeyChange Change(string instrument, string from, string strings, string frets, string to) =>
        KeyChange.Between(Necks.Map(instrument, from, strings, frets), Key.Parse(to));

    private static string Text(NoteMove move) =>
        $"{move.Before.Spot.Fret} > {move.After?.Spot.Fret.ToString(System.Globalization.CultureInfo.InvariantCulture) ?? "nowhere"} {move.Wrap}";
}
