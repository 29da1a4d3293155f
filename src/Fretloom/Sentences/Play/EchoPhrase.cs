using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Play;

/// <summary><c>two bars, then two bars' rest</c>: bars to be answered.</summary>
internal static class EchoPhrase
{
    private static readonly string[] BarWords = ["bar", "bars", "measure", "measures"];
    private static readonly string[] Owners =
    [
        "bar's",
        "bars'",
        "bars",
        "bar",
        "measure's",
        "measures'",
        "measures",
        "measure",
    ];

    public static PlayPhraseKind Kind { get; } =
        new(
            "the bars to be answered",
            PlayPhrase.Echo,
            at => Numbers.Cardinal(at.Current) is not null && at.Peek(1).IsAny(BarWords),
            Read,
            "two bars, then two bars' rest",
            "one bar, then one bar's rest",
            "2 bars, then 2 bars of rest"
        );

    /// <summary>The words of the phrase.</summary>
    public static string WordsOf(int bars)
    {
        var number = Numbers.InWords(bars);
        return bars == 1 ? "one bar, then one bar's rest" : $"{number} bars, then {number} bars' rest";
    }

    private static Failure? Read(Cursor at, PlayDraft draft)
    {
        var first = at.Current;
        var bars = Numbers.Cardinal(first)!.Value;
        at.Skip(2);
        at.AcceptAny("played", "heard");
        at.Accept(TokenKind.Comma);
        at.Accept("and");
        at.Accept("then");
        var second = at.Current;
        if (second.Kind == TokenKind.End && at.Previous.IsAny(BarWords))
        {
            return Failure.At(first, at.Previous, TimesPhrase.HowLong);
        }

        if (Numbers.Cardinal(second) is not { } rest || !at.Peek(1).IsAny(Owners))
        {
            return Failure.Expected($"the bars of rest, such as 'then {WordsOf(2).Split("then ")[1]}'", second);
        }

        at.Skip(2);
        at.Accept("of");
        if (!at.AcceptAny("rest", "silence"))
        {
            return Failure.Expected($"'rest' after '{at.Previous.Text}'", at.Current, "rest");
        }

        if (rest != bars)
        {
            return Failure.At(
                second,
                $"the rest is as long as what is played, {bars} {(bars == 1 ? "bar" : "bars")}",
                Edit.Of(second, first.Text)
            );
        }

        if (bars is < 1 or > PlaySentence.MostEchoBars)
        {
            return Failure.At(first, $"expected 1 to {PlaySentence.MostEchoBars} bars, found {Failure.Shown(first)}");
        }

        draft.Sentence = draft.Sentence with { EchoBars = bars };
        return null;
    }
}
