using System.Text;
using Fretloom.Exercises;
using Fretloom.Hand;
using Fretloom.Theory;

namespace Fretloom.Scores.Tab;

/// <summary>Tablature in plain text: a line for each string, string 1 on top, frets as figures, bar lines, and above them chords and beats.</summary>
/// <remarks>
/// The columns of a bar are as long as the longest time that divides all its beginnings, and as wide as their widest figure and a dash. Under the strings
/// stand the strokes or picking fingers, the beats and, on request, the fretting fingers. Tablature is never mirrored. What is written reads back to the
/// same spots with <see cref="TabReader"/>.
/// </remarks>
public static class TabText
{
    /// <summary>The narrowest page.</summary>
    public const int LeastWidth = 40;

    /// <summary>Writes one pass.</summary>
    /// <param name="exercise">What is played.</param>
    /// <param name="width">The longest line, in characters, at least 40. A bar that is longer stands alone.</param>
    /// <param name="hasFingers">Whether a line with the fretting fingers stands under each system.</param>
    public static string Write(Exercise exercise, int width = 80, bool hasFingers = false)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentOutOfRangeException.ThrowIfLessThan(width, LeastWidth);
        var labels = Labels(exercise);
        var text = new StringBuilder();
        text.Append(exercise.Name).Append('\n').Append(Heading(exercise)).Append('\n');
        var bars = Enumerable.Range(0, exercise.Bars).Select(bar => new TabBar(exercise, bar, hasFingers)).ToList();
        for (var first = 0; first < bars.Count; )
        {
            var count = 1;
            var taken = labels[0].Length + 1 + bars[first].Width;
            while (
                first + count < bars.Count
                && bars[first + count].Opening is null
                && taken + bars[first + count].Width <= width
            )
            {
                taken += bars[first + count].Width;
                count++;
            }

            text.Append('\n');
            System(text, labels, bars.GetRange(first, count));
            first += count;
        }

        return text.ToString();
    }

    private static void System(StringBuilder text, string[] labels, List<TabBar> bars)
    {
        var indent = new string(' ', labels[0].Length + 1);
        if (bars[0].Opening is { } opening)
        {
            text.Append(opening).Append('\n');
        }

        Line(text, indent, bars.ConvertAll(bar => bar.Above), isKept: bars.Exists(bar => bar.Above.Trim().Length > 0));
        for (var number = 0; number < labels.Length; number++)
        {
            text.Append(labels[number]).Append('|');
            foreach (var bar in bars)
            {
                text.Append(bar.Strings[number]).Append('|');
            }

            text.Append('\n');
        }

        Line(
            text,
            indent,
            bars.ConvertAll(bar => bar.Picking),
            isKept: bars.Exists(bar => bar.Picking.Trim().Length > 0)
        );
        Line(text, indent, bars.ConvertAll(bar => bar.Beats), isKept: true);
        Line(
            text,
            indent,
            bars.ConvertAll(bar => bar.Fingers),
            isKept: bars.Exists(bar => bar.Fingers.Trim().Length > 0)
        );
    }

    private static void Line(StringBuilder text, string indent, List<string> parts, bool isKept)
    {
        if (isKept)
        {
            text.Append((indent + string.Join(' ', parts)).TrimEnd()).Append('\n');
        }
    }

    private static string Heading(Exercise exercise)
    {
        var words = string.Concat(TempoWords.Words(exercise).Select(word => ", " + word));
        var countIn = exercise.CountInBars switch
        {
            0 => "",
            1 => ", after a count-in of 1 bar",
            _ => $", after a count-in of {exercise.CountInBars} bars",
        };
        var capo = exercise.Instrument.Capo > 0 ? $", capo {exercise.Instrument.Capo}" : "";
        return $"{exercise.Instrument.Name}{capo}, {Accidentals.Pretty(exercise.Key.ToString())}, {exercise.Metre}, {TempoWords.Number(exercise)} beats a minute{words}{countIn}";
    }

    // A string that sounds a note of the key is named as the key names it.
    private static NoteName NameOf(Exercise exercise, Pitch open) =>
        exercise.Key.PitchClasses.Contains(open.PitchClass) ? exercise.Key.Spell(open.PitchClass) : open.Name;

    private static string[] Labels(Exercise exercise)
    {
        var system = NoteNameSystem.Of(exercise.NoteNames, exercise.Key);
        var names = exercise
            .Instrument.OpenPitches.Select(pitch => system.Format(NameOf(exercise, pitch), unicode: true))
            .ToArray();
        var width = names.Max(name => name.Length);
        return Array.ConvertAll(names, name => name.PadLeft(width));
    }
}
