namespace Fretloom.Sentences.Show;

/// <summary>Prints what to see in canonical form.</summary>
internal static class SubjectPrinter
{
    private static readonly string[] Numerals = ["I", "II", "III", "IV", "V", "VI", "VII"];

    /// <summary>One subject. Chord symbols that follow another subject are introduced, so that they do not run on from it.</summary>
    public static string Print(Subject subject, bool isFirst) =>
        subject switch
        {
            Subject.NotesOfTheKey => "the notes of the key",
            Subject.NotesOfScale notes => $"the {notes.Scale} scale",
            Subject.ScaleShapes { Scale: { } scale } => $"the {scale} scale",
            Subject.ScaleShapes => "the scale",
            Subject.TheChromaticScale => "the chromatic scale",
            Subject.GivenNotes given => (given.Notes.Count == 1 ? "the note " : "the notes ")
                + string.Join(' ', given.Notes),
            Subject.EveryNote every => $"every {every.Name}",
            Subject.TheLandmarks => "the landmarks",
            Subject.TheThirds => "the thirds",
            Subject.GivenSpots given => (given.Spots.Count == 1 ? "the spot " : "the spots ")
                + string.Join(' ', given.Spots),
            Subject.TheOpenStrings => "the open strings",
            Subject.TheSymmetries => "the symmetries",
            Subject.ChordsOfTheKey family => Family(family.Chords) + From(family.Range),
            Subject.ChordsByNumeral chords => Introduced(chords.Numerals.Count) + string.Join(' ', chords.Numerals),
            Subject.ChordsBySymbol chords => (isFirst ? "" : Introduced(chords.Chords.Count))
                + ShowPrinter.List(chords.Chords.Select(chord => chord.ToString())),
            _ => throw new ArgumentOutOfRangeException(nameof(subject), subject, "There is no such subject."),
        };

    private static string Introduced(int count) => count == 1 ? "the chord " : "the chords ";

    private static string From(DegreeRange? range) =>
        range is null ? "" : $" from {Numerals[range.From - 1]} to {Numerals[range.To - 1]}";

    private static string Family(KeyChords chords) =>
        chords switch
        {
            KeyChords.Triads => "the triads",
            KeyChords.SixthChords => "the sixth chords",
            KeyChords.SeventhChords => "the seventh chords",
            _ => "the ninth chords",
        };
}
