using System.Globalization;

namespace Fretloom.Exercises;

/// <summary>How many beats of the metre fall into a minute, 20 to 300. The <c>default</c> is 72.</summary>
/// <remarks>In 4/4 a beat is a quarter, in 6/8 a dotted quarter. The limits and the usual tempo are ours, without source: metronomes go about as far.</remarks>
public readonly record struct Tempo
{
    /// <summary>The slowest, in beats a minute.</summary>
    public const int Slowest = 20;

    /// <summary>The fastest, in beats a minute.</summary>
    public const int Fastest = 300;

    private const int Usual = 72;

    private readonly int _aboveUsual;

    /// <summary>Makes a tempo.</summary>
    /// <param name="beatsPerMinute">20 to 300.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is out of range.</exception>
    public Tempo(int beatsPerMinute)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(beatsPerMinute, Slowest);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(beatsPerMinute, Fastest);
        _aboveUsual = beatsPerMinute - Usual;
    }

    /// <summary>Beats in a minute, 20 to 300.</summary>
    public int BeatsPerMinute => _aboveUsual + Usual;

    /// <summary>Quarter notes in a minute, which in a compound metre is one and a half times the beats.</summary>
    public double QuartersPerMinute(Metre metre) => BeatsPerMinute * metre.Beat.Quarters;

    /// <summary>How long something takes, in seconds: a quarter takes 60 by the quarters in a minute.</summary>
    public double Seconds(Beats length, Metre metre) => length.Quarters * 60 / QuartersPerMinute(metre);

    /// <summary>The number.</summary>
    public override string ToString() => BeatsPerMinute.ToString(CultureInfo.InvariantCulture);
}
