using System.Globalization;
using Fretloom.Hand;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Show;

/// <summary>Who plays.</summary>
internal static class HandPhrases
{
    private static readonly (string Word, HandSize Size)[] Sizes =
    [
        ("small", HandSize.Small),
        ("large", HandSize.Large),
        ("adult", HandSize.Adult),
        ("child's", HandSize.Child),
        ("child", HandSize.Child),
        ("adult's", HandSize.Adult),
    ];

    /// <summary><c>for a small hand</c>, <c>for a hand of 176 mm</c>.</summary>
    public static PhraseKind Hand { get; } =
        new(
            "the hand",
            ShowPhrase.Hand,
            at => at.Is("for") && (at.Peek(Lead(at)).Is("hand") || SizeOf(at.Peek(Lead(at))) is not null),
            ReadHand,
            "for a small hand",
            "for a large hand",
            "for an adult hand",
            "for a child's hand",
            "for small hands",
            "for a hand of 176 mm"
        );

    /// <summary><c>for a left-handed player</c>, <c>for a right-handed player</c>.</summary>
    public static PhraseKind Player { get; } =
        new(
            "the player",
            ShowPhrase.Player,
            at => Handed(at, at.Is("for") ? Lead(at) : 0).Count > 0,
            ReadPlayer,
            "for a left-handed player",
            "for left-handed players",
            "for a right-handed player",
            "left-handed",
            "lefty"
        );

    /// <summary>Whether some words ahead say left-handed or right-handed, and how many they are; 0 when they say neither.</summary>
    public static (bool IsLeft, int Count) Handed(Cursor at, int ahead)
    {
        var word = at.Peek(ahead);
        var isApart = word.IsAny("left", "right") && at.Peek(ahead + 1).Is("handed");
        return word.IsAny("left-handed", "lefty") ? (true, 1)
            : word.Is("right-handed") ? (false, 1)
            : isApart ? (word.Is("left"), 2)
            : default;
    }

    /// <summary>How a hand is asked for: <c>a small hand</c>.</summary>
    public static string WordsOf(HandSize size)
    {
        var at = Array.FindIndex(Sizes, pair => pair.Size == size);
        return at < 0 ? $"a hand of {size}"
            : size == HandSize.Adult ? "an adult hand"
            : $"a {Sizes[at].Word} hand";
    }

    /// <summary>Reads <c>small</c>, <c>176 mm</c>, <c>a small hand</c>, <c>a hand of 176 mm</c>, without <c>for</c>.</summary>
    public static Failure? Read(Cursor at, out HandSize hand)
    {
        hand = default;
        at.AcceptAny("a", "an", "the");
        if (SizeOf(at.Current) is { } size)
        {
            hand = size;
            var word = at.Current;
            at.Skip();
            return at.AcceptAny("hand", "hands") || at.IsAtEnd
                ? null
                : Failure.Expected($"'hand' after '{word.Text}'", at.Current, "hand");
        }

        at.Accept("hand");
        at.Accept("of");
        return ReadLength(at, out hand);
    }

    /// <summary>Notes who plays; a failure when the sentence said the opposite before.</summary>
    public static Failure? Choose(bool isLeft, Token place, ShowDraft draft)
    {
        var isOpposite = draft.Sentence.IsLeftHanded == !isLeft;
        draft.Sentence = draft.Sentence with { IsLeftHanded = isLeft };
        return isOpposite
            ? Failure.At(place, "the player was already said to be the opposite earlier in this sentence")
            : null;
    }

    private static HandSize? SizeOf(Token token) =>
        Array.FindIndex(Sizes, pair => token.Is(pair.Word)) is >= 0 and var at ? Sizes[at].Size : null;

    private static int Lead(Cursor at) => at.Peek(1).IsAny("a", "an", "the") ? 2 : 1;

    private static Failure? ReadHand(Cursor at, ShowDraft draft)
    {
        at.Skip();
        var failure = Read(at, out var hand);
        draft.Sentence = draft.Sentence with { Hand = hand };
        return failure;
    }

    private static Failure? ReadLength(Cursor at, out HandSize hand)
    {
        hand = default;
        var token = at.Current;
        var hasUnit = token.Kind == TokenKind.Word && token.Text.EndsWith("mm", StringComparison.OrdinalIgnoreCase);
        var figures = hasUnit ? token.Text.AsSpan(..^2) : token.Text;
        if (
            token.Kind != TokenKind.Word
            || !double.TryParse(figures, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var length)
        )
        {
            return Failure.Expected(
                "'small', 'adult', 'large', 'child' or a length such as '176 mm'",
                token,
                Sizes.Select(pair => pair.Word)
            );
        }

        at.Skip();
        if (!hasUnit && !at.AcceptAny("mm", "millimetres", "millimeters"))
        {
            return Failure.Expected($"'mm' after '{token.Text}'", at.Current, "mm");
        }

        if (length is not (>= HandSize.LeastMm and <= HandSize.MostMm))
        {
            return Failure.At(
                token,
                $"a hand is {HandSize.LeastMm} to {HandSize.MostMm} mm long, wrist to tip of the middle finger, found {Failure.Shown(token)}"
            );
        }

        hand = new HandSize(length);
        return null;
    }

    private static Failure? ReadPlayer(Cursor at, ShowDraft draft)
    {
        var isFor = at.Is("for");
        var lead = isFor ? Lead(at) : 0;
        var (isLeft, count) = Handed(at, lead);
        at.Skip(lead + count);
        if (Choose(isLeft, at.Previous, draft) is { } opposite)
        {
            return opposite;
        }

        var isWhole = at.Previous.Is("lefty") || !isFor;
        return at.AcceptAny("player", "players") || isWhole
            ? null
            : Failure.Expected($"'player' after '{at.Previous.Text}'", at.Current, "player", "players");
    }
}
