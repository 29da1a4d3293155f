using Fretloom.Neck;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Claims;

/// <summary>String sets by number or by a name of the user's own: <c>strings 4-1</c>, <c>the top strings</c>.</summary>
internal static class StringNames
{
    /// <summary>Whether <c>all strings</c> or <c>every string</c> stands here.</summary>
    public static bool IsAll(Cursor at)
    {
        var noun = at.Peek(1).Is("the") ? 2 : 1;
        return at.Current.IsAny("every", "each", "all")
            && at.Peek(noun).IsAny("string", "strings")
            && !at.Peek(noun + 1).IsAny("tuning", "tunings");
    }

    /// <summary>Whether a string set begins here.</summary>
    public static bool Begins(Cursor at, Scope scope) =>
        at.Current.IsAny("string", "strings") || Named(at, scope).Set is not null;

    /// <summary>Reads a string set that begins here; numbers are checked against no instrument.</summary>
    /// <param name="at">The place.</param>
    /// <param name="scope">Knows the names.</param>
    /// <param name="said">The numbers with their places; those of a named set stand where its name does.</param>
    /// <param name="set">The strings.</param>
    public static Failure? Read(Cursor at, Scope scope, List<(int Number, Token Place)> said, out StringSet set)
    {
        var first = at.Current;
        if (Named(at, scope) is ({ } named, var count))
        {
            at.Skip(count);
            at.AcceptAny("set", "sets");
            set = named.Strings;
            said.AddRange(set.Numbers.Select(number => (number, ScopePhrases.Since(first, at))));
            return null;
        }

        // 2 of the seventh shapes.
        at.Skip();
        return StringNumbers.Read(at, said, ahead => at.Peek(ahead + 1).Is("of"), out set);
    }

    /// <summary>The failure for <c>strngs</c> behind an instrument; null where no such word stands.</summary>
    public static Failure? Misspelled(Cursor at) =>
        at.Current is { Kind: TokenKind.Word } word
        && !Vocabulary.Knows(word.Text)
        && Spelling.Edits(word, ["strings", "string"]) is { Length: > 0 } edits
            ? Failure.At(
                word,
                $"expected 'strings 4-1' or a comma after '{at.Previous.Text}', found {Failure.Shown(word)}",
                edits
            )
            : null;

    /// <summary>The failure for the first string that an instrument lacks; null when it has all.</summary>
    public static Failure? Missing(List<(int Number, Token Place)> said, Instrument instrument)
    {
        foreach (var (number, place) in said)
        {
            if (number > instrument.Strings.Count)
            {
                return Failure.At(
                    place,
                    $"the {instrument} has {instrument.Strings.Count} strings; there is no string {number}"
                );
            }
        }

        return null;
    }

    /// <summary>Changes of the words here to names of string sets, in small letters.</summary>
    public static IEnumerable<Edit> Near(Cursor at, Scope scope)
    {
        var first = at.Current;
        var length = 0;
        while (
            length < NamedStrings.MostWords && at.Peek(length) is { Kind: TokenKind.Word } word && !word.Is("strings")
        )
        {
            length++;
        }

        if (length == 0)
        {
            return [];
        }

        var last = at.Peek(length - 1);
        var whole = new Token(
            TokenKind.Word,
            first.Start,
            last.End - first.Start,
            at.Words(0, length).ToLowerInvariant()
        );
        return Spelling.EditsOfSymbol(whole, scope.Defaults.StringSets.Select(set => set.Name.ToLowerInvariant()));
    }

    /// <summary>The failure for strings that are called by a name that nobody gave; null where no name stands.</summary>
    public static Failure? Unknown(Cursor at, Scope scope)
    {
        var article = at.Current.IsAny("the", "my") ? 1 : 0;
        for (var count = 1; count <= NamedStrings.MostWords; count++)
        {
            var last = at.Peek(article + count - 1);
            if (last.Kind != TokenKind.Word || last.IsAny("string", "strings"))
            {
                break;
            }

            // Guitar strings 4-1.
            if (at.Peek(article + count).Is("strings") && Numbers.Cardinal(at.Peek(article + count + 1)) is null)
            {
                return Failure.At(
                    at.Peek(article),
                    last,
                    $"no string set is called '{at.Words(article, count)}' here: say 'strings 4-1', or name the set in the lesson",
                    [.. Near(at, scope), .. ByHeight(at, article, count, scope)]
                );
            }
        }

        return null;
    }

    // The top four strings, the high strings: which ones is suggested, as "top" may be meant of the pitch or of the page.
    private static IEnumerable<Edit> ByHeight(Cursor at, int article, int count, Scope scope)
    {
        var instrument = scope.Instrument ?? scope.Defaults.Instrument;
        var all = instrument.Strings.Count;
        var isHigh = Enumerable.Range(article, count).Any(ahead => at.Peek(ahead).IsAny(HighWords));
        var isLow = Enumerable.Range(article, count).Any(ahead => at.Peek(ahead).IsAny(LowWords));
        if (isHigh == isLow)
        {
            yield break;
        }

        // The article may have been read.
        var first = at.Previous.IsAny("the", "my") ? at.Previous : at.Current;
        var said = Enumerable.Range(article, count).Select(ahead => Numbers.Cardinal(at.Peek(ahead))).Max();
        foreach (var strings in said is { } number ? new[] { number } : [all / 2, 4, 3, 2])
        {
            if (strings >= 1 && strings <= all)
            {
                var set = isHigh ? StringSet.Run(strings, 1) : StringSet.Run(all, all - strings + 1);
                yield return Edit.Of(first, at.Peek(article + count), $"strings {set}");
            }
        }
    }

    private static readonly string[] HighWords = ["top", "high", "higher", "highest", "treble", "thin", "thinnest"];

    private static readonly string[] LowWords = ["bottom", "low", "lower", "lowest", "bass", "thick", "thickest"];

    // The longest name wins. The article may be left out, and strings stands behind.
    private static (NamedStrings? Set, int Count) Named(Cursor at, Scope scope)
    {
        var article = at.Current.IsAny("the", "my") ? 1 : 0;
        for (var count = NamedStrings.MostWords; count > 0; count--)
        {
            if (!at.Peek(article + count).IsAny("string", "strings"))
            {
                continue;
            }

            var name = at.Words(article, count);
            foreach (var set in scope.Defaults.StringSets.AsSpan())
            {
                if (set.Name.Equals(name, StringComparison.OrdinalIgnoreCase))
                {
                    return (set, article + count + 1);
                }
            }
        }

        return (null, 0);
    }
}
