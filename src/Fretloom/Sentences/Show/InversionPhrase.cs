using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Show;

/// <summary><c>in root position</c>, <c>in first inversion</c>, <c>in first and second inversion</c>, <c>in every inversion</c>.</summary>
internal static class InversionPhrase
{
    // A chord of seven members has six.
    private const int LastInversion = 6;

    public static PhraseKind Kind { get; } =
        new(
            "the inversion",
            ShowPhrase.Inversion,
            Begins,
            Read,
            "in root position",
            "in first inversion",
            "in first and second inversion",
            "in root position and first inversion",
            "in every inversion"
        );

    private static bool Begins(Cursor at)
    {
        if (!at.Is("in"))
        {
            return false;
        }

        var ahead = 1;
        while (ahead < 16 && (at.Peek(ahead).Is("and") || Numbers.Ordinal(at.Peek(ahead)) is not null))
        {
            ahead++;
        }

        return at.Peek(1).IsAny("root", "every", "all", "each") || at.Peek(ahead).IsAny("inversion", "inversions");
    }

    private static Failure? Read(Cursor at, ShowDraft draft)
    {
        at.Skip();
        if (at.AcceptAny("every", "all", "each", "any"))
        {
            if (at.Current.IsAny("key", "keys", "major", "minor"))
            {
                return Failure.At(
                    at.Previous,
                    at.Current,
                    $"a picture shows one key: '{at.Previous.Text} {at.Current.Text}' is said in claims, which are checked, and of what is played"
                );
            }

            draft.Voicing = draft.Voicing with { Inversions = ValueList.Create<int>([]) };
            return at.AcceptAny("inversion", "inversions")
                ? null
                : Failure.Expected($"'inversion' after '{at.Previous.Text}'", at.Current, "inversion", "inversions");
        }

        var inversions = new SortedSet<int>();
        if (at.Accept("root"))
        {
            inversions.Add(0);
            if (!at.Accept("position"))
            {
                return Failure.Expected("'position' after 'root'", at.Current, "position");
            }
        }

        var failure = ReadOrdinals(at, inversions);
        draft.Voicing = draft.Voicing with { Inversions = inversions.ToValueList() };
        return failure;
    }

    private static Failure? ReadOrdinals(Cursor at, SortedSet<int> inversions)
    {
        var isAfterRoot = inversions.Count > 0;
        var skip = isAfterRoot ? 1 : 0;
        if (isAfterRoot && !(at.Is("and") && Numbers.Ordinal(at.Peek(1)) is not null))
        {
            return null;
        }

        while (Numbers.Ordinal(at.Peek(skip)) is { } number)
        {
            var token = at.Peek(skip);
            if (number > LastInversion)
            {
                return Failure.At(
                    token,
                    $"no chord has more than {LastInversion} inversions, found {Failure.Shown(token)}"
                );
            }

            inversions.Add(number);
            at.Skip(skip + 1);
            skip = at.Is("and") ? 1 : 0;
        }

        return at.AcceptAny("inversion", "inversions")
            ? null
            : Failure.Expected($"'inversion' after '{at.Previous.Text}'", at.Current, "inversion");
    }
}
