using Fretloom.Hand;
using Fretloom.Neck;

namespace Fretloom.Tests.Hand;

public class ChordFingeringTests
{
    /// <summary>Common practice, no source: what every method begins with. Frets and fingers from the string farthest from the floor.</summary>
    [Theory]
    [InlineData("guitar", "x 3 2 0 1 0", "32010")] // C
    [InlineData("guitar", "x 0 2 2 1 0", "02310")] // Am
    [InlineData("guitar", "x x 0 2 3 2", "0132")] // D
    [InlineData("guitar", "x x 0 2 3 1", "0231")] // Dm
    [InlineData("guitar", "0 2 2 1 0 0", "023100")] // E
    [InlineData("guitar", "3 2 0 0 0 3", "210003")] // G
    [InlineData("guitar", "0 2 0 1 0 0", "020100")] // E7
    [InlineData("guitar", "x 2 1 2 0 2", "21304")] // B7
    [InlineData("guitar", "x x 0 2 1 2", "0213")] // D7
    [InlineData("guitar", "3 2 0 0 0 1", "320001")] // G7
    [InlineData("guitar", "1 3 3 2 1 1", "134211")] // F
    [InlineData("guitar", "2 4 4 2 2 2", "134111")] // F#m
    [InlineData("guitar", "x 2 4 4 3 2", "13421")] // Bm
    [InlineData("guitar", "8 10 10 9 8 8", "134211")] // C, the barre at fret 8
    [InlineData("guitar", "x x 3 2 1 1", "3211")] // F on four strings
    [InlineData("seven-string guitar", "x 1 3 3 2 1 1", "134211")] // F
    [InlineData("ukulele", "0 0 0 3", "0003")] // C
    [InlineData("ukulele", "2 0 1 0", "2010")] // F
    [InlineData("ukulele", "0 2 3 2", "0132")] // G
    [InlineData("ukulele", "0 2 1 2", "0213")] // G7
    [InlineData("ukulele", "2 2 2 0", "1230")] // D
    [InlineData("ukulele", "3 2 1 1", "3211")] // Bb
    [InlineData("mandolin", "7 5 2 3", "4312")] // G, all strings stopped
    [InlineData("bass", "3 5 5 x", "134")] // G, root, fifth and octave
    [InlineData("banjo", "x 2 0 1 2", "2013")] // C
    [InlineData("banjo", "x 0 2 1 0", "0210")] // D7
    [InlineData("banjo", "x 2 2 1 2", "2314")] // E
    public void Chords_that_everyone_knows_take_the_fingers_that_everyone_uses(
        string instrument,
        string frets,
        string fingers
    ) => Assert.Equal(fingers, Hands.Chord(Hands.On(instrument), frets));

    [Fact]
    public void Notes_come_back_in_the_order_asked()
    {
        var spots = Hands.Frets("1 3 3 2 1 1");
        var best = ChordFingering.Find(Hands.On("guitar"), spots).Best;
        Gen.Shuffle(spots.ToArray())
            .Sample(order =>
            {
                var answer = ChordFingering.Find(Hands.On("guitar"), order.ToValueList()).Best;
                Assert.Equal(order, answer!.Notes.Select(note => note.Spot));
                Assert.All(order, spot => Assert.Equal(best!.FingerAt(spot), answer.FingerAt(spot)));
                Assert.Equal((best!.Cost, best.StretchMm, best.Widest), (answer.Cost, answer.StretchMm, answer.Widest));
            });
    }

    [Fact]
    public void The_best_come_first_and_no_two_are_the_same()
    {
        var found = ChordFingering.Find(Hands.On("guitar"), Hands.Frets("0 2 2 1 0 0"), 1000).Fingerings;

        Assert.Equal(found.OrderBy(fingering => fingering.Cost), found);
        Assert.Equal(found.Count, found.Select(Hands.Fingers).Distinct().Count());
        Assert.Equal(found.Take(3), ChordFingering.Find(Hands.On("guitar"), Hands.Frets("0 2 2 1 0 0"), 3).Fingerings);
    }

    [Fact]
    public void Terms_say_in_words_and_numbers_what_they_are_about()
    {
        var terms = ChordFingering.Find(Hands.On("guitar"), Hands.Frets("1 3 3 2 1 1")).Best!.Terms;

        Assert.Equal("finger 1 laid across strings 6 to 1", terms.Single(term => term.Name == "barre1").Words);
        Assert.Equal("fingers 3 and 4 beside each other on fret 3", terms.Single(term => term.Name == "beside").Words);
        Assert.Contains(
            "68 mm between fingers 1 and 3",
            terms.Single(term => term.Name == "reach").Words,
            StringComparison.Ordinal
        );
        Assert.All(terms, term => Assert.True(term.Cost > 0));
    }

    [Fact]
    public void A_reach_is_told_in_frets()
    {
        var terms = ChordFingering.Find(Hands.On("guitar"), Hands.Frets("x x x 9 5 x")).Best!.Terms;

        Assert.Equal("a 5-fret reach between fingers 1 and 4", terms.Single(term => term.Name == "apart").Words);
    }

    [Fact]
    public void Reasons_against_the_little_finger_differ_in_words()
    {
        var withLittle = ChordFingering.Find(Hands.On("guitar"), Hands.Frets("x 3 2 0 1 0"), 2).Fingerings[1];
        var terms = withLittle.Terms.ToDictionary(term => term.Name, term => term.Words);

        Assert.Equal("1 finger left out between fingers 1 and 4", terms["skip"]);
        Assert.Equal("finger 4 in first position, on fret 3", terms["littleFirst"]);
        Assert.Equal("finger 4 on string 5, fret 3, not nearest the floor", terms["littleInside"]);
    }

    [Fact]
    public void The_sum_of_the_terms_orders_the_fingerings()
    {
        var spots = Gen.Int[-1, 7].Array[6].Where(frets => frets.Any(fret => fret >= 0)).Select(Spots);
        spots.Sample(chord =>
        {
            var costs = ChordFingering
                .Find(Hands.On("guitar"), chord, 50)
                .Fingerings.Select(fingering => fingering.Cost)
                .ToList();

            // A sum in another order may differ in its last digits.
            Assert.All(costs.Zip(costs.Skip(1)), pair => Assert.True(pair.Second > pair.First - 1e-8));
        });
    }

    [Fact]
    public void Turning_the_instrument_over_is_mirroring_the_strings()
    {
        var spots = Gen.Int[-1, 7].Array[6].Where(frets => frets.Any(fret => fret >= 0)).Select(Spots);
        var player = Hands.On("guitar");
        spots.Sample(chord =>
        {
            var over = ChordFingering.Find(player with { IsTurnedOver = true }, chord, 5);
            var mirrored = ChordFingering.Find(
                player,
                chord.Select(spot => new Spot(7 - spot.String, spot.Fret)).ToValueList(),
                5
            );
            Assert.Equal(mirrored.Fingerings.Select(Hands.Fingers), over.Fingerings.Select(Hands.Fingers));
            Assert.Equal(mirrored.Fingerings.Select(one => one.Cost), over.Fingerings.Select(one => one.Cost));
        });
    }

    [Fact]
    public void A_barre_turned_over_is_told_by_the_strings_it_lies_on()
    {
        var player = Hands.On("guitar") with { IsTurnedOver = true };

        var terms = ChordFingering.Find(player, Hands.Frets("1 1 2 3 3 1")).Best!.Terms;

        Assert.Equal("finger 1 laid across strings 1 to 6", terms.Single(term => term.Name == "barre1").Words);
    }

    [Fact]
    public void A_hand_and_a_neck_that_grow_together_change_nothing_but_the_millimetres() =>
        Gen.Select(Gen.Int[-1, 7].Array[6].Where(frets => frets.Any(fret => fret >= 0)), Gen.Double[0.6, 1.3])
            .Sample(
                (frets, factor) =>
                {
                    var guitar = Catalogue.Default;
                    var grown = new Instrument("grown", guitar.Strings, 648 * factor, guitar.Frets, guitar.Spacing);
                    var one = ChordFingering.Find(new Player(guitar), Spots(frets), 3);
                    var other = ChordFingering.Find(new Player(grown, new HandSize(189 * factor)), Spots(frets), 3);

                    Assert.Equal(one.Fingerings.Select(Hands.Fingers), other.Fingerings.Select(Hands.Fingers));
                    Assert.All(
                        one.Fingerings.Zip(other.Fingerings),
                        pair => Assert.Equal(pair.First.Cost, pair.Second.Cost, 1e-6) // rounding of the scaled lengths
                    );
                }
            );

    [Fact]
    public void Under_a_capo_the_same_shape_is_less_of_a_stretch()
    {
        var bare = ChordFingering.Find(Hands.On("guitar"), Hands.Frets("1 3 3 2 1 1")).Best!;
        var raised = ChordFingering.Find(new Player(Catalogue.Default.WithCapo(5)), Hands.Frets("1 3 3 2 1 1")).Best!;

        Assert.Equal(bare.Fingers(), raised.Fingers());
        Assert.True(raised.StretchMm < bare.StretchMm);
        Assert.True(raised.Cost < bare.Cost);
    }

    [Fact]
    public void A_banjos_short_string_is_open_where_it_begins() =>
        Assert.Equal("02314", Hands.Chord(Hands.On("banjo"), "5 2 2 1 2"));

    [Fact]
    public void The_thumb_stops_nothing_unless_it_is_allowed()
    {
        var player = Hands.On("guitar");
        bool UsesThumb(Player who) =>
            ChordFingering
                .Find(who, Hands.Frets("2 x 0 2 3 2"), 1000)
                .Fingerings.Any(fingering => fingering.Fingers().Contains('T', StringComparison.Ordinal));

        Assert.False(UsesThumb(player));
        Assert.True(UsesThumb(player with { UsesThumb = true }));
    }

    /// <summary>Common practice, no source: D with F# in the bass, the thumb over the edge.</summary>
    [Fact]
    public void A_thumb_that_is_allowed_takes_the_bass_of_D_over_F_sharp() =>
        Assert.Equal("T0132", Hands.Chord(Hands.On("guitar") with { UsesThumb = true }, "2 x 0 2 3 2"));

    [Fact]
    public void The_widest_pair_is_the_one_that_works_hardest_for_its_fingers()
    {
        var best = ChordFingering.Find(Hands.On("guitar"), Hands.Frets("x 3 2 0 1 0")).Best!;

        Assert.Equal((Finger.Middle, Finger.Ring), (best.Widest!.Value.Lower, best.Widest.Value.Higher));
        Assert.Null(ChordFingering.Find(Hands.On("ukulele"), Hands.Frets("0 0 0 3")).Best!.Widest);
    }

    [Fact]
    public void Open_strings_alone_take_no_finger_and_no_effort()
    {
        var best = ChordFingering.Find(Hands.On("guitar"), Hands.Frets("0 0 0 0 0 0")).Best!;

        Assert.Equal(("000000", 0.0, 0.0), (best.Fingers(), best.Cost, best.StretchMm));
        Assert.Null(best.Widest);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(12)]
    [InlineData(20)]
    public void Any_number_of_strings_can_be_barred(int strings)
    {
        var instrument = new Instrument(
            "harp",
            Enumerable.Repeat(Catalogue.Default.Strings[0], strings),
            648,
            22,
            Catalogue.Default.Spacing
        );
        var chord = Enumerable.Range(1, strings).Select(number => new Spot(number, 5)).ToValueList();

        Assert.Equal(new string('1', strings), ChordFingering.Find(new Player(instrument), chord).Best!.Fingers());
    }

    [Theory]
    [InlineData("7:3", 0, "String 7, fret 3 is not on the neck: the guitar has strings 1 to 6.")]
    [InlineData("1:2 2:23", 1, "String 2, fret 23 is not on the neck: the last fret of the guitar is 22.")]
    [InlineData(
        "1:3 2:3 1:5",
        2,
        "String 1, fret 5 and fret 3 are on one string, which sounds one note at a time; leave one out."
    )]
    [InlineData(
        "6:1 1:15",
        1,
        "No hand of 189 mm reaches from string 6, fret 1 to string 1, fret 15, 344 mm apart along the neck; leave one of them out, or take it on another string."
    )]
    [InlineData(
        "5:1 4:2 3:3 2:4 1:5",
        0,
        "No hand holds these notes together: they take more fingers than there are, even with fingers laid across strings. Leave out string 5, fret 1, and the rest can be held."
    )]
    [InlineData(
        "6:1 5:2 4:3 3:4 2:5 1:6",
        4,
        "No hand holds these notes together: they take more fingers than there are, even with fingers laid across strings. String 2, fret 5 is the first that cannot be added; leave out more than one note."
    )]
    public void What_no_hand_can_hold_is_refused_by_the_name_of_the_note(string spots, int note, string message)
    {
        var answer = ChordFingering.Find(Hands.On("guitar"), spots.Split(' ').Select(Spot.Parse).ToValueList());

        Assert.Equal(new FingeringRefusal(message, note), answer.Refusal);
        Assert.Empty(answer.Fingerings);
    }

    [Fact]
    public void An_open_string_that_parts_three_barres_is_named() =>
        Assert.EndsWith(
            "Leave out string 4, fret 0, and the rest can be held.",
            Hands.Chord(Hands.On("seven-string guitar"), "1 2 3 0 3 2 1"),
            StringComparison.Ordinal
        );

    [Fact]
    public void A_banjos_short_string_is_not_played_before_it_begins() =>
        Assert.Equal(
            "String 5, fret 3 is not on the neck: string 5 begins at fret 5, its open note.",
            Hands.Chord(Hands.On("banjo"), "3 0 0 0 0")
        );

    [Fact]
    public void No_notes_are_refused() =>
        Assert.Equal(
            new FingeringRefusal("There is no note to hold; name at least one."),
            ChordFingering.Find(Hands.On("guitar"), []).Refusal
        );

    [Fact]
    public void Less_than_one_fingering_cannot_be_asked_for() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ChordFingering.Find(Hands.On("guitar"), [new(1, 1)], 0));

    private static ValueList<Spot> Spots(int[] frets) =>
        frets
            .Select((fret, at) => (fret, at))
            .Where(note => note.fret >= 0)
            .Select(note => new Spot(note.at + 1, note.fret))
            .ToValueList();
}
