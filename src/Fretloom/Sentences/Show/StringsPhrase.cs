using Fretloom.Neck;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Show;

/// <summary><c>on strings 4-1</c>, <c>on strings 6, 4, 3 and 2</c>, <c>on all strings</c>.</summary>
internal static class StringsPhrase
{
    private const int MostStrings = 20;

    public static PhraseKind Kind { get; } =
        new(
            "the strings",
            ShowPhrase.Strings,
            at =>
                at.Peek(Lead(at)).IsAny("string", "strings")
                && (at.Is("on") || Numbers.Cardinal(at.Peek(1)) is not null),
            Read,
            "on strings 4-1",
            "on strings 4 to 1",
            "on strings 6, 4, 3 and 2",
            "on string 3",
            "on all strings",
            "on every string"
        );

    private static int Lead(Cursor at)
    {
        var ahead = at.Is("on") ? 1 : 0;
        ahead += at.Peek(ahead).IsAny("all", "every", "each") ? 1 : 0;
        return ahead + (at.Peek(ahead).Is("the") ? 1 : 0);
    }

    private static Failure? Read(Cursor at, ShowDraft draft)
    {
        var isAll = at.Peek(1).IsAny("all", "every", "each");
        at.Skip(Lead(at) + 1);
        draft.Strings.Clear();
        if (isAll)
        {
            draft.Sentence = draft.Sentence with { IsOnAllStrings = true };
            return null;
        }

        var first = at.Current;
        if (ReadNumber(at, draft) is { } failure)
        {
            return failure;
        }

        if (at.Current.Kind == TokenKind.Dash || at.Current.IsAny("to", "through"))
        {
            at.Skip();
            return ReadNumber(at, draft) ?? Run(first, at.Previous, draft);
        }

        while (Next(at) is { } skip)
        {
            at.Skip(skip);
            if ((ReadNumber(at, draft) ?? Repeated(draft)) is { } wrong)
            {
                return wrong;
            }
        }

        draft.Sentence = draft.Sentence with { Strings = new StringSet(draft.Strings.Select(said => said.Number)) };
        return null;
    }

    // How many tokens stand before the next number of the list; null when the list ends here.
    private static int? Next(Cursor at)
    {
        var skip = at.Current.Kind == TokenKind.Comma ? 1 : 0;
        skip += at.Peek(skip).Is("and") ? 1 : 0;
        var isNumber = Numbers.Cardinal(at.Peek(skip)) is not null && !at.Peek(skip + 1).IsAny("note", "notes");
        return isNumber && !OneShapePhrase.Begins(at, skip) ? skip : null;
    }

    private static Failure? ReadNumber(Cursor at, ShowDraft draft)
    {
        var token = at.Current;
        if (Numbers.Cardinal(token) is not { } number)
        {
            return Failure.Expected("string numbers such as '4-1' or '6, 4, 3 and 2'", token);
        }

        at.Skip();
        draft.Strings.Add((number, token));
        return number switch
        {
            0 => Failure.At(token, "strings are counted from 1, the one nearest the floor; there is no string 0"),
            > MostStrings => Failure.At(
                token,
                $"no instrument here has more than {MostStrings} strings, found {Failure.Shown(token)}"
            ),
            _ => null,
        };
    }

    private static Failure? Run(Token first, Token last, ShowDraft draft)
    {
        var (far, near) = (draft.Strings[0].Number, draft.Strings[1].Number);
        if (far < near)
        {
            return Failure.At(
                first,
                last,
                $"a string set goes from the far string down to the one nearest the floor, found '{far}-{near}'",
                Edit.Of(first, last, $"{near}-{far}")
            );
        }

        draft.Sentence = draft.Sentence with { Strings = StringSet.Run(far, near) };
        return null;
    }

    private static Failure? Repeated(ShowDraft draft)
    {
        var (number, place) = draft.Strings[^1];
        return draft.Strings.Count(said => said.Number == number) > 1
            ? Failure.At(place, $"string {number} is named twice")
            : null;
    }
}
