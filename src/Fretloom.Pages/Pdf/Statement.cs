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
    /// <summary>One tick for each key with its name, in the order drawn, twelve to a row; empty for none.</summary>
    public IReadOnlyList<(TypstMarkup Name, bool Holds)> Keys { get; init; } = [];

    /// <summary>More words in small type below.</summary>
    public TypstMarkup Details { get; init; }

    /// <summary>A picture at the right, such as the first counterexample, as wide as its column, with words below it.</summary>
    public (HandoutPicture Picture, TypstMarkup Words)? Aside { get; init; }

    /// <summary>The statement as a block of a handout.</summary>
    public TypstMarkup ToMarkup()
    {
        var keys = string.Concat(Keys.Select(key => $"({key.Name.Bracketed}, {(key.Holds ? "true" : "false")}), "));
        var aside = Aside is var (picture, words) ? picture.ToAside(words) : "none";
        var mark = Mark switch
        {
            StatementMark.Holds => "holds",
            StatementMark.Fails => "fails",
            StatementMark.Open => "open",
            _ => throw new InvalidOperationException($"There is no mark {Mark}."),
        };
        return TypstMarkup.Block(
            $"statement({Sentence.Bracketed}, verdict: \"{mark}\", words: {Words.OrNone}, keys: ({keys}), details: {Details.OrNone}, aside: {aside})"
        );
    }
}
