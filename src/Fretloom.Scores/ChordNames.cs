using Fretloom.Exercises;
using Fretloom.Theory;

namespace Fretloom.Scores;

/// <summary>Chord symbols as they are printed.</summary>
internal static class ChordNames
{
    /// <summary>A symbol in the exercise's way to name notes, such as <c>B♭m7</c>.</summary>
    public static string Of(Exercise exercise, Chord chord)
    {
        var names = NoteNameSystem.Of(
            exercise.NoteNames == NoteNaming.MovableDo ? default : exercise.NoteNames,
            exercise.Key
        );
        var root = names.Format(chord.Root, unicode: true) + Accidentals.Pretty("C" + chord.Quality.Symbol)[1..];
        return chord.Bass == chord.Root ? root : $"{root}/{names.Format(chord.Bass, unicode: true)}";
    }
}
