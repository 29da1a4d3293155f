using Fretloom.Claims;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Claims;

/// <summary><c>every palindromic four-string listed string set</c>, <c>every 4 string tuning that is palindromic with steps 4 to 5</c>.</summary>
internal static class QuantifiedPlaces
{
    private const int FewestStrings = 2;
    private const int MostStrings = 8;
    private const int LargestStep = 11;

    /// <summary>Reads from <c>every</c> on.</summary>
    public static Failure? Read(Cursor at, out PlaceScope? places)
    {
        places = null;
        at.Skip();
        var isPalindromic = at.Accept("palindromic");
        var number = at.Current;
        var strings = StringCount(at);
        isPalindromic |= at.Accept("palindromic");
        if (at.Accept("listed"))
        {
            places = new PlaceScope.Listed(isPalindromic, strings is not null);
            return strings is not (null or 4)
                ? Failure.At(
                    number,
                    $"listed string sets are all meant, or those of four strings, found {Failure.Shown(number)}"
                )
                : ReadStringSet(at);
        }

        if (!at.AcceptAny("tuning", "tunings"))
        {
            return Failure.Expected(
                "'listed string set', 'palindromic listed string set' or '4 string tuning' after 'every'",
                at.Current,
                "listed",
                "palindromic",
                "four-string",
                "tuning"
            );
        }

        return strings switch
        {
            null => Failure.Expected($"the number of strings, such as '4 string tuning'", number),
            < FewestStrings or > MostStrings => Failure.At(
                number,
                $"tunings have {FewestStrings} to {MostStrings} strings, found {Failure.Shown(number)}"
            ),
            { } count => ReadTuning(at, count, isPalindromic, out places),
        };
    }

    // 4 string, four string, 4-string, four-string.
    private static int? StringCount(Cursor at)
    {
        var token = at.Current;
        if (Numbers.Cardinal(token) is { } number && at.Peek(1).IsAny("string", "strings"))
        {
            at.Skip(2);
            return number;
        }

        const string ending = "-string";
        var isOneWord = token.Kind == TokenKind.Word && token.Text.EndsWith(ending, StringComparison.OrdinalIgnoreCase);
        var count = isOneWord ? Numbers.Cardinal(token with { Text = token.Text[..^ending.Length] }) : null;
        at.Skip(count is null ? 0 : 1);
        return count;
    }

    private static Failure? ReadStringSet(Cursor at)
    {
        at.Accept("string");
        return at.AcceptAny("set", "sets")
            ? null
            : Failure.Expected($"'string set' after '{at.Previous.Text}'", at.Current, "string", "set", "sets");
    }

    private static Failure? ReadTuning(Cursor at, int strings, bool isPalindromic, out PlaceScope? places)
    {
        places = null;
        var (least, most) = (1, LargestStep);
        while (true)
        {
            if (at.Accept("that"))
            {
                if (!at.AcceptAny("is", "are") || !at.Accept("palindromic"))
                {
                    return Failure.Expected("'is palindromic' after 'that'", at.Current, "is", "palindromic");
                }

                isPalindromic = true;
            }
            else if (at.Accept("with"))
            {
                if (ReadSteps(at, out least, out most) is { } failure)
                {
                    return failure;
                }
            }
            else
            {
                places = new PlaceScope.Tunings(strings, isPalindromic, least, most);
                return null;
            }
        }
    }

    private static Failure? ReadSteps(Cursor at, out int least, out int most)
    {
        (least, most) = (0, 0);
        if (!at.AcceptAny("steps", "step"))
        {
            return Failure.Expected("'steps' after 'with'", at.Current, "steps");
        }

        at.Accept("from");
        var first = at.Current;
        if (ReadStep(at, out least) is { } failure)
        {
            return failure;
        }

        if (at.Current.Kind != TokenKind.Dash && !at.Is("to"))
        {
            return Failure.Expected("the largest step, such as 'to 5'", at.Current, "to");
        }

        at.Skip();
        if (ReadStep(at, out most) is { } wrong)
        {
            return wrong;
        }

        return most < least
            ? Failure.At(
                first,
                at.Previous,
                $"steps {least} to {most} runs backwards; the smaller step comes first",
                Edit.Of(first, at.Previous, $"{most} to {least}")
            )
            : null;
    }

    private static Failure? ReadStep(Cursor at, out int step)
    {
        var token = at.Current;
        step = Numbers.Cardinal(token) ?? 0;
        if (Numbers.Cardinal(token) is null)
        {
            return Failure.Expected("a step in semitones, such as '5'", token, Numbers.Words);
        }

        at.Skip();
        return step is >= 1 and <= LargestStep
            ? null
            : Failure.At(
                token,
                $"steps between strings are 1 to {LargestStep} semitones, found {Failure.Shown(token)}"
            );
    }
}
