namespace Fretloom.Scores.Sound;

/// <summary>The click: a short tone that dies away at once, higher on the first beat of a bar.</summary>
/// <remarks>It is as loud wherever it sounds, and softer than the softest single note, as a test hears. Figures are set by ear, without source.</remarks>
internal static class ClickSound
{
    /// <summary>How long it is.</summary>
    public const double Seconds = 0.03;

    /// <summary>In what time it falls to the e-th part.</summary>
    public const double FallSeconds = 0.006;

    /// <summary>The first click of a bar.</summary>
    public static readonly (double Hz, double Level) First = (1600, 0.15);

    /// <summary>The others.</summary>
    public static readonly (double Hz, double Level) Other = (1100, 0.11);

    /// <summary>The samples of one click.</summary>
    public static float[] Of(bool isFirst, int rate)
    {
        var (hz, level) = isFirst ? First : Other;
        var sound = new float[(int)(Seconds * rate)];
        for (var frame = 0; frame < sound.Length; frame++)
        {
            var time = (double)frame / rate;
            sound[frame] = (float)(level * Math.Exp(-time / FallSeconds) * Math.Sin(2 * Math.PI * hz * time));
        }

        return sound;
    }
}
