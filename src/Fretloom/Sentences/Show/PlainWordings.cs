using Fretloom.Neck;
using Fretloom.Sentences.Reading;
using Fretloom.Theory;

namespace Fretloom.Sentences.Show;

/// <summary>Wordings of the trade that are no phrases, with the nearest phrases: <c>drop D tuning</c>, <c>barre chords in F</c>, <c>the key of H</c>.</summary>
internal static class PlainWordings
{
    private const int MostWords = 5;
    private const int MostKindWords = 3;

    /// <summary>Changes of the words here, best first. They have not been tried.</summary>
    /// <param name="at">Where a phrase cannot be read.</param>
    /// <param name="hasSubject">Whether the sentence has said before what to show.</param>
    public static IEnumerable<Edit> At(Cursor at, bool hasSubject) =>
        new[]
        {
            All(at),
            KindsOfChords(at),
            Keys(at),
            KeyOf(at, hasSubject),
            Instruments(at, hasSubject),
        }.OfType<Edit>();

    // All triads, all the seventh chords.
    private static Edit? All(Cursor at)
    {
        var article = at.Peek(1).Is("the") ? 1 : 0;
        return at.Is("all") && SubjectPhrase.IsNoun(at.Peek(article + 1))
            ? Edit.Of(at.Current, at.Peek(article), "the")
            : null;
    }

    // Barre chords in F, open chords, power chords in E minor: full grips of the chords of the key. The chords of G: its triads.
    private static Edit? KindsOfChords(Cursor at)
    {
        var first = at.Is("the") ? 1 : 0;
        var noun = first;
        while (noun - first < MostKindWords && !IsChord(at.Peek(noun)) && IsKindWord(at.Peek(noun)))
        {
            noun++;
        }

        if (!IsChord(at.Peek(noun)))
        {
            return null;
        }

        var (key, last) = KeyBehind(at, noun + 1);
        if (noun == first)
        {
            return key is null || !at.Peek(noun).Is("chords")
                ? null
                : Edit.Of(at.Current, at.Peek(last), $"the triads, in {key}");
        }

        return Edit.Of(
            at.Current,
            at.Peek(key is null ? noun : last),
            key is null ? "the triads, strummed" : $"the triads, in {key}, strummed"
        );
    }

    private static bool IsChord(Token token) => token.IsAny("chord", "chords");

    private static bool IsKindWord(Token token) =>
        token.Kind == TokenKind.Word
        && !token.IsAny("a", "an", "and", "as", "for", "from", "in", "no", "of", "on", "one", "the", "with", "without");

    // The key of G; the notes in H; the scale of E minor.
    private static Edit? Keys(Cursor at)
    {
        var noun = at.Is("the") ? 1 : 0;
        return at.Peek(noun).IsAny("key", "notes", "scale") && KeyBehind(at, noun + 1) is ({ } key, var last)
            ? Edit.Of(at.Current, at.Peek(last), $"the notes of the key, in {key}")
            : null;
    }

    // In F, of the key of E minor: a tonic that stands alone is that of a major key.
    private static (string? Key, int Last) KeyBehind(Cursor at, int ahead)
    {
        if (!at.Peek(ahead).IsAny("in", "of", "for", "from"))
        {
            return (null, 0);
        }

        var tonicAt = ahead + 1;
        tonicAt += at.Peek(tonicAt).Is("the") ? 1 : 0;
        tonicAt += at.Peek(tonicAt).Is("key") && at.Peek(tonicAt + 1).Is("of") ? 2 : 0;
        if (ShortKeys.At(at, tonicAt) is ({ } key, var count))
        {
            return (key, tonicAt + count - 1);
        }

        var tonicLength = Notes.ReadAny(at, tonicAt, out var tonic);
        if (tonicLength == 0)
        {
            return (null, 0);
        }

        var (kind, kindLength) = Notes.ReadKind(at, tonicAt + tonicLength);
        // An article is no tonic.
        return kind is null && at.Peek(tonicAt).Text == "a" && at.Peek(tonicAt + 1).Kind == TokenKind.Word
            ? (null, 0)
            : ($"{tonic} {kind ?? ScaleKind.Major}", tonicAt + tonicLength + kindLength - 1);
    }

    // The triads of Bb; the triads, in Am.
    private static Edit? KeyOf(Cursor at, bool hasSubject)
    {
        var (key, last) = KeyBehind(at, 0);
        if (!hasSubject || key is null || !(at.Is("in") || at.Is("of")))
        {
            return null;
        }

        var start = at.Is("in") ? at.Current.Start : at.Previous.End;
        return new Edit(start, at.Peek(last).End - start, at.Is("in") ? $"in {key}" : $", in {key}");
    }

    // Drop D tuning; in drop D; mandolin.
    private static Edit? Instruments(Cursor at, bool hasSubject)
    {
        var name = 0;
        while (name < 3 && at.Peek(name).IsAny("in", "with", "to", "tuned", "the", "a", "an", "my"))
        {
            name++;
        }

        for (var count = MostWords; count > 0; count--)
        {
            if (!IsWords(at, name, count) || Find(at.Words(name, count)) is not { } instrument)
            {
                continue;
            }

            var end = name + count;
            var isTuning = at.Peek(end).IsAny("tuning", "tunings");
            end += isTuning ? 1 : 0;
            if (at.Is("with") && !isTuning)
            {
                return null;
            }

            var isAll = !hasSubject && at.Peek(end).Kind == TokenKind.End;
            return Edit.Of(
                at.Current,
                at.Peek(end - 1),
                (isAll ? "the notes of the key, " : "") + $"on {instrument.NameWithArticle}"
            );
        }

        return null;
    }

    private static bool IsWords(Cursor at, int ahead, int count) =>
        Enumerable.Range(ahead, count).All(each => at.Peek(each).Kind == TokenKind.Word);

    // By its name, or by the tuning that its name begins with.
    private static Instrument? Find(string name) =>
        Catalogue.TryFind(name, out var instrument)
            ? instrument
            : Catalogue
                .Entries.FirstOrDefault(entry =>
                    entry
                        .OtherNames.Prepend(entry.Instrument.Name)
                        .Any(known => known.StartsWith(name + " ", StringComparison.OrdinalIgnoreCase))
                )
                ?.Instrument;
}
