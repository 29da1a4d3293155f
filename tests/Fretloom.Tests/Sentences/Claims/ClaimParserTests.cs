using System.Globalization;
using Fretloom.Claims;
using Fretloom.Neck;
using Fretloom.Sentences;
using Fretloom.Testing;
using Fretloom.Theory;

namespace Fretloom.Tests.Sentences.Claims;

/// <summary>Reading claims that are right, and writing them back.</summary>
public class ClaimParserTests
{
    /// <summary>Source: Judged claims, in <c>tests/SOURCES.md</c>.</summary>
    public static TheoryData<string> Judged =>
        [.. Table.Read("claims.csv").Concat(Table.Read("claims_thirty.csv")).Select(row => row["sentence"])];

    [Theory]
    [MemberData(nameof(Judged))]
    public void A_judged_claim_reads_and_is_written_as_it_stands(string sentence)
    {
        var result = ClaimParser.Parse(sentence);

        Assert.Empty(result.Errors);
        Assert.Equal(sentence, result.Value?.ToString());
    }

    [Fact]
    public void There_are_48_judged_claims_and_30_more() => Assert.Equal(78, Judged.Count);

    [Fact]
    public void Every_claim_reads_back_as_it_was_written() =>
        ClaimGen.Sentence.SampleSame(
            sentence =>
            {
                var result = ClaimParser.Parse(sentence.ToString());

                Assert.Empty(result.Errors);
                Assert.Equal(sentence, result.Value);
                Assert.Equal(sentence.ToString(), result.Value?.ToString());
            },
            count: 20_000
        );

#pragma warning disable RS0030 // The culture is what is tested.
    // The program knows no culture but the invariant one; a machine's own settings are put on top of that.
    [Fact]
    public void The_settings_of_the_machine_do_not_matter()
    {
        var before = CultureInfo.CurrentCulture;
        var german = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        german.NumberFormat.NumberDecimalSeparator = ",";
        german.NumberFormat.NumberGroupSeparator = ".";
        german.NumberFormat.NegativeSign = "\u2212";
        try
        {
            CultureInfo.CurrentCulture = german;
            foreach (var row in Judged)
            {
                Assert.Equal(row.Data, ClaimParser.Parse(row.Data.ToUpperInvariant()).Value?.ToString());
            }

            const string claim =
                "In every key, on guitar strings 4-1, on frets 0 to 12, every seventh shape can be played with one finger a note by a hand of 165.5 mm.";
            Assert.Equal(claim, ClaimParser.Parse(claim).Value?.ToString());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
#pragma warning restore RS0030

    [Theory]
    [InlineData("on a guitar, on strings 4-1, in every major key, frets 0-12, there are 3 full frets.")]
    [InlineData("in every major key on frets 0 to 12 on guitar strings 4-1 there are three full frets.")]
    [InlineData("from fret 0 to fret 12, in every ionian key, on strings 4 to 1, there is exactly 3 full fret.")]
    [InlineData(
        "On strings 4, 3, 2 and 1, between frets 0 and 12, in all major keys, on the guitar, there are 3 full frets."
    )]
    [InlineData("In every major key and on strings 4-1 of the guitar and on frets 0-12, there are 3 full frets.")]
    [InlineData("On the low strings, on frets 0-12, in each major key, there are exactly three full frets.")]
    public void Where_a_claim_is_made_is_said_in_any_order_and_form(string text)
    {
        var lesson = new ClaimDefaults(stringSets: [new NamedStrings("low", StringSet.Run(4, 1))]);

        Assert.Equal(
            "In every major key, on guitar strings 4-1, on frets 0 to 12, there are exactly 3 full frets.",
            ClaimParser.Parse(text, lesson).Value?.ToString()
        );
    }

    [Fact]
    public void What_is_unsaid_comes_from_the_lesson()
    {
        Catalogue.TryFind("banjo", out var banjo);
        var lesson = new ClaimDefaults(banjo, StringSet.Run(4, 1));
        PlaceScope? Places(string phrase) =>
            ClaimParser.Parse($"In every key, {phrase}there are 3 full frets.", lesson).Value?.Places;

        Assert.Equal(new PlaceScope.On(banjo!, StringSet.Run(4, 1)), Places(""));
        Assert.Equal(new PlaceScope.On(banjo!, StringSet.Run(5, 2)), Places("on strings 5-2, "));
        Assert.Equal(new PlaceScope.On(banjo!, null), Places("on all strings, "));
        Assert.Equal(new PlaceScope.On(Catalogue.Default, null), Places("on guitar, "));
        Assert.Equal(
            new PlaceScope.On(Catalogue.Default, StringSet.Run(3, 1)),
            Places("on strings 3-1, on a guitar, ")
        );
    }

    [Fact]
    public void And_goes_on_with_a_list_of_frets_only_before_a_number_of_its_own()
    {
        Claim? Claim(string text) => ClaimParser.Parse($"In every key, on strings 4-1, {text}").Value?.Claim;

        Assert.IsType<Claim.OfFrets>(Claim("the full frets are frets 0 and 5."));
        Assert.Equal(2, Parts(Claim("the full frets are fret 0 and there is 1 empty fret.")));
        Assert.Equal(2, Parts(Claim("the full frets are frets 0 and 5 and 2 of the seventh shapes span 4 frets.")));
        static int? Parts(Claim? claim) => (claim as Claim.And)?.Parts.Count;
    }

    [Fact]
    public void A_figured_numeral_is_an_inversion()
    {
        var claim = ClaimParser.Parse("In every key, on strings 4-1, the V43 shape has its root on a full fret.");
        var shapes = Assert.IsType<Claim.OfShapes>(claim.Value?.Claim).Shapes;

        Assert.Equal(new ShapeSet.ByNumeral(RomanNumeral.Parse("V7"), new ShapeVoicing(inversion: 2)), shapes);
    }
}
