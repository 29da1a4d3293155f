using Fretloom.Claims;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Claims;

/// <summary><c>exactly 3</c>, <c>at most 5</c>, <c>no</c>, <c>3</c>.</summary>
internal static class Counts
{
    private const int Largest = 999;

    /// <summary>The words that begin one, apart from numbers.</summary>
    public static readonly string[] Openings = ["exactly", "at", "more", "fewer", "no"];

    private const string OneBound =
        "a number has one bound: say 'at least 4', and 'at most 5' in another claim behind 'and'";

    /// <summary>Whether a condition on a number begins here.</summary>
    public static bool Begins(Cursor at) =>
        at.Current.IsAny("exactly", "at", "more", "fewer", "less") || Numbers.Cardinal(at.Current) is not null;

    /// <summary>Reads a condition on a number.</summary>
    public static Failure? Read(Cursor at, out Count count)
    {
        count = default;
        if (at.Accept("no"))
        {
            return null;
        }

        if (ReadComparison(at, out var comparison) is { } failure)
        {
            return failure;
        }

        var token = at.Current;
        if (token.Is("between"))
        {
            return Failure.At(token, OneBound);
        }

        if (Numbers.Cardinal(token) is not { } number)
        {
            return at.Previous.IsAny("exactly", "least", "most", "than")
                ? Failure.At(
                    token,
                    $"expected a whole number after '{at.Previous.Text}', found {Failure.Shown(token)}",
                    [.. Apart(token), .. Spelling.Edits(token, Numbers.Words)]
                )
                : Failure.At(
                    token,
                    $"expected a number, 'exactly', 'at least', 'at most', 'more than' or 'fewer than', found {Failure.Shown(token)}",
                    token.IsAny("a", "an")
                        ? [Edit.Of(token, "at least 1")]
                        : Spelling.Edits(token, Openings.Concat(Numbers.Words))
                );
        }

        at.Skip();
        if (at.Current.IsAny("or", "to") && Numbers.Cardinal(at.Peek(1)) is not null && !at.Peek(2).Is("of"))
        {
            return Failure.At(token, at.Peek(1), OneBound);
        }

        if (number > Largest)
        {
            return Failure.At(token, $"expected a number up to {Largest}, found {Failure.Shown(token)}");
        }

        count = new Count(comparison, number);
        return null;
    }

    private static Failure? ReadComparison(Cursor at, out Comparison comparison)
    {
        comparison = Comparison.Exactly;
        if (at.Accept("exactly"))
        {
            return null;
        }

        if (at.Accept("at"))
        {
            comparison = at.Is("least") ? Comparison.AtLeast : Comparison.AtMost;
            return at.AcceptAny("least", "most")
                ? null
                : Failure.Expected("'least' or 'most' after 'at'", at.Current, "least", "most");
        }

        if (at.AcceptAny("more", "fewer", "less"))
        {
            comparison = at.Previous.Is("more") ? Comparison.MoreThan : Comparison.FewerThan;
            return Phrase.Read(at, "than");
        }

        return null;
    }

    // 90mm is 90 mm.
    private static Edit[] Apart(Token token)
    {
        var figures = token.Text.EndsWith("mm", StringComparison.OrdinalIgnoreCase) ? token.Text[..^2] : "";
        return figures.Length > 0 && Numbers.Cardinal(token with { Text = figures }) is not null
            ? [Edit.Of(token, $"{figures} mm")]
            : [];
    }
}
