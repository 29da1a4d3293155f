using Fretloom.Sentences;
using Fretloom.Studio.Client.Ask;

namespace Fretloom.Studio.Client.Tests.Ask;

public class TypedPhraseTests
{
    private static PhraseKind Kind(string name) => Phrases.All.First(kind => kind.Name == name);

    [Theory]
    [InlineData("the key", "in E dorian", "in E dorian")]
    [InlineData("the key", "E dorian", "in E dorian")]
    // By themselves they would be a chord and a scale to show.
    [InlineData("the key", "a minor", "in a minor")]
    [InlineData("the key", "Bb", null)]
    // German names, which are no other key's in English.
    [InlineData("the key", "H", "in B major")]
    [InlineData("the key", "es", "in Eb major")]
    [InlineData("the key", "Fis", "in F# major")]
    [InlineData("the key", "B", null)]
    [InlineData("the instrument", "guitar", "on a guitar")]
    [InlineData("the frets", "5-9", "frets 5-9")]
    [InlineData("the strings", "4-1", "on strings 4-1")]
    [InlineData("the key", "on a guitar", null)]
    [InlineData("what to show", "triads", "triads")]
    [InlineData("what to show", "C7", "C7")]
    // No note is put before it that nobody said.
    [InlineData("what to show", "minor pentatonic", null)]
    [InlineData("the key", "in E dorian, frets 0-5", null)]
    public void What_is_typed_is_a_phrase_of_that_kind_or_none(string kind, string typed, string? phrase) =>
        Assert.Equal(phrase, TypedPhrase.Of(Kind(kind), typed, mends: false));

    [Theory]
    [InlineData("the key", "Bb", "in Bb major")]
    [InlineData("the key", "Am", "in A minor")]
    [InlineData("the key", "B-Dur", "in Bb major")]
    [InlineData("the key", "in Bb maj", "in Bb major")]
    [InlineData("the key", "H", "in B major")]
    [InlineData("the instrument", "ukelele", "on a ukulele")]
    [InlineData("the instrument", "uke", "on a ukulele")]
    public void It_is_mended_where_a_message_would_suggest_how(string kind, string typed, string phrase) =>
        Assert.Equal(phrase, TypedPhrase.Of(Kind(kind), typed, mends: true));

    [Theory]
    [InlineData("the key", "in X", "expected a key such as 'D major'")]
    [InlineData("the key", "xyz", "expected a key such as 'D major'")]
    [InlineData("the frets", "lots", "expected")]
    [InlineData("what to show", "nonsense", "expected what to show")]
    [InlineData("the key", "on a guitar", "expected a key such as 'D major'")]
    public void Else_it_is_told_what_was_expected(string kind, string typed, string message) =>
        Assert.StartsWith(message, TypedPhrase.Wrong(Kind(kind), typed), StringComparison.Ordinal);

    /// <summary>Every example of every kind, whole.</summary>
    [Fact]
    public void Every_example_is_a_phrase_of_its_kind() =>
        Assert.All(
            Phrases.All.SelectMany(kind => kind.Examples.Select(example => (kind, example))),
            one =>
            {
                var typed = TypedPhrase.Of(one.kind, one.example, mends: false);
                Assert.True(
                    typed == one.example || typed is null && Needs(one.example),
                    $"{one.kind}: {one.example}: {typed}"
                );
            }
        );

    // Some say something only of chords or of another phrase, or are two.
    private static bool Needs(string example) =>
        example.Contains(',', StringComparison.Ordinal)
        || ShowParser.Parse($"the landmarks, {example}").Errors.Count > 0;
}
