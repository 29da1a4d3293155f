using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Show;

/// <summary>What to say where no phrase begins.</summary>
internal static class Openings
{
    private static readonly string[] Words =
    [
        .. SubjectPhrase.Openings,
        "on",
        "in",
        "with",
        "without",
        "frets",
        "fret",
        "from",
        "between",
        "as",
        "for",
        "strummed",
        "easy",
        "one",
        "capo",
        "left-handed",
        "turned",
        "held",
        "thumb",
        "and",
    ];

    /// <summary>The failure for the word here.</summary>
    /// <param name="at">The place.</param>
    /// <param name="isSeparated">Whether the word stands at the beginning, or behind a comma or <c>and</c>.</param>
    public static Failure At(Cursor at, bool isSeparated)
    {
        var opening = at.Current;
        if (opening.Is("on"))
        {
            at.Skip();
            at.AcceptAny("a", "an", "the");
            return InstrumentPhrase.Unknown(
                at,
                "an instrument such as 'guitar', 'strings 4-1' or 'all strings' after 'on'"
            );
        }

        return opening.Is("in") ? AfterIn(at)
            : opening.Is("with")
                ? Failure.Expected(
                    "'a capo at 2', 'fingers', 'the thumb' or 'the instrument turned over' after 'with'",
                    BehindArticle(at),
                    "capo",
                    "fingers",
                    "thumb"
                )
            : opening.Is("without")
                ? Failure.Expected("'a capo' or 'the thumb' after 'without'", BehindArticle(at), "capo", "thumb")
            : opening.Is("for")
                ? Failure.Expected(
                    "'a small hand', 'a large hand', 'a child's hand', 'a hand of 176 mm' or 'a left-handed player' after 'for'",
                    BehindArticle(at),
                    "small",
                    "large",
                    "adult",
                    "child's",
                    "hand",
                    "left-handed",
                    "right-handed"
                )
            : Symbols.Misread(at) ?? General(at, isSeparated);
    }

    private static Token BehindArticle(Cursor at) => at.Peek(1).IsAny("a", "an", "the") ? at.Peek(2) : at.Peek(1);

    private static Failure AfterIn(Cursor at)
    {
        var next = at.Peek(1);
        return Notes.ReadKind(at, 1).Kind is { IsSevenNote: true } kind
            ? Failure.Expected($"a tonic before the kind of key, such as 'D {kind}'", next)
            : Failure.Expected(
                "a key such as 'D major', 'close position', 'drop 2', 'any order', 'fifth position' or 'first inversion' after 'in'",
                next,
                ["close", "drop", "any", "root", "every", "the", .. Numbers.OrdinalWords]
            );
    }

    private static Failure General(Cursor at, bool isSeparated)
    {
        var found = at.Current;
        if (found.Kind == TokenKind.End)
        {
            return Failure.Expected(
                at.Previous.Kind == TokenKind.Comma || at.Previous.Is("and")
                    ? $"another phrase after '{at.Previous.Text}'"
                    : "what to show, such as 'the notes of the key' or 'the triads'",
                found
            );
        }

        var what = isSeparated
            ? "what to show (such as 'the notes of the key') or a phrase with 'on', 'in', 'frets', 'as' or 'for'"
            : "a comma and another phrase, or the end of the sentence";
        return Failure.At(
            found,
            $"expected {what}, found {Failure.Shown(found)}",
            [.. Symbols.Capitals(found), .. Spelling.Edits(found, Words)]
        );
    }
}
