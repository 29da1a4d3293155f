using Fretloom.Exercises;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Play;

/// <summary><c>in eighths</c>, <c>in swing eighths</c>, <c>in quavers</c>.</summary>
internal static class ValuePhrase
{
    private static readonly NameTable<Named> Names = new(
        new (NoteValue Value, string[] Names)[]
        {
            (NoteValue.Wholes, ["whole notes", "wholes", "semibreves"]),
            (NoteValue.Halves, ["half notes", "halves", "minims"]),
            (NoteValue.Quarters, ["quarters", "quarter notes", "quarter-notes", "crotchets"]),
            (
                NoteValue.SwingEighths,
                ["swing eighths", "swung eighths", "swing quavers", "swung quavers", "swing feel", "swing"]
            ),
            (NoteValue.Eighths, ["eighths", "eighth notes", "eighth-notes", "straight eighths", "quavers"]),
            (NoteValue.Triplets, ["triplets", "eighth triplets", "quaver triplets", "eighth note triplets"]),
            (NoteValue.Sixteenths, ["sixteenths", "sixteenth notes", "sixteenth-notes", "semiquavers"]),
        }.SelectMany(row => row.Names.Select(name => (name, new Named(row.Value))))
    );

    private sealed record Named(NoteValue Value);

    public static PlayPhraseKind Kind { get; } =
        new(
            "the rhythm",
            PlayPhrase.Values,
            at => Names.At(at, Lead(at)).Count > 0,
            Read,
            "in whole notes",
            "in half notes",
            "in quarters",
            "in crotchets",
            "in eighths",
            "in eighth notes",
            "in quavers",
            "in swing eighths",
            "in triplets",
            "in sixteenths",
            "in semiquavers",
            "quarter notes",
            "with swing"
        );

    /// <summary>Words that a rhythm may begin with, for suggestions.</summary>
    public static IEnumerable<string> Words { get; } =
        "whole half quarters crotchets eighths quavers swing triplets sixteenths semiquavers".Split(' ');

    /// <summary>The words of a rhythm.</summary>
    public static string WordsOf(NoteValue value) =>
        value switch
        {
            NoteValue.Wholes => "in whole notes",
            NoteValue.Halves => "in half notes",
            NoteValue.Quarters => "in quarters",
            NoteValue.SwingEighths => "in swing eighths",
            NoteValue.Eighths => "in eighths",
            NoteValue.Triplets => "in triplets",
            _ => "in sixteenths",
        };

    // In even; with; or nothing.
    private static int Lead(Cursor at)
    {
        var lead = at.Current.IsAny("in", "with") ? 1 : 0;
        return at.Peek(lead).IsAny("a", "even", "steady") ? lead + 1 : lead;
    }

    private static Failure? Read(Cursor at, PlayDraft draft)
    {
        at.Skip(Lead(at));
        var (named, count) = Names.At(at, 0);
        at.Skip(count);
        draft.Sentence = draft.Sentence with { Value = named!.Value };
        return null;
    }
}
