namespace Fretloom.Scores.Sound;

/// <summary>One resonance of a body: a band-pass of second order (Bristow-Johnson, Audio EQ Cookbook; from memory).</summary>
internal sealed class Resonator
{
    private readonly double _b0;
    private readonly double _a1;
    private readonly double _a2;
    private double _x1;
    private double _x2;
    private double _y1;
    private double _y2;

    /// <summary>Makes one with a gain of 1 at its middle.</summary>
    /// <param name="hz">Its middle.</param>
    /// <param name="quality">Middle over width, above 0.</param>
    /// <param name="rate">Samples in a second.</param>
    public Resonator(double hz, double quality, int rate)
    {
        var turn = 2 * Math.PI * hz / rate;
        var width = Math.Sin(turn) / (2 * quality);
        _b0 = width / (1 + width);
        _a1 = -2 * Math.Cos(turn) / (1 + width);
        _a2 = (1 - width) / (1 + width);
    }

    /// <summary>The next sample.</summary>
    public double Next(double x)
    {
        var y = _b0 * (x - _x2) - _a1 * _y1 - _a2 * _y2;
        (_x2, _x1, _y2, _y1) = (_x1, x, _y1, y);
        return y;
    }
}
