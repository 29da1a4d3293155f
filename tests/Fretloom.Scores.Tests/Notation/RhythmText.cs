using Fretloom.Exercises;
using Fretloom.Exercises.Notation;

namespace Fretloom.Scores.Tests.Notation;

/// <summary>
/// Written bars as a line of text: <c>w h q e s</c> for whole to sixteenth, a dot, <c>r</c> before a rest, <c>~</c> for a tie to the next, <c>[ ]</c> around what a
/// beam joins, <c>(3: )</c> around a triplet.
/// </summary>
internal static class RhythmText
{
    /// <summary>How a rhythm is written; each word is a beat, its signs o for a note, - for going on, a dot for silence.</summary>
    public static string Of(string metre, string rhythm)
    {
        var time = Metre.Parse(metre);
        var bars = BarWriter.Write(Played.InRhythm(time, Parts(time, rhythm)));
        return $"{metre} {rhythm, -34}| {string.Join(" | ", bars.Select(bar => string.Join(' ', bar.Figures.Select(Sign))))} |";
    }

    private static IEnumerable<(Beats, char)> Parts(Metre metre, string rhythm) =>
        from beat in rhythm.Split(' ')
        from sign in beat
        select (Beats.FromTicks(metre.Beat.Ticks / beat.Length), sign);

    private static string Sign(Figure figure)
    {
        var beam = figure.Beams.Count > 0 ? figure.Beams[0] : (Beam?)null;
        return (figure.Bracket == Bracket.Start ? "(3: " : "")
            + (beam == Beam.Begin ? "[" : "")
            + (figure.IsRest ? "r" : "")
            + "whqest"[(int)figure.Value.Type]
            + (figure.Value.IsDotted ? "." : "")
            + (figure.IsTiedOn ? "~" : "")
            + (beam == Beam.End ? "]" : "")
            + (figure.Bracket == Bracket.Stop ? ")" : "");
    }
}
