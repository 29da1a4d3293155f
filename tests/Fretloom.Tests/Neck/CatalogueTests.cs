using Fretloom.Neck;

namespace Fretloom.Tests.Neck;

public class CatalogueTests
{
    public static TheoryData<string> Names => [.. Catalogue.All.Select(instrument => instrument.Name)];

    [Fact]
    public void There_are_at_least_thirty_five_instruments() => Assert.True(Catalogue.All.Count >= 35);

    [Fact]
    public void No_name_stands_for_two_instruments()
    {
        var names = Catalogue.Entries.SelectMany(entry => entry.OtherNames.Prepend(entry.Instrument.Name)).ToList();

        Assert.Equal(names.Count, names.Distinct(StringComparer.OrdinalIgnoreCase).Count());
    }

    [Fact]
    public void Every_name_finds_its_instrument_in_any_case_and_with_or_without_hyphens()
    {
        foreach (var entry in Catalogue.Entries)
        {
            foreach (var name in entry.OtherNames.Prepend(entry.Instrument.Name))
            {
                foreach (var written in new[] { name, name.ToUpperInvariant(), name.Replace('-', ' ') })
                {
                    Assert.True(Catalogue.TryFind(written, out var found), written);
                    Assert.Equal(entry.Instrument, found);
                }
            }
        }
    }

    [Theory]
    [InlineData("7-string guitar", "seven-string guitar")]
    [InlineData("12 string guitar", "twelve-string guitar")]
    [InlineData("low G uke", "low-G ukulele")]
    [InlineData("re-entrant ukulele", "ukulele")]
    [InlineData("high-G ukulele", "ukulele")]
    [InlineData("half-size guitar", "1/2 guitar")]
    [InlineData("four-string bass", "bass")]
    public void Other_names_mean_the_same_instrument(string written, string name)
    {
        Assert.True(Catalogue.TryFind(written, out var found));
        Assert.Equal(name, found.Name);
    }

    [Theory]
    [InlineData("")]
    [InlineData("a guitar")]
    [InlineData("piano")]
    [InlineData(null)]
    public void Other_texts_find_nothing(string? written) => Assert.False(Catalogue.TryFind(written, out _));

    [Theory]
    [InlineData("guitr", "guitar")]
    [InlineData("gutiar", "guitar")]
    [InlineData("bnajo", "banjo")]
    [InlineData("mandolen", "mandolin")]
    [InlineData("low-G ukelele", "low-G ukulele")]
    [InlineData("dadgda guitar", "DADGAD guitar")]
    public void A_misspelled_name_brings_the_right_one_first(string written, string name) =>
        Assert.Equal(name, Catalogue.Suggest(written)[0]);

    [Theory]
    [InlineData("piano")]
    [InlineData("")]
    public void Nothing_near_means_no_suggestion(string written) => Assert.Empty(Catalogue.Suggest(written));

    [Fact]
    public void Every_suggestion_can_be_found() =>
        Gen.String[Gen.Char["abegilnortu-G "], 0, 14]
            .Sample(text =>
            {
                foreach (var suggestion in Catalogue.Suggest(text))
                {
                    Assert.True(Catalogue.TryFind(suggestion, out _));
                }
            });

    [Theory]
    [InlineData("guitar", "a guitar")]
    [InlineData("eight-string guitar", "an eight-string guitar")]
    [InlineData("open G guitar", "an open G guitar")]
    [InlineData("octave mandolin", "an octave mandolin")]
    [InlineData("ukulele", "a ukulele")]
    [InlineData("7/8 guitar", "a 7/8 guitar")]
    public void The_article_follows_the_sound(string name, string withArticle)
    {
        Assert.True(Catalogue.TryFind(name, out var found));
        Assert.Equal(withArticle, found.NameWithArticle);
    }

    // The string sets that claims speak of as "listed": part of this project's claim language.
    [Theory]
    [InlineData("guitar", "6-1")]
    [InlineData("guitar in fourths", "6-1")]
    [InlineData("drop D guitar", "6-3")]
    [InlineData("DADGAD guitar", "6-1")]
    [InlineData("open G guitar", "5-2")]
    [InlineData("low-G ukulele", "4-1")]
    [InlineData("re-entrant ukulele", "4-1")]
    [InlineData("baritone ukulele", "4-1")]
    [InlineData("bass", "4-1")]
    [InlineData("five-string bass", "5-1")]
    [InlineData("mandolin", "4-1")]
    [InlineData("banjo", "5-1")]
    public void The_listed_string_sets_exist(string name, string strings)
    {
        Assert.True(Catalogue.TryFind(name, out var found));
        Assert.True(StringSet.Parse(strings).Numbers[0] <= found.Strings.Count);
    }

    // Sizes of the design: scale length in millimetres and number of frets.
    [Theory]
    [InlineData("guitar", 648, 22)]
    [InlineData("ukulele", 345, 15)]
    [InlineData("low-G ukulele", 430, 18)]
    [InlineData("baritone ukulele", 510, 18)]
    [InlineData("bass", 863.6, 20)]
    [InlineData("3/4 guitar", 580, 19)]
    public void The_main_instruments_have_their_sizes(string name, double scaleLengthMm, int frets)
    {
        Assert.True(Catalogue.TryFind(name, out var found));
        Assert.Equal((scaleLengthMm, frets), (found.ScaleLengthMm, found.Frets));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Spacing_widens_toward_the_bridge(string name)
    {
        Assert.True(Catalogue.TryFind(name, out var found));
        Assert.True(found.Spacing.NutMm > 0 && found.Spacing.NutMm < found.Spacing.BridgeMm);
    }
}
