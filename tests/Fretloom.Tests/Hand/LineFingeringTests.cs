using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Sentences;
using Fretloom.Tests.Neck;
using Fretloom.Theory;

namespace Fretloom.Tests.Hand;

public class LineFingeringTests
{
    private static readonly Player Guitarist = new(Necks.Find("guitar"));

    // Common practice, no source: such melodies are played in first position, or in one position up the neck.
    [Theory]
    [InlineData("guitar", "C3 D3 E3 F3 G3 A3 B3 C4", "5:3 4:0 4:2 4:3 3:0 3:2 2:0 2:1")]
    [InlineData("guitar", "E4 E4 F4 G4 G4 F4 E4 D4 C4", "1:0 1:0 1:1 1:3 1:3 1:1 1:0 2:3 2:1")]
    [InlineData("guitar", "E2 F2 F#2 G2 G#2 A2", "6:0 6:1 6:2 6:3 6:4 5:0")]
    [InlineData("ukulele", "C4 D4 E4 F4 G4 A4 B4 C5", "3:0 3:2 2:0 2:1 2:3 1:0 1:2 1:3")]
    [InlineData("mandolin", "G3 A3 B3 C4 D4 E4 F#4 G4", "4:0 4:2 4:4 4:5 3:0 3:2 3:4 3:5")]
    [InlineData("bass", "E1 F1 G1 A1 B1 C2 D2 E2", "4:0 4:1 4:3 3:0 3:2 3:3 2:0 2:2")]
    public void Free_lines_lie_where_they_are_usually_played(string instrument, string pitches, string spots) =>
        Assert.Equal(
            spots,
            string.Join(
                ' ',
                Find(new Player(Necks.Find(instrument)), Free(pitches)).Best!.Notes.Select(note => note.Spot)
            )
        );

    [Fact]
    public void The_thumb_changes_nothing() =>
        Assert.Equal(
            Find(Guitarist, Spots("6:3 6:5 5:3 5:5")).Fingerings,
            Find(Guitarist with { UsesThumb = true }, Spots("6:3 6:5 5:3 5:5")).Fingerings
        );

    // The string farther from the floor goes to the higher finger only at a price; turned over, the other way round.
    [Fact]
    public void An_instrument_turned_over_has_its_strings_the_other_way_round()
    {
        var notes = Spots("5:7 4:7");

        Assert.Equal("2 3", Fingers(Find(Guitarist, notes)));
        Assert.Equal("3 2", Fingers(Find(Guitarist with { IsTurnedOver = true }, notes)));
    }

    [Fact]
    public void The_short_string_of_a_banjo_is_open_at_its_fifth_fret()
    {
        var banjo = new Player(Necks.Find("banjo"));

        Assert.Equal("0 1 0 2", Fingers(Find(banjo, Spots("5:5 2:1 5:5 1:2"))));
        Assert.Equal("Note 2, 5:3: string 5 has frets 5 to 22 only.", Find(banjo, Spots("5:5 5:3")).Refusal!.Message);
    }

    // Common practice, no source: the short string is tied to a peg at its own nut, and nothing of it lies below.
    [Fact]
    public void No_free_line_presses_the_short_string_of_a_banjo_before_its_own_nut() =>
        (
            from capo in Gen.Int[0, 12]
            let banjo = Necks.Find("banjo").WithCapo(capo)
            let lowest = banjo.OpenPitches.Min(pitch => pitch.MidiNumber)
            from midi in Gen.Int[lowest, banjo.OpenPitches[0].MidiNumber + banjo.LastFret].Array[1, 8]
            select (banjo, notes: midi.Select(LineNote (one) => new LineNote.Sounding(Pitch.FromMidiNumber(one))))
        ).Sample(
            line =>
                Assert.All(
                    Find(new Player(line.banjo), line.notes.ToValueList()).Fingerings.SelectMany(one => one.Notes),
                    note =>
                    {
                        var starts = line.banjo.String(note.Spot.String).StartsAtFret;
                        Assert.True(note.Spot.Fret >= starts, $"{note.Spot} lies before fret {starts}.");
                        Assert.Equal(note.Spot.Fret == starts, note.Finger == Finger.None);
                    }
                ),
            iter: 200
        );

    [Fact]
    public void With_a_capo_frets_are_counted_from_it()
    {
        var answer = Find(new Player(Necks.Find("guitar").WithCapo(2)), Free("D3 E3 F#3 G3 A3 B3 C#4 D4"));

        Assert.Equal("5:3 4:0 4:2 4:3 3:0 3:2 2:0 2:1", string.Join(' ', answer.Best!.Notes.Select(note => note.Spot)));
    }

    [Theory]
    [InlineData("start with finger 1", "5:5 5:7 4:4 4:5", "1 ")]
    [InlineData("end with finger 3", "5:5 5:8", "1 3")]
    [InlineData("never finger 4", "5:5 5:8", "1 3")]
    [InlineData("note 2 with finger 3", "5:5 5:8", "1 3")]
    public void Fingers_keep_the_rules(string rule, string spots, string start) =>
        Assert.StartsWith(start, Fingers(Find(Guitarist, Spots(spots), rule)), StringComparison.Ordinal);

    [Theory]
    [InlineData("no open strings", "E4 F4", "2:5 2:6")]
    [InlineData("note 1 on string 3", "E4 F4", "3:9 2:6")]
    [InlineData("start on string 3", "E4 F4", "3:9 2:6")]
    [InlineData("within frets 9-12", "E4 F4", "3:9 3:10")]
    [InlineData("stay in position 9", "E4 F4", "3:9 3:10")]
    public void Spots_keep_the_rules(string rule, string pitches, string spots)
    {
        var found = Find(Guitarist, Free(pitches), rule).Best!.Notes;

        Assert.Equal(spots.Split(' ')[0], found[0].Spot.ToString());
        Assert.DoesNotContain(found, note => rule == "no open strings" && note.Finger == Finger.None);
    }

    [Theory]
    [InlineData("C2", "Note 1, C2, is on no string: a guitar sounds E2 to D6. C3 would go.")]
    [InlineData("E4 C9", "Note 2, C9, is on no string: a guitar sounds E2 to D6. C6 would go.")]
    public void A_note_that_no_string_has_is_named_with_what_would_go(string pitches, string message) =>
        Assert.Equal(message, Find(Guitarist, Free(pitches)).Refusal!.Message);

    [Fact]
    public void A_string_that_is_not_there_is_named() =>
        Assert.Equal("Note 1, 7:30: a guitar has 6 strings.", Find(Guitarist, Spots("7:30")).Refusal!.Message);

    [Fact]
    public void A_fret_before_its_string_is_turned_round() =>
        Assert.Equal(
            "Note 1, 9:4: a guitar has 6 strings. The string stands first: did you mean 4:9?",
            Find(Guitarist, Spots("9:4")).Refusal!.Message
        );

    [Fact]
    public void A_line_without_notes_is_refused() =>
        Assert.Equal("A line needs at least one note.", Find(Guitarist, []).Refusal!.Message);

    [Theory]
    [InlineData("5:3 4:0", 1, "no open strings", "never finger 4")]
    [InlineData("5:3 4:0", 0, "note 1 open", "never finger 4")]
    [InlineData("5:3 4:0", 1, "end with finger 1", "never finger 4")]
    [InlineData("5:3 4:0", 1, "end on string 3", "never finger 4")]
    [InlineData("5:3 4:0", 0, "start on string 4", "never finger 4")]
    [InlineData("5:3 4:12", 1, "stay in position 1", "never finger 4")]
    [InlineData("5:3 4:4 4:6", 2, "within frets 0-5", "start with finger 1")]
    [InlineData("5:3 4:4 5:3", 1, "note 2 on string 3", "no open strings")]
    public void A_rule_that_cannot_be_kept_is_named_with_its_note(string spots, int note, string rule, string other)
    {
        var refusal = Find(Guitarist, Spots(spots), other, rule).Refusal!;

        Assert.StartsWith(
            $"No fingering keeps the rule '{rule}': nothing is left for note {note + 1} (",
            refusal.Message,
            StringComparison.Ordinal
        );
        Assert.Equal((note, 1), (refusal.Note, refusal.Rule));
    }

    [Fact]
    public void Rules_that_contradict_each_other_are_both_named_and_no_others()
    {
        var refusal = Find(
            Guitarist,
            Spots("5:5 5:6 5:7"),
            "no open strings",
            "note 2 with finger 1",
            "never finger 4",
            "stay in position 3"
        ).Refusal!;

        Assert.Equal(
            "No fingering keeps the rules 'note 2 with finger 1' and 'stay in position 3' together: nothing is left for note 2 (5:6). Leave out one of them.",
            refusal.Message
        );
        Assert.Equal(1, refusal.Note);
    }

    [Theory]
    [InlineData("note 4 open", "'note 4 open': the line has 2 notes only.")]
    [InlineData("start on string 7", "'start on string 7': a guitar has 6 strings.")]
    [InlineData("end on string 7", "'end on string 7': a guitar has 6 strings.")]
    [InlineData("note 1 on string 7", "'note 1 on string 7': a guitar has 6 strings.")]
    public void A_rule_about_what_is_not_there_is_named(string rule, string message)
    {
        var refusal = Find(Guitarist, Spots("5:5 5:7"), rule).Refusal!;

        Assert.Equal(message, refusal.Message);
        Assert.Equal(0, refusal.Rule);
    }

    [Fact]
    public void A_hundred_thousand_notes_are_fingered()
    {
        var scale = "C3 D3 E3 F3 G3 A3 B3 C4 B3 A3 G3 F3 E3 D3".Split(' ').Select(Pitch.Parse).ToArray();
        var notes = Enumerable
            .Range(0, 100_000)
            .Select(LineNote (at) => new LineNote.Sounding(scale[at % scale.Length]))
            .ToValueList();

        var answer = LineFingering.Find(Guitarist, notes, [], 3);

        Assert.Equal(3, answer.Fingerings.Count);
        Assert.All(answer.Fingerings, fingering => Assert.Equal(100_000, fingering.Notes.Count));
        Assert.Equal("5:3 4:0 4:2 4:3", string.Join(' ', answer.Best!.Notes.Take(4).Select(note => note.Spot)));
    }

    [Fact]
    public void No_more_fingerings_come_back_than_can_be_kept() =>
        Assert.Equal(
            5_000,
            LineFingering
                .Find(Guitarist, Free("C4 D4 E4 F4 G4 A4 B4 C5"), [], int.MaxValue)
                .Fingerings.Distinct()
                .Count()
        );

    [Fact]
    public void A_line_too_long_to_weigh_is_refused()
    {
        var notes = Enumerable.Repeat<LineNote>(new LineNote.At(new Spot(1, 1)), 300_000).ToValueList();

        Assert.Contains(
            "is too long: at most",
            LineFingering.Find(Guitarist, notes, []).Refusal!.Message,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void What_a_fingering_costs_is_said_in_words()
    {
        var best = Find(Guitarist, Spots("1:5 1:8 1:12 1:15")).Best!;

        Assert.Equal("1 4 1 4", string.Join(' ', best.Notes.Select(note => (int)note.Finger)));
        Assert.StartsWith("1 shift, ", best.Terms.Single(term => term.Name == "shift").Words, StringComparison.Ordinal);
        Assert.Equal(best.Terms.OrderByDescending(term => term.Cost), best.Terms);
    }

    [Fact]
    public void The_stretch_is_that_of_fingers_in_one_position()
    {
        var best = Find(Guitarist, Spots("6:5 6:7 6:9")).Best!;

        Assert.Equal("1 2 4", string.Join(' ', best.Notes.Select(note => (int)note.Finger)));
        Assert.Equal(Guitarist.Instrument.StretchMm(best.Notes.Select(note => note.Spot)), best.StretchMm, 1e-9);
    }

    [Fact]
    public void Open_strings_alone_stretch_nothing()
    {
        var best = Find(Guitarist, Spots("6:0 5:0 4:0")).Best!;

        Assert.Equal(0, best.StretchMm);
        Assert.Null(best.Widest);
    }

    internal static ValueList<LineNote> Spots(string spots) =>
        spots.Split(' ').Select(LineNote (text) => new LineNote.At(Spot.Parse(text))).ToValueList();

    private static ValueList<LineNote> Free(string pitches) =>
        pitches.Split(' ').Select(LineNote (text) => new LineNote.Sounding(Pitch.Parse(text))).ToValueList();

    private static FingeringAnswer Find(Player player, ValueList<LineNote> notes, params string[] rules) =>
        LineFingering.Find(player, notes, rules.Select(rule => RuleParser.Parse(rule).Value!).ToValueList());

    private static string Fingers(FingeringAnswer answer) =>
        string.Join(' ', answer.Best!.Notes.Select(note => (int)note.Finger));
}
