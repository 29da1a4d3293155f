namespace Fretloom.Scores.Sound;

/// <summary>The sound of one plucked string: noise in a loop that is as long as the period, and damped as it goes round.</summary>
/// <remarks>
/// Karplus and Strong 1983 (Computer Music Journal 7:2) with the changes of Jaffe and Smith 1983 (the same issue), both from memory: the
/// loop is tuned by an allpass whose phase delay is exact at the fundamental, a weighted mean of two samples damps high partials
/// more than low ones, a factor sets how long the fundamental rings, and the noise is combed by the place where the string is plucked. How long a
/// string rings (T60, the time in which it falls by 60 dB) is set by ear, without source.
/// </remarks>
internal sealed class PluckedString
{
    private const double HighHz = 3000;
    private const double HighT60 = 0.9;
    private const double DampedT60 = 0.12;

    private readonly double[] _loop;
    private readonly double _stretch;
    private readonly double _allpass;
    private readonly double _keep;
    private readonly double _damp;
    private int _at;
    private double _before;
    private double _allpassIn;
    private double _allpassOut;

    /// <summary>Plucks a string.</summary>
    /// <param name="hz">The pitch, above 20 and below a sixth of the rate.</param>
    /// <param name="rate">Samples in a second.</param>
    /// <param name="voice">How the instrument sounds.</param>
    /// <param name="seed">Where the noise begins; the same seed gives the same sound.</param>
    public PluckedString(double hz, int rate, StringVoice voice, ulong seed)
    {
        var turn = 2 * Math.PI * hz / rate;
        var t60 = voice.T60(hz);
        var keep = Math.Pow(10, -3 / (hz * t60));
        _stretch = Blend(hz, rate, keep);
        var (gain, delay) = Response(_stretch, turn);
        _keep = Math.Min(0.99999, keep / gain);
        _damp = Math.Pow(10, -3 / (hz * DampedT60));
        var period = rate / hz - delay;
        var length = (int)(period - 0.3);
        _loop = new double[length];
        _allpass = Allpass(period - length, turn);
        Excite(voice, seed);
    }

    /// <summary>Whether a finger or the palm lies on it.</summary>
    public bool IsDamped { get; set; }

    /// <summary>The next sample.</summary>
    public double Next()
    {
        var sample = _loop[_at];
        var mean = (1 - _stretch) * sample + _stretch * _before;
        _before = sample;
        var tuned = _allpass * (mean - _allpassOut) + _allpassIn;
        _allpassIn = mean;
        _allpassOut = tuned;
        _loop[_at] = tuned * (IsDamped ? _damp * _keep : _keep);
        _at = _at + 1 == _loop.Length ? 0 : _at + 1;
        return sample;
    }

    /// <summary>The weight of the older sample that makes partials about <see cref="HighHz"/> ring for <see cref="HighT60"/>.</summary>
    private static double Blend(double hz, int rate, double keep)
    {
        var wanted = Math.Pow(10, -3 / (hz * HighT60)) / keep;
        var fall = (1 - wanted * wanted) / (1 - Math.Cos(2 * Math.PI * HighHz / rate));
        return (1 - Math.Sqrt(1 - 2 * Math.Clamp(fall, 0, 0.5))) / 2;
    }

    /// <summary>Gain and phase delay in samples of the weighted mean of two samples.</summary>
    private static (double Gain, double Delay) Response(double weight, double turn)
    {
        var real = 1 - weight + weight * Math.Cos(turn);
        var imaginary = weight * Math.Sin(turn);
        return (Math.Sqrt(real * real + imaginary * imaginary), Math.Atan2(imaginary, real) / turn);
    }

    /// <summary>The coefficient of a first-order allpass with a phase delay, in samples, that is exact at one frequency (Jaffe and Smith 1983, from memory).</summary>
    private static double Allpass(double delay, double turn) =>
        Math.Sin((1 - delay) * turn / 2) / Math.Sin((1 + delay) * turn / 2);

    private void Excite(StringVoice voice, ulong seed)
    {
        var noise = new Noise(seed);
        var raw = new double[_loop.Length];
        var smooth = 0.0;
        for (var at = 0; at < raw.Length; at++)
        {
            smooth += voice.Brightness * (noise.Next() - smooth);
            raw[at] = smooth;
        }

        var pluck = Math.Max(1, (int)(voice.PluckedAt * raw.Length));
        var mean = 0.0;
        for (var at = 0; at < raw.Length; at++)
        {
            _loop[at] = raw[at] - raw[(at - pluck + raw.Length) % raw.Length];
            mean += _loop[at] / raw.Length;
        }

        var power = _loop.Average(sample => (sample - mean) * (sample - mean));
        var scale = StringVoice.Loudness / Math.Sqrt(power);
        for (var at = 0; at < raw.Length; at++)
        {
            _loop[at] = (_loop[at] - mean) * scale;
        }
    }
}
