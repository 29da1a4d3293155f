namespace Fretloom.Pages.Pdf;

/// <summary>How the tick before a statement is drawn: filled means true, hollow means not.</summary>
public enum StatementMark
{
    /// <summary>Filled.</summary>
    Holds,

    /// <summary>Hollow.</summary>
    Fails,

    /// <summary>Dashed: neither true nor false, as when there is nothing to test.</summary>
    Open,
}

/// <summary>A claim with what came of checking it, ready to be set.</summary>
/// <param name="Mark">Its tick.</param>
/// <param name="Sentence">The claim.</param>
/// <param name="Words">The verdict in words, such as "Holds in 12 of 12 keys".</param>
public sealed record Statement(StatementMark Mark, TypstMarkup Sentence, TypstMarkup Words)
{
    /// <summary>A short heading above it.</summary>
    public TypstMarkup Title { get; init; }

    /// <summary>Words above the claim.</summary>
    public TypstMarkup Caption { get; init; }

    /// <summary>Rows of ticks; empty for none.</summary>
    public IReadOnlyList<StatementKeys> Rows { get; init; } = [];

    /// <summary>More words in small type below.</summary>
    public TypstMarkup Details { get; init; }

    /// <summary>A picture at the right, such as the first counterexample, as wide as its column, with words below it.</summary>
    public (HandoutPicture Picture, TypstMarkup Words)? Aside { get; init; }

    /// <summary>A picture below it, as wide as it was drawn; null for none.</summary>
    public HandoutPicture? Below { get; init; }

    /// <summary>The statement as a block of a handout.</summary>
    public TypstMarkup ToMarkup()
    {
        var rows = string.Concat(Rows.Select(row => row.ToTypst() + ", "));
        var aside = Aside is var (picture, words) ? picture.ToAside(words) : "none";
        var below = Below is null ? "none" : $"arguments({Below.Arguments})";
        return TypstMarkup.Block(
            $"statement({Sentence.Bracketed}, verdict: \"{Mark.InTypst()}\", title: {Title.OrNone}, caption: {Caption.OrNone}, words: {Words.OrNone}, rows: ({rows}), details: {Details.OrNone}, aside: {aside}, below: {below})"
        );
    }
}

/// <summary>The keys of one kind as a row of ticks.</summary>
/// <param name="Kind">What stands above the row; empty for nothing.</param>
/// <param name="Ticks">One tick for each key with its name, in the order drawn.</param>
public sealed record StatementKeys(TypstMarkup Kind, IReadOnlyList<(TypstMarkup Name, StatementMark Mark)> Ticks)
{
    internal string ToTypst()
    {
        var ticks = string.Concat(Ticks.Select(tick => $"({tick.Name.Bracketed}, \"{tick.Mark.InTypst()}\"), "));
        return $"({Kind.OrNone}, ({ticks}))";
    }
}

internal static class StatementMarks
{
    /// <summary>The word of the handout template.</summary>
    public static string InTypst(this StatementMark mark) =>
        mark switch
        {
            StatementMark.Holds => "holds",
            StatementMark.Fails => "fails",
            StatementMark.Open => "open",
            _ => throw new ArgumentOutOfRangeException(nameof(mark)),
        };
}
