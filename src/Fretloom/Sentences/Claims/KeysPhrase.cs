using Fretloom.Claims;
using Fretloom.Sentences.Reading;
using Fretloom.Sentences.Show;
using Fretloom.Theory;

namespace Fretloom.Sentences.Claims;

/// <summary><c>in every key</c>, <c>in every harmonic minor key</c>, <c>in every mode</c>, <c>in the key of D major</c>.</summary>
internal static class KeysPhrase
{
    private static readonly string[] EveryWords = [.. Notes.KindWords, "key", "mode"];

    /// <summary>Reads the phrase, which begins with <c>in</c>.</summary>
    public static Failure? Read(Cursor at, out KeyScope? keys)
    {
        keys = null;
        at.Skip();
        if (at.AcceptAny("every", "each", "all", "any"))
        {
            return ReadEvery(at, out keys);
        }

        if (at.Accept("the") && !at.Accept("key", "of"))
        {
            return Failure.Expected(
                "'key of' and a note name after 'the'",
                Phrase.Missing(at, "key", "of"),
                "key",
                "of"
            );
        }

        if (OfChord(at.Current) is { } chord)
        {
            return chord;
        }

        if (at.Previous.Is("in") && Notes.German(at.Current) is null && Notes.Read(at, 0, out _) == 0)
        {
            return Failure.Expected("'every', or 'the key of' and a note name", at.Current, "every", "the");
        }

        return ReadOne(at, out keys);
    }

    private static Failure? ReadEvery(Cursor at, out KeyScope? keys)
    {
        keys = null;
        if (at.AcceptAny("key", "keys"))
        {
            keys = new KeyScope.EveryKey();
            return null;
        }

        if (at.AcceptAny("mode", "modes"))
        {
            keys = new KeyScope.EveryMode();
            return null;
        }

        var first = at.Current;
        var (kind, count) = Notes.ReadKind(at, 0);
        if (kind is null)
        {
            return Failure.Expected(
                $"'key', 'mode' or a kind of key such as 'major' or 'harmonic minor' after '{at.Previous.Text}'",
                first,
                EveryWords
            );
        }

        at.Skip(count);
        if (!kind.IsSevenNote)
        {
            return Failure.At(first, at.Previous, $"a key has seven notes and {kind} has {kind.Intervals.Count}");
        }

        keys = IsAnyMinor(first, count) ? new KeyScope.EveryMinorKey() : new KeyScope.EveryOf(kind);
        return at.AcceptAny("key", "keys", "mode", "modes")
            ? null
            : Failure.Expected($"'key' after '{at.Previous.Text}'", at.Current, "key", "keys");
    }

    private static Failure? ReadOne(Cursor at, out KeyScope? keys)
    {
        keys = null;
        var length = Notes.Read(at, 0, out _);
        if (length == 0 && Notes.German(at.Current) is null)
        {
            return Failure.Expected($"a note name such as 'D' or 'Bb' after '{at.Previous.Text}'", at.Current);
        }

        var tonic = at.Words(0, length);
        var kind = at.Peek(length);
        if (length > 0 && IsAnyMinor(kind, Notes.ReadKind(at, length).Count))
        {
            return Failure.At(
                kind,
                $"which minor? say '{tonic} natural minor', '{tonic} harmonic minor' or '{tonic} melodic minor'",
                Edit.Of(kind, "natural minor")
            );
        }

        if (length > 0 && Several(at, length) is { } several)
        {
            return several;
        }

        var failure = KeyPhrase.Read(at, out var key);
        keys = key is null ? null : new KeyScope.One(key);
        return failure;
    }

    // Am is a chord; the key on its root may be any of three.
    private static Failure? OfChord(Token token)
    {
        var text = token.Text;
        var tonic =
            text.EndsWith("min", StringComparison.Ordinal) ? text[..^3]
            : text.EndsWith('m') ? text[..^1]
            : "";
        return token.Kind == TokenKind.Word && NoteName.TryParse(tonic, out _)
            ? Failure.At(
                token,
                $"'{text}' is a chord, not a key: say '{tonic} natural minor', '{tonic} harmonic minor' or '{tonic} melodic minor'",
                Edit.Of(token, $"{tonic} natural minor")
            )
            : null;
    }

    // G and D major.
    private static Failure? Several(Cursor at, int length)
    {
        var joint = at.Peek(length);
        var isJoined = joint.IsAny("and", "or") || joint.Kind == TokenKind.Comma;
        var next = length + 1;
        var other = isJoined ? Notes.Read(at, next, out _) : 0;
        var (kind, count) = other > 0 ? Notes.ReadKind(at, next + other) : default;
        return kind is null
            ? null
            : Failure.At(
                at.Current,
                at.Peek(next + other + count - 1),
                $"a claim names one key, or all of a kind: say '{at.Words(0, length)} {ClaimPrinter.Print(kind)}', or 'every {ClaimPrinter.Print(kind)} key'",
                Edit.Of(at.Current, at.Peek(next + other + count - 1), $"every {ClaimPrinter.Print(kind)} key")
            );
    }

    /// <summary>Whether "minor" stands alone, which may be any of its three forms.</summary>
    public static bool IsAnyMinor(Token token, int count) => token.Is("minor") && count == 1;
}
