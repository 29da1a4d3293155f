using System.Globalization;
using Fretloom.Exercises;

namespace Fretloom.Exhibits.Playing;

/// <summary>Chords that are strummed, each for a bar.</summary>
internal static class StrummedBars
{
    /// <summary>Writes them; the beats are counted under the first.</summary>
    /// <param name="groups">The chords in turn.</param>
    /// <param name="strum">A pattern that fits the metre.</param>
    /// <param name="time">Where they go on.</param>
    public static void Write(IEnumerable<PlayedGroup> groups, StrumPattern strum, Timeline time)
    {
        var eighth = Beats.Of(1, 8);
        var strokes = strum.In(time.Metre)!.Value;
        foreach (var group in groups)
        {
            time.Mark(group, isHeld: true);
            var isFirst = time.At.Ticks == 0;
            time.Rest(eighth * strokes[0].Eighth);
            for (var at = 0; at < strokes.Count; at++)
            {
                var next = at + 1 < strokes.Count ? eighth * strokes[at + 1].Eighth : time.Metre.Bar;
                if (isFirst)
                {
                    time.Say(Count(strokes[at].Eighth, time.Metre));
                }

                time.Add(group.Notes, next - eighth * strokes[at].Eighth, strokes[at].IsDown ? Picked.Down : Picked.Up);
            }
        }
    }

    // 1 & 2 & where a beat has two eighths, 1 to 6 where it has three.
    private static string Count(int eighth, Metre metre) =>
        !metre.IsCompound && eighth % 2 == 1
            ? "&"
            : (metre.IsCompound ? eighth + 1 : eighth / 2 + 1).ToString(CultureInfo.InvariantCulture);
}
