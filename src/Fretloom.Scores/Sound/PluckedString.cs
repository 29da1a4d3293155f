namespace Fretloom.Scores.Sound;

/// <summary>The sound of one plucked string: a pluck in a loop that is as long as the period, and damped as it goes round.</summary>
/// <remarks>
/// Karplus and Strong 1983 (Computer Music Journal 7:2) with the changes of Jaffe and Smith 1983 (the same issue), both from memory: the
/// loop is tuned by an allpass whose phase delay is exact at the fundamental, a weighted mean of two samples damps high partials
/// more than low ones, and a factor sets how long the fundamental rings. The loop begins with the force that a string drawn aside at one point
/// exerts on the bridge, whose partials have the strength sin(nπp)/n (Fletcher and Rossing, The Physics of Musical Instruments, chapter 2,
/// from memory), roughened by noise. How long a string rings (T60, the time in which it falls by 60 dB) is set by ear, without source.
/// </remarks>
internal sealed class PluckedString
{
    /// <summary>A frequency whose partials ring for <see cref="HighT60"/>.</summary>
    public const double HighHz = 3000;

    /// <summary>Seconds in which they fall by 60 dB.</summary>
    public const double HighT60 = 0.9;

    /// <summary>The most that the loop keeps from one round to the next.</summary>
    public const double MostKept = 0.99999;

    /// <summary>The least that the allpass delays, in samples.</summary>
    public const double LeastDelay = 0.3;

    /// <summary>Seconds in which the sound comes in.</summary>
    public const double AttackSeconds = 0.001;

    // Seconds in which a damped string falls by 60 dB, and in which the finger comes to lie on it. By ear, without source.
    private const double DampedT60 = 0.15;
    private const double DampingSeconds = 0.012;

    private readonly double[] _loop;
    private readonly double _blend;
    private readonly double _allpass;
    private readonly double _damped;
    private readonly double _dampingRate;
    private readonly double _attackRate;
    private double _keep;
    private double _attack;
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
        var keep = FallIn(voice.T60(hz), hz);
        _blend = Blend(hz, rate, keep);
        var (gain, delay) = Response(_blend, turn);
        _keep = Math.Min(MostKept, keep / gain);
        _damped = _keep * FallIn(DampedT60, hz);
        _dampingRate = 1 - Math.Exp(-1 / (DampingSeconds * rate));
        _attackRate = 1 / (AttackSeconds * rate);
        var period = rate / hz - delay;
        _loop = Pluck((int)(period - LeastDelay), voice, rate, seed);
        _allpass = Allpass(period - _loop.Length, turn);
    }

    /// <summary>Whether a finger or the palm lies on it.</summary>
    public bool IsDamped { get; set; }

    /// <summary>The next sample.</summary>
    public double Next()
    {
        var sample = _loop[_at];
        var mean = (1 - _blend) * sample + _blend * _before;
        _before = sample;
        var tuned = _allpass * (mean - _allpassOut) + _allpassIn;
        _allpassIn = mean;
        _allpassOut = tuned;
        if (IsDamped)
        {
            _keep += _dampingRate * (_damped - _keep);
        }

        _loop[_at] = tuned * _keep;
        _at = _at + 1 == _loop.Length ? 0 : _at + 1;
        _attack = Math.Min(1, _attack + _attackRate);
        return sample * _attack;
    }

    /// <summary>What is left after one period, as a factor, of a sound that falls by 60 dB in a time.</summary>
    private static double FallIn(double t60, double hz) => Math.Pow(10, -3 / (hz * t60));

    /// <summary>The weight of the older sample that makes partials about <see cref="HighHz"/> ring for <see cref="HighT60"/>.</summary>
    private static double Blend(double hz, int rate, double keep)
    {
        var wanted = FallIn(HighT60, hz) / keep;
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

    private static double[] Pluck(int length, StringVoice voice, int rate, ulong seed)
    {
        var noise = new Noise(seed);
        var loop = new double[length];
        for (var at = 0; at < length; at++)
        {
            var force = (at + 0.5) / length < voice.PluckedAt ? 1 : 0;
            loop[at] = force + voice.Roughness * noise.Next();
        }

        // Twice round, so that the end runs into the beginning.
        var soft = 1 - Math.Exp(-2 * Math.PI * voice.SoftAboveHz / rate);
        var (first, second) = (loop.Average(), loop.Average());
        for (var at = 0; at < 2 * length; at++)
        {
            first += soft * (loop[at % length] - first);
            second += soft * (first - second);
            if (at >= length)
            {
                loop[at - length] = second;
            }
        }

        var mean = loop.Average();
        var power = loop.Average(sample => (sample - mean) * (sample - mean));
        var scale = StringVoice.Loudness / Math.Sqrt(power);
        return Array.ConvertAll(loop, sample => (sample - mean) * scale);
    }
}
