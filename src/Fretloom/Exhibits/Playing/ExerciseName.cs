using Fretloom.Sentences;
using Fretloom.Sentences.Play;
using Fretloom.Sentences.Show;
using Fretloom.Theory;

namespace Fretloom.Exhibits.Playing;

/// <summary>Names an exercise for a heading.</summary>
internal static class ExerciseName
{
    /// <summary>What is played, in which key, and which way: <c>The triads in D major, up and down</c>.</summary>
    public static string Of(PlaySentence complete)
    {
        var material = complete.Material;
        var what = ShowPrinter.List(
            material.Subjects.Select(
                (subject, at) =>
                    subject is Subject.NotesOfTheKey ? "the scale" : SubjectPrinter.Print(subject, isFirst: at == 0)
            )
        );
        var count = material.Subjects[0] is Subject.ScaleShapes { NotesPerString: { } notes }
            ? $", {notes} notes a string"
            : "";
        var key =
            complete.EveryKey is not null ? " in every key"
            : IsOfKey(material.Subjects[0]) ? $" in {material.Key}"
            : "";
        var way = complete.Grouping is { } grouping ? ", " + GroupingPhrase.WordsOf(grouping) : "";
        way += complete.Direction is { } direction ? ", " + DirectionPhrase.WordsOf(direction) : "";
        return Accidentals.Pretty(char.ToUpperInvariant(what[0]) + what[1..] + key + count + way);
    }

    private static bool IsOfKey(Subject subject) =>
        subject
            is Subject.ChordsOfTheKey
                or Subject.ChordsByNumeral
                or Subject.NotesOfTheKey
                or Subject.TheThirds
                or Subject.ScaleShapes { Scale: null };
}
