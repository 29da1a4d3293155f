using Fretloom.Claims;
using Fretloom.Exhibits;
using Fretloom.Neck;
using Fretloom.Sentences;
using Fretloom.Theory;

namespace Fretloom.Tests.Claims;

/// <summary>
/// A banjo's fifth string begins at fret 5 (common practice, no source). Claims count it from its own nut; what is told and drawn says so.
/// </summary>
public class ShortStringTests
{
    // C major, counted by hand: G9 takes G5 on string 4 at fret 5; string 5 sounds A at its own fret 2, fret 7 of the neck.
    [Fact]
    public void A_span_is_told_as_it_is_counted_and_as_it_lies()
    {
        var verdict = Check("In every major key, on banjo, the V9 shape spans at most 3 frets.");
        Assert.EndsWith(
            "the V9 shape (G9) spans 4 frets, more than 3.",
            verdict.Failures[0].Why,
            StringComparison.Ordinal
        );
        Assert.Equal(
            "String 5 begins at fret 5 of the neck and is counted from there: its fret 2 is fret 7 of the neck. "
                + "So counted, the spots marked lie at frets 2 to 5; along the neck, at frets 3 to 7.",
            verdict.CountingNote
        );
        Assert.Contains(new Spot(5, 7), verdict.Failures[0].Spots);
    }

    [Fact]
    public void Frets_of_the_short_string_alone_are_marked_on_it_where_they_lie()
    {
        var verdict = Check("In the key of C major, on banjo, the frets of degree 1 on string 5 are fret 10.");
        Assert.Equal(
            "String 5 begins at fret 5 of the neck and is counted from there: its frets 5 and 10 are frets 10 and 15 of the neck.",
            verdict.CountingNote
        );
        Assert.Equal([new Spot(5, 10), new Spot(5, 15)], verdict.Failures[0].Spots);
        Assert.Empty(verdict.Failures[0].Frets);
    }

    [Fact]
    public void Full_frets_are_those_that_were_judged()
    {
        var verdict = Check("In every major key, on banjo, there are exactly 5 full frets.");
        Assert.Equal([0, 5, 10], verdict.Failures[0].Frets);
        Assert.Contains(
            "its frets 0, 5 and 10 are frets 5, 10 and 15 of the neck.",
            verdict.CountingNote,
            StringComparison.Ordinal
        );

        var exhibit = Counterexample.Of(verdict.Failures[0])!;
        Assert.True(exhibit.CountsFromOwnNut);
        Assert.Equal([0, 5, 10, 12], exhibit.Landmarks!.FullFrets);
        Assert.Equal(verdict.CountingNote, exhibit.CountingNote);
        Assert.True(exhibit.Map.Frets.Contains(15));
    }

    [Fact]
    public void It_is_said_of_what_holds_too_and_of_no_other_strings()
    {
        Assert.NotNull(Check("In every major key, on banjo, there are exactly 3 full frets.").CountingNote);
        Assert.NotNull(
            Check("In every major key, on guitar strings 4-1, there are at least 0 full frets of banjo.").CountingNote
        );
        Assert.Null(Check("In every major key, on banjo strings 4-1, there are exactly 3 full frets.").CountingNote);
        Assert.Null(Check("In every major key, on guitar, there are exactly 5 full frets.").CountingNote);
    }

    // A guitar has a string 5 as well, which begins at the nut.
    [Theory]
    [InlineData("on guitar strings 4-1, there are at least 0 full frets of banjo")]
    [InlineData("on guitar strings 4-1, there are more than 9 full frets of banjo")]
    [InlineData("on guitar, on frets 0 to 12, the V9 shape of banjo stretches at most 30 mm")]
    public void The_instrument_is_named_whose_short_string_it_is(string claim) =>
        Assert.Equal(
            "String 5 of the banjo begins at fret 5 of the neck and is counted from there: its fret 0 is fret 5 of the neck.",
            Check($"In every major key, {claim}.").CountingNote
        );

    [Fact]
    public void Every_instrument_with_a_short_string_is_told_of()
    {
        Assert.True(Catalogue.TryFind("banjo", out var banjo));
        var tuned = banjo.Tuned(banjo.OpenPitches.Select((pitch, at) => at == 0 ? Pitch.Parse("C4") : pitch));
        Assert.Equal(
            "String 5 begins at fret 5 of the neck and is counted from there: its fret 0 is fret 5 of the neck. "
                + $"String 5 of the {tuned} begins at fret 5 of the neck and is counted from there: its fret 0 is fret 5 of the neck.",
            Check($"In every major key, on banjo, there are at least 0 full frets of {tuned}.").CountingNote
        );
    }

    [Fact]
    public void It_is_said_where_only_a_degree_stands_on_the_short_string() =>
        Assert.Contains(
            "String 5 begins at fret 5",
            Check(
                "In every major key, on banjo strings 4-1, degree 1 stands on string 5 at some full fret."
            ).CountingNote,
            StringComparison.Ordinal
        );

    // On every fret of the endless neck, key by key: what the picture tints is what the claim counts.
    [Fact]
    public void Landmarks_counted_so_are_the_full_frets_of_claims()
    {
        Assert.True(Catalogue.TryFind("banjo", out var banjo));
        foreach (var key in new KeyScope.EveryKey().Keys)
        {
            var map = new NeckMap(banjo, key, banjo.AllStrings, new FretRange(0, 11));
            var exhibit = OwnNut.Of(
                ShowResolver
                    .Resolve(
                        new ShowSentence
                        {
                            Subjects = [new Subject.NotesOfTheKey()],
                            Instrument = banjo,
                            Key = key,
                            Strings = banjo.AllStrings,
                            Frets = map.Frets,
                        },
                        ShowDefaults.Standard
                    )
                    .Exhibit!
            );
            var frets = exhibit.Landmarks!.FullFrets;
            var claim =
                frets.Count == 0
                    ? $"{ClaimPrinter.Print(new KeyScope.One(key))}, on banjo, there are no full frets."
                    : $"{ClaimPrinter.Print(new KeyScope.One(key))}, on banjo, the full frets are {(frets.Count == 1 ? "fret" : "frets")} {Listed(frets)}.";
            Assert.Equal(Verdict.Holds, Check(claim).Verdict);
        }
    }

    private static string Listed(ValueList<int> frets) =>
        frets.Count == 1 ? $"{frets[0]}" : $"{string.Join(", ", frets.Take(frets.Count - 1))} and {frets[^1]}";

    private static ClaimVerdict Check(string text) => ClaimChecker.Check(ClaimParser.Parse(text).Value!);
}
