using Fretloom.Sentences.Reading;
using Fretloom.Sentences.Show;

namespace Fretloom.Sentences.Claims;

/// <summary>Reads where and in which keys a claim is made, in any order.</summary>
internal static class ScopePhrases
{
    /// <summary>Reads everything before the claim itself.</summary>
    public static Failure? Read(Cursor at, Scope scope)
    {
        if (ReadAll(at, scope) is { } failure)
        {
            return failure;
        }

        return scope.Complete(at.Current) ?? (scope.Keys is null ? KeysUnsaid(at) : null);
    }

    /// <summary>Reads the phrases that stand here, and the commas behind them.</summary>
    public static Failure? ReadAll(Cursor at, Scope scope)
    {
        while (ReadOne(at, scope, out var failure))
        {
            if (failure is not null)
            {
                return failure;
            }

            at.Accept(TokenKind.Comma);
            at.Skip(at.Is("and") && at.Peek(1).IsAny("on", "in", "from", "between", "with") ? 1 : 0);
        }

        return null;
    }

    /// <summary>Reads phrases behind which nothing is claimed.</summary>
    public static Failure? ReadAlone(Cursor at, Scope scope)
    {
        if (ReadAll(at, scope) is { } failure)
        {
            return failure;
        }

        return at.Current.Kind != TokenKind.End
                ? Failure.Expected(
                    "keys ('in every major key') or a place ('on guitar strings 4-1')",
                    at.Current,
                    "in",
                    "on"
                )
            : scope.Keys is null ? Failure.At(at.Current, "say in which keys, such as 'in every major key'")
            : scope.Complete(at.Current);
    }

    /// <summary>Whether a phrase stands here.</summary>
    public static bool Begins(Cursor at) =>
        at.Current.IsAny("in", "on") || WindowPhrase.Begins(at) || CapoPhrase.Kind.Begins(at);

    private static bool ReadOne(Cursor at, Scope scope, out Failure? failure)
    {
        var first = at.Current;
        if (WindowPhrase.Begins(at))
        {
            failure = WindowPhrase.Read(at, out var window) ?? scope.Note(ScopePart.Frets, Since(first, at));
            scope.Window ??= window;
        }
        else if (at.Is("in"))
        {
            failure = KeysPhrase.Read(at, out var keys) ?? scope.Note(ScopePart.Keys, Since(first, at));
            scope.Keys ??= keys;
        }
        else if (at.Is("on"))
        {
            failure = PlacesPhrase.Read(at, scope);
        }
        else if (CapoPhrase.Kind.Begins(at))
        {
            failure = CapoPhrase.Read(at, out int capo) ?? scope.Note(ScopePart.Capo, Since(first, at));
            scope.Capo = capo;
        }
        else
        {
            failure = null;
            return false;
        }

        return true;
    }

    /// <summary>The words from one on to the place reached.</summary>
    public static Token Since(Token first, Cursor at) =>
        new(TokenKind.Word, first.Start, Math.Max(first.Length, at.Previous.End - first.Start), first.Text);

    private static Failure KeysUnsaid(Cursor at)
    {
        var begins = at.Current;
        return Simple.Begins(at)
            ? Failure.At(
                begins,
                "a claim names its keys first, such as 'in every major key' or 'in the key of D major'",
                Edit.Of(begins, $"in every major key, {begins.Text.ToLowerInvariant()}")
            )
            : Failure.Expected(
                "the keys ('in every major key'), a place ('on guitar strings 4-1') or what is claimed",
                begins,
                ["in", "on", .. Simple.Openings]
            );
    }
}
