using Fretloom.Shapes;
using Fretloom.Tests.Neck;
using Fretloom.Theory;

namespace Fretloom.Tests.Shapes;

public class KeySymmetryTests
{
    /// <summary>Every four-string tuning with steps of 1 to 11 semitones, the first string on C: 1,331 of them.</summary>
    private static readonly List<ValueList<PitchClass>> FourStringTunings =
    [
        .. from a in Enumerable.Range(1, 11)
        from b in Enumerable.Range(1, 11)
        from c in Enumerable.Range(1, 11)
        select Tuning(0, a, a + b, a + b + c),
    ];

    /// <summary>Every set of pitch classes but the empty one, up to transposition: 351 of them.</summary>
    private static readonly List<PitchClassSet> Sets =
    [
        .. Enumerable
            .Range(1, 4095)
            .Select(mask => new PitchClassSet(mask))
            .Where(set => Enumerable.Range(0, 12).All(up => set.Transpose(up).Mask >= set.Mask)),
    ];

    [Fact]
    public void There_are_1331_tunings_and_351_sets()
    {
        Assert.Equal(1331, FourStringTunings.Count);
        Assert.Equal(351, Sets.Count);
    }

    [Fact]
    public void The_rule_finds_the_centres_of_a_neck_turned_note_by_note()
    {
        foreach (var set in Sets)
        {
            foreach (var tuning in FourStringTunings)
            {
                Assert.True(
                    SlowCentres(set, tuning).SequenceEqual(KeySymmetry.HalfTurnCentres(set, tuning)),
                    $"{set} on {tuning}"
                );
            }
        }
    }

    [Fact]
    public void A_set_without_transpositional_symmetry_has_a_centre_just_when_steps_are_palindromic_and_it_is_its_own_inversion()
    {
        foreach (var set in Sets.Where(set => set.DistinctTranspositions == 12))
        {
            foreach (var tuning in FourStringTunings)
            {
                var centres = KeySymmetry.HalfTurnCentres(set, tuning);

                Assert.Equal(IsPalindromic(tuning) && set.IsItsOwnInversion ? 1 : 0, centres.Count);
            }
        }
    }

    [Fact]
    public void The_theorem_holds_for_every_kind_of_seven_note_scale_on_every_tonic()
    {
        foreach (var kind in Necks.SevenNoteKinds)
        {
            var scale = new Scale(NoteName.Parse("C"), kind).PitchClasses;
            for (var up = 0; up < 12; up++)
            {
                var set = scale.Transpose(up);
                Assert.Equal(12, set.DistinctTranspositions);
                foreach (var tuning in FourStringTunings)
                {
                    Assert.Equal(
                        IsPalindromic(tuning) && set.IsItsOwnInversion ? 1 : 0,
                        KeySymmetry.HalfTurnCentres(set, tuning).Count
                    );
                }
            }
        }
    }

    [Fact]
    public void A_set_that_repeats_within_the_octave_can_turn_on_strings_whose_steps_differ()
    {
        var wholeTone = PitchClassSet.Of(Enumerable.Range(0, 6).Select(n => new PitchClass(2 * n)));
        var tuning = Tuning(0, 2, 6, 12);

        Assert.False(IsPalindromic(tuning));
        Assert.Equal(SlowCentres(wholeTone, tuning), KeySymmetry.HalfTurnCentres(wholeTone, tuning));
        Assert.Equal("0, 1, 2, 3, 4, 5", KeySymmetry.HalfTurnCentres(wholeTone, tuning).ToString());
    }

    [Fact]
    public void The_rule_and_the_theorem_hold_for_any_number_of_strings() =>
        Gen.Select(Gen.Int[0, 11].Array[1, 8], Gen.Int[1, 4095])
            .Sample(
                (open, mask) =>
                {
                    var (tuning, set) = (Tuning(open), new PitchClassSet(mask));
                    var centres = KeySymmetry.HalfTurnCentres(set, tuning);

                    Assert.Equal(SlowCentres(set, tuning), centres);
                    if (set.DistinctTranspositions == 12)
                    {
                        Assert.Equal(IsPalindromic(tuning) && set.IsItsOwnInversion ? 1 : 0, centres.Count);
                    }
                },
                iter: 20_000
            );

    [Fact]
    public void Centres_of_a_range_repeat_every_six_frets_and_move_with_the_key() =>
        Gen.Select(Gen.Int[1, 4095], Gen.Int[0, 1330], Gen.Int[0, 20], Gen.Int[0, 20], Gen.Int[0, 11])
            .Sample(
                (mask, at, first, length, up) =>
                {
                    var (set, tuning) = (new PitchClassSet(mask), FourStringTunings[at]);
                    var once = KeySymmetry.HalfTurnCentres(set, tuning);
                    var inRange = KeySymmetry.HalfTurnCentres(set, tuning, first, first + length);

                    Assert.Equal(
                        from repeat in Enumerable.Range(0, 8)
                        from centre in once
                        let place = centre + 6 * repeat
                        where place >= first && place <= first + length
                        select place,
                        inRange
                    );
                    Assert.Equal(
                        inRange.Select(centre => centre + up),
                        KeySymmetry.HalfTurnCentres(set.Transpose(up), tuning, first + up, first + length + up)
                    );
                }
            );

    // hept_symmetric.csv, computed for this project by a separate program.
    [Fact]
    public void Ten_classes_of_seven_notes_are_their_own_inversion()
    {
        var expected = Table
            .Read("hept_symmetric.csv")
            .Select(row => PitchClassSet.Of(row.Integers("pcs", ',').Select(n => new PitchClass(n))).PrimeForm)
            .ToHashSet();
        var palindromic = Tuning(0, 5, 9, 2);
        var turning = Sets.Where(set => set.Count == 7 && KeySymmetry.HalfTurnCentres(set, palindromic).Count > 0);

        Assert.Equal(10, expected.Count);
        Assert.Equal(expected, turning.Select(set => set.PrimeForm).ToHashSet());
    }

    /// <summary>Turns twelve frets of the neck about every whole and half fret from 0 to 5.5 and compares every place.</summary>
    private static List<double> SlowCentres(PitchClassSet set, ValueList<PitchClass> open)
    {
        var found = new List<double>();
        for (var twice = 0; twice < 12; twice++)
        {
            if (TurnsOnto(twice))
            {
                found.Add(twice / 2.0);
            }
        }

        return found;

        bool TurnsOnto(int twice)
        {
            for (var at = 0; at < open.Count; at++)
            {
                for (var fret = 0; fret < 12; fret++)
                {
                    if (Sounds(at, fret) != Sounds(open.Count - 1 - at, twice - fret))
                    {
                        return false;
                    }
                }
            }

            return true;
        }

        bool Sounds(int at, int fret) => (set.Mask >> (open[at].Number + fret + 24) % 12 & 1) != 0;
    }

    private static bool IsPalindromic(ValueList<PitchClass> open)
    {
        var steps = Enumerable.Range(1, open.Count - 1).Select(at => open[at - 1].SemitonesUpTo(open[at])).ToList();
        return steps.SequenceEqual(Enumerable.Reverse(steps));
    }

    private static ValueList<PitchClass> Tuning(params int[] semitones) =>
        semitones.Select(PitchClass.FromSemitones).ToValueList();
}
