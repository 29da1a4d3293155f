using System.Globalization;
using Fretloom.Sentences;
using Fretloom.Sentences.Show;
using Fretloom.Theory;

namespace Fretloom.Exhibits;

/// <summary>Names an exhibit for a heading.</summary>
internal static class ExhibitName
{
    /// <summary>What is shown, and in which key where it is of the key: <c>The notes of the key in D major</c>.</summary>
    public static string Of(ShowSentence complete)
    {
        var what = ShowPrinter.List(
            complete.Subjects.Select((subject, at) => SubjectPrinter.Print(subject, isFirst: at == 0))
        );
        var key = complete.Subjects.Any(IsOfKey) ? $" in {complete.Key}" : "";
        var count = complete
            .Subjects.Select(subject => subject.NotesAString)
            .FirstOrDefault(notes => notes is not null);
        var many = count is { } notes ? string.Create(CultureInfo.InvariantCulture, $", {notes} notes a string") : "";
        return Accidentals.Pretty(char.ToUpperInvariant(what[0]) + what[1..] + key + many);
    }

    private static bool IsOfKey(Subject subject) =>
        subject
            is Subject.NotesOfTheKey
                or Subject.ScaleShapes { Scale: null }
                or Subject.TheLandmarks
                or Subject.TheThirds
                or Subject.TheSymmetries
                or Subject.ChordsOfTheKey
                or Subject.ChordsByNumeral;
}
