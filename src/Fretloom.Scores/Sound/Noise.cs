namespace Fretloom.Scores.Sound;

/// <summary>White noise that is the same for the same seed (SplitMix64; Steele, Lea and Flood 2014, from memory).</summary>
internal struct Noise(ulong seed)
{
    private ulong _state = seed;

    /// <summary>A number from -1 up to 1.</summary>
    public double Next()
    {
        _state += 0x9E3779B97F4A7C15;
        var mixed = (_state ^ (_state >> 30)) * 0xBF58476D1CE4E5B9;
        mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EB;
        return (mixed ^ (mixed >> 31)) / (double)(1UL << 63) - 1;
    }
}
