using Fretloom.Exhibits;
using Fretloom.Lessons.Syntax;
using Fretloom.Sentences;
using Fretloom.Theory;

namespace Fretloom.Lessons;

/// <summary>What a lesson says of itself before its text begins.</summary>
public sealed record FrontMatter
{
    /// <summary>The title; it may hold words that follow the key, such as <c>{key}</c>.</summary>
    public string Title { get; init; } = Untitled;

    /// <summary>The title of a lesson that has none, which is an error; seen only when a lesson is made in spite of it.</summary>
    internal const string Untitled = "Untitled lesson";

    /// <summary>A line below the title.</summary>
    public string? Subtitle { get; init; }

    /// <summary>Who the lesson is for, such as <c>Monday bass group</c>; printed in the running header.</summary>
    public string? Course { get; init; }

    /// <summary>Who teaches it.</summary>
    public string? Teacher { get; init; }

    /// <summary>When it is taught, in the teacher's own words.</summary>
    public string? Date { get; init; }

    /// <summary>Its place in the course, such as <c>Sheet 4</c>.</summary>
    public string? Sheet { get; init; }

    /// <summary>The language of the text: two or three small letters, perhaps with a region (BCP 47), such as <c>en</c> or <c>en-GB</c>.</summary>
    public string Language { get; init; } = "en";

    /// <summary>What show sentences leave unsaid.</summary>
    public ShowDefaults Defaults { get; init; } = ShowDefaults.Standard;

    /// <summary>String sets that claims may call by a name of the author's own.</summary>
    public ValueList<NamedStrings> StringSets { get; init; }

    /// <summary>What claims leave unsaid: instrument with capo, strings, and the named string sets.</summary>
    public ClaimDefaults ClaimDefaults => new(Defaults.Instrument.WithCapo(Capo), Defaults.Strings, StringSets);

    /// <summary>The fret of the capo on the lesson's instrument, 0 for none.</summary>
    public int Capo { get; init; }

    /// <summary>The key of the lesson as it was written; C major when it names none.</summary>
    internal Key HomeKey => Defaults.Key ?? CMajor;

    private static readonly Key CMajor = Key.Parse("C major");

    /// <summary>Reads what a lesson says of itself, and nothing after it; what cannot be read is as if it were not said.</summary>
    /// <param name="text">The lesson.</param>
    /// <returns>What it says, with words that follow the key filled in.</returns>
    public static FrontMatter Of(string text)
    {
        var source = new SourceText(text);
        var front = new FrontMatterReader(source, new DiagnosticList(source), new DiagnosticList(source)).Read(out _);
        return front.In(front.HomeKey);
    }

    /// <summary>With words that follow the key filled in.</summary>
    internal FrontMatter In(Key key)
    {
        return this with
        {
            Title = KeyWords.Fill(Title, key),
            Subtitle = Fill(Subtitle),
            Course = Fill(Course),
            Teacher = Fill(Teacher),
            Date = Fill(Date),
            Sheet = Fill(Sheet),
        };

        string? Fill(string? text) => text is null ? null : KeyWords.Fill(text, key);
    }
}
