using Fretloom.Testing;
using Fretloom.Theory;

namespace Fretloom.Tests.Theory;

/// <summary>
/// Set classes against two tables: <c>Data/set_classes.csv</c>, computed for this project by a separate program, and
/// <c>Data/forte_table.csv</c>, Forte's names from a published package with the vectors recomputed (tests/SOURCES.md).
/// </summary>
public class PitchClassSetTests
{
    private static readonly PitchClassSet[] All =
    [
        .. Enumerable.Range(0, 4096).Select(mask => new PitchClassSet(mask)),
    ];

    [Fact]
    public void Transpositions_form_a_group() =>
        Gen.Select(TheoryGen.Set, Gen.Int[-30, 30], Gen.Int[-30, 30])
            .Sample(
                (set, m, n) =>
                {
                    Assert.Equal(set.Transpose(m + n), set.Transpose(m).Transpose(n));
                    Assert.Equal(set, set.Transpose(n).Transpose(-n));
                    Assert.Equal(set, set.Transpose(12));
                }
            );

    [Fact]
    public void An_inversion_done_twice_is_no_change() =>
        Gen.Select(TheoryGen.Set, Gen.Int[-30, 30]).Sample((set, n) => Assert.Equal(set, set.Invert(n).Invert(n)));

    [Fact]
    public void Two_inversions_are_a_transposition_by_the_difference_of_their_indexes() =>
        Gen.Select(TheoryGen.Set, Gen.Int[0, 11], Gen.Int[0, 11])
            .Sample((set, m, n) => Assert.Equal(set.Transpose(n - m), set.Invert(m).Invert(n)));

    [Fact]
    public void Inverting_then_transposing_adds_to_the_index() =>
        Gen.Select(TheoryGen.Set, Gen.Int[0, 11], Gen.Int[0, 11])
            .Sample((set, m, n) => Assert.Equal(set.Invert(m + n), set.Invert(m).Transpose(n)));

    [Fact]
    public void M5_done_twice_is_no_change() =>
        Assert.All(All, set => Assert.Equal(set, set.MultiplyByFive().MultiplyByFive()));

    [Fact]
    public void Transposition_and_inversion_keep_the_interval_vector_and_the_prime_form() =>
        Assert.All(
            All,
            set =>
            {
                Assert.Equal(set.IntervalVector, set.Transpose(5).IntervalVector);
                Assert.Equal(set.IntervalVector, set.Invert(3).IntervalVector);
                Assert.Equal(set.PrimeForm, set.Transpose(7).PrimeForm);
                Assert.Equal(set.PrimeForm, set.Invert(1).PrimeForm);
                Assert.Equal(set.PrimeForm, set.PrimeForm.PrimeForm);
            }
        );

    [Fact]
    public void The_interval_vector_counts_the_pairs() =>
        Assert.All(
            All,
            set =>
            {
                var counts = new int[6];
                var members = set.Select(member => member.Number).ToArray();
                foreach (var low in members)
                {
                    foreach (var high in members.Where(member => member > low))
                    {
                        counts[Math.Min(high - low, 12 - (high - low)) - 1]++;
                    }
                }

                Assert.Equal(counts, set.IntervalVector);
            }
        );

    // The counts 352 and 224 (the empty set counted): orbits of 4,096 sets under 12 and 24 operations (Burnside's lemma).
    // 96 of the 224 are their own inversions: 2 * 224 - 352.
    [Fact]
    public void There_are_352_classes_under_transposition_and_224_with_inversion_of_which_96_are_their_own_inversions()
    {
        var underTransposition = All.Select(set => Enumerable.Range(0, 12).Min(n => set.Transpose(n).Mask)).Distinct();
        var withInversion = All.Select(set => set.PrimeForm).Distinct().ToList();

        Assert.Equal(352, underTransposition.Count());
        Assert.Equal(224, withInversion.Count);
        Assert.Equal(96, withInversion.Count(set => set.IsItsOwnInversion));
    }

    [Fact]
    public void Set_classes_are_those_of_the_table()
    {
        var rows = Rows("set_classes.csv").ToList();

        Assert.Equal(All.Select(set => set.PrimeForm).Distinct().Count(), rows.Count);
        Assert.All(
            rows,
            row =>
            {
                var set = new PitchClassSet(Number(row[1]));
                Assert.Equal(set, set.PrimeForm);
                Assert.Equal(Number(row[0]), set.Count);
                Assert.Equal(row[^3], string.Concat(set.IntervalVector));
                Assert.Equal(row[^2] == "1", set.IsItsOwnInversion);
                Assert.Equal(Number(row[^1]), set.DistinctTranspositions);
            }
        );
    }

    [Fact]
    public void Prime_forms_and_vectors_are_those_of_the_Forte_table() =>
        Assert.All(
            Rows("forte_table.csv"),
            row =>
            {
                var rahn = PitchClassSet.Of(row[2].Split(' ').Select(number => new PitchClass(Number(number))));
                var forte = PitchClassSet.Of(row[1].Split(' ').Select(number => new PitchClass(Number(number))));
                Assert.Equal(rahn, forte.PrimeForm);
                Assert.Equal(Number(row[4]), forte.Mask);
                Assert.Equal(row[3], string.Join(' ', forte.IntervalVector));
                Assert.Equal(row[5] == "1", forte.IsItsOwnInversion);
                Assert.Equal(Number(row[6]), forte.DistinctTranspositions);
            }
        );

    // Common practice, no source.
    [Theory]
    [InlineData("ionian", "phrygian")]
    [InlineData("lydian", "locrian")]
    [InlineData("mixolydian", "aeolian")]
    [InlineData("dorian", "dorian")]
    public void Modes_mirror_each_other(string one, string other)
    {
        var set = new Scale(default, ScaleKind.Parse(one)).PitchClasses;
        var mirror = new Scale(default, ScaleKind.Parse(other)).PitchClasses;

        Assert.Equal(mirror, set.Invert(0));
    }

    private static int Number(string text) => int.Parse(text, System.Globalization.CultureInfo.InvariantCulture);

    private static IEnumerable<string[]> Rows(string file) =>
        File.ReadLines(Repository.PathTo("tests", "Fretloom.Tests", "Data", file))
            .Skip(1)
            .Select(line => line.Split(','));
}
