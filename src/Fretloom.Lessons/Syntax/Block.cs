using Fretloom.Claims;
using Fretloom.Exhibits;
using Fretloom.Theory;

namespace Fretloom.Lessons.Syntax;

/// <summary>A part of a lesson that stands by itself.</summary>
/// <param name="Line">The line where it begins, counted from 1.</param>
public abstract record Block(int Line)
{
    /// <summary>How deeply lists and quotes may stand in one another.</summary>
    public const int MaxDepth = 16;

    /// <summary>A heading.</summary>
    /// <param name="Line">As for every block.</param>
    /// <param name="Level">1 to 6; 1 stands directly below the title of the lesson.</param>
    /// <param name="Content">The words.</param>
    public sealed record Heading(int Line, int Level, ValueList<Inline> Content) : Block(Line);

    /// <summary>A paragraph.</summary>
    public sealed record Paragraph(int Line, ValueList<Inline> Content) : Block(Line);

    /// <summary>A list.</summary>
    /// <param name="Line">As for every block.</param>
    /// <param name="FirstNumber">The number of the first entry, or null for a list with dots.</param>
    /// <param name="IsTight">Whether entries follow each other without space.</param>
    /// <param name="Entries">The entries.</param>
    public sealed record Listing(int Line, int? FirstNumber, bool IsTight, ValueList<ValueList<Block>> Entries)
        : Block(Line);

    /// <summary>A quotation.</summary>
    public sealed record Quote(int Line, ValueList<Block> Content) : Block(Line);

    /// <summary>Lines to be read as they stand.</summary>
    public sealed record Code(int Line, string Characters) : Block(Line);

    /// <summary>A table.</summary>
    /// <param name="Line">As for every block.</param>
    /// <param name="Columns">How each column is set.</param>
    /// <param name="Header">The cells of the first row, one for each column.</param>
    /// <param name="Rows">The other rows, one cell for each column.</param>
    public sealed record Table(
        int Line,
        ValueList<ColumnAlignment> Columns,
        ValueList<ValueList<Inline>> Header,
        ValueList<ValueList<ValueList<Inline>>> Rows
    ) : Block(Line);

    /// <summary>A rule across the page.</summary>
    public sealed record Rule(int Line) : Block(Line);

    /// <summary>A show block as it was written. A resolved lesson has none.</summary>
    /// <param name="Line">As for every block.</param>
    /// <param name="Sentence">The sentence.</param>
    /// <param name="Options">What the author said about the picture.</param>
    public sealed record Show(int Line, PlacedSentence Sentence, FigureOptions Options) : Block(Line);

    /// <summary>A show block worked out.</summary>
    /// <param name="Line">As for every block.</param>
    /// <param name="Number">Its number in the lesson, counted from 1.</param>
    /// <param name="Exhibit">What there is to see.</param>
    /// <param name="Options">What the author said about it.</param>
    public sealed record Figure(int Line, int Number, Exhibit Exhibit, FigureOptions Options) : Block(Line);

    /// <summary>A claim block as it was written. A resolved lesson has none.</summary>
    /// <param name="Line">As for every block.</param>
    /// <param name="Said">The claim.</param>
    /// <param name="Options">What the author said about it.</param>
    public sealed record Claim(int Line, PlacedClaim Said, ClaimOptions Options) : Block(Line);

    /// <summary>A claim block checked.</summary>
    /// <param name="Line">As for every block.</param>
    /// <param name="Number">Its number among the claims of the lesson, counted from 1.</param>
    /// <param name="Verdict">What came of it.</param>
    /// <param name="Key">The key of the lesson. The claim speaks of its own.</param>
    /// <param name="Options">What the author said about it.</param>
    public sealed record Statement(int Line, int Number, ClaimVerdict Verdict, Key Key, ClaimOptions Options)
        : Block(Line);

    /// <summary>A play block as it was written. A resolved lesson has none.</summary>
    /// <param name="Line">As for every block.</param>
    /// <param name="Said">The sentence.</param>
    /// <param name="Options">What the author said about it.</param>
    public sealed record Play(int Line, PlacedPlay Said, ExerciseOptions Options) : Block(Line);

    /// <summary>A play block worked out.</summary>
    /// <param name="Line">As for every block.</param>
    /// <param name="Number">Its number among the exercises of the lesson, counted from 1.</param>
    /// <param name="Played">What is to be played.</param>
    /// <param name="Options">What the author said about it.</param>
    public sealed record Exercise(int Line, int Number, Exercises.Exercise Played, ExerciseOptions Options)
        : Block(Line)
    {
        /// <summary>What stands above it: the author's words, or the exercise's own name.</summary>
        public string Title => Options.Title ?? Played.Name;
    }

    /// <summary>What stands in the place of a block that has an error, when a lesson is built in spite of it.</summary>
    /// <param name="Line">As for every block.</param>
    /// <param name="Message">What is wrong.</param>
    public sealed record Problem(int Line, string Message) : Block(Line)
    {
        /// <summary>The line with what is wrong, counted from 1; that of the block where it is all of it.</summary>
        public int At { get; init; } = Line;
    }
}

/// <summary>How a column of a table is set.</summary>
public enum ColumnAlignment
{
    /// <summary>At the side where lines begin.</summary>
    Start,

    /// <summary>In the middle.</summary>
    Center,

    /// <summary>At the side where lines end.</summary>
    End,
}
