using Fretloom.Neck;

namespace Fretloom.Sentences.Reading;

/// <summary>The numbers of some strings: <c>4-1</c>, <c>4 to 1</c>, <c>6, 4, 3 and 2</c>, <c>3</c>.</summary>
internal static class StringNumbers
{
    private const int MostStrings = 20;

    /// <summary>Reads the numbers that begin here.</summary>
    /// <param name="at">The place.</param>
    /// <param name="said">Every number with its place, as far as it went.</param>
    /// <param name="isOther">Whether the number some tokens ahead, behind a comma or <c>and</c>, begins something else.</param>
    /// <param name="set">The strings.</param>
    public static Failure? Read(
        Cursor at,
        List<(int Number, Token Place)> said,
        Func<int, bool> isOther,
        out StringSet set
    )
    {
        set = default;
        said.Clear();
        var first = at.Current;
        if (ReadNumber(at, said) is { } failure)
        {
            return failure;
        }

        // The half-turn may carry something of string 4 to something else.
        var isRun = at.Current.IsAny("to", "through") && Numbers.Cardinal(at.Peek(1)) is not null;
        if (at.Current.Kind == TokenKind.Dash || isRun)
        {
            at.Skip();
            return ReadNumber(at, said) ?? Run(first, at.Previous, said, out set);
        }

        while (Next(at, isOther) is { } skip)
        {
            at.Skip(skip);
            if ((ReadNumber(at, said) ?? Repeated(said)) is { } wrong)
            {
                return wrong;
            }
        }

        set = new StringSet(said.Select(one => one.Number));
        return null;
    }

    // How many tokens stand before the next number of the list; null when the list ends here.
    private static int? Next(Cursor at, Func<int, bool> isOther)
    {
        var skip = Series.Next(at, 0);
        return Numbers.Cardinal(at.Peek(skip)) is not null && !isOther(skip) ? skip : null;
    }

    private static Failure? ReadNumber(Cursor at, List<(int Number, Token Place)> said)
    {
        var token = at.Current;
        if (Numbers.Cardinal(token) is not { } number)
        {
            return Failure.Expected("string numbers such as '4-1' or '6, 4, 3 and 2'", token);
        }

        at.Skip();
        said.Add((number, token));
        return number switch
        {
            0 => Failure.At(token, "strings are counted from 1, the one nearest the floor; there is no string 0"),
            > MostStrings => Failure.At(
                token,
                $"no instrument here has more than {MostStrings} strings, found {Failure.Shown(token)}",
                RunTogether(token)
            ),
            _ => null,
        };
    }

    // 4321 is 4-1, 642 is 6, 4 and 2.
    private static Edit[] RunTogether(Token token)
    {
        var digits = token.Text.Select(digit => digit - '0').ToList();
        var falls =
            digits.TrueForAll(digit => digit is >= 1 and <= 9)
            && digits.Zip(digits.Skip(1)).All(pair => pair.First > pair.Second);
        return falls ? [Edit.Of(token, new StringSet(digits).ToString())] : [];
    }

    private static Failure? Run(Token first, Token last, List<(int Number, Token Place)> said, out StringSet set)
    {
        var (far, near) = (said[0].Number, said[1].Number);
        if (far < near)
        {
            set = default;
            return Failure.At(
                first,
                last,
                $"a string set goes from the far string down to the one nearest the floor, found '{far}-{near}'",
                Edit.Of(first, last, $"{near}-{far}")
            );
        }

        set = StringSet.Run(far, near);
        return null;
    }

    private static Failure? Repeated(List<(int Number, Token Place)> said)
    {
        var (number, place) = said[^1];
        return said.Count(one => one.Number == number) > 1
            ? Failure.At(place, $"string {number} is named twice")
            : null;
    }
}
