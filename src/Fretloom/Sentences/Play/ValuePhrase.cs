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
            (NoteValue.Halves, ["half notes", "halves", "minims", "1/2 notes"]),
            (NoteValue.Quarters, ["quarters", "quarter notes", "1/4 notes", "crotchets"]),
            (
                NoteValue.SwingEighths,
                ["swing eighths", "swung eighths", "swing quavers", "swung quavers", "swing feel", "swing"]
            ),
            (
                NoteValue.Eighths,
                ["eighths", "eighth notes", "straight eighths", "8ths", "8th notes", "1/8 notes", "quavers"]
            ),
            (NoteValue.Triplets, ["triplets", "eighth triplets", "quaver triplets", "eighth note triplets"]),
            (
                NoteValue.Sixteenths,
                ["sixteenths", "sixteenth notes", "16ths", "16th notes", "1/16 notes", "semiquavers"]
            ),
        }.SelectMany(row => row.Names.Select(name => (name, new Named(row.Value))))
    );

    private sealed record Named(NoteValue Value);

    public static PlayPhraseKind Kind { get; } =
        new(
            "the rhythm",
            PlayPhrase.Values,
            at => Names.At(at, Lead(at)).Count > 0 || Unwritten(at, Lead(at)).Count > 0,
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

    // Dotted quarters, thirty-seconds, demisemiquavers: how many words, and the nearest that is written.
    private static (int Count, string Instead) Unwritten(Cursor at, int ahead)
    {
        var isShort = at.Peek(ahead)
            .IsAny("thirty-seconds", "thirty-second", "32nds", "32nd", "demisemiquavers", "1/32");
        var hasNotes = at.Peek(ahead + 1).IsAny("note", "notes");
        var dotted = at.Peek(ahead).Is("dotted") ? Names.At(at, ahead + 1).Count : 0;
        return isShort ? (hasNotes ? 2 : 1, "sixteenths")
            : dotted > 0 ? (dotted + 1, at.Words(ahead + 1, dotted))
            : (0, "");
    }

    private static Failure? Read(Cursor at, PlayDraft draft)
    {
        at.Skip(Lead(at));
        var (unwritten, edit) = Unwritten(at, 0);
        if (unwritten > 0)
        {
            var (first, last) = (at.Current, at.Peek(unwritten - 1));
            return Failure.At(
                first,
                last,
                $"notes are whole notes, halves, quarters, eighths, sixteenths, triplets or swing eighths, found '{at.Words(0, unwritten)}'",
                Edit.Of(first, last, edit)
            );
        }

        var (named, count) = Names.At(at, 0);
        at.Skip(count);
        draft.Sentence = draft.Sentence with { Value = named!.Value };
        return null;
    }
}
