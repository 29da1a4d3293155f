namespace Fretloom.Claims.Discovery;

/// <summary>Numbers that look random and are the same for a seed on every machine.</summary>
/// <remarks>SplitMix64: Steele, Lea and Flood, "Fast splittable pseudorandom number generators", OOPSLA 2014 (constants from memory).</remarks>
internal sealed class SeededRandom(int seed)
{
    private ulong _state = unchecked((ulong)seed);

    /// <summary>A number from 0 to one less than a limit.</summary>
    public int Below(int limit)
    {
        unchecked
        {
            _state += 0x9E3779B97F4A7C15;
            var mixed = _state;
            mixed = (mixed ^ mixed >> 30) * 0xBF58476D1CE4E5B9;
            mixed = (mixed ^ mixed >> 27) * 0x94D049BB133111EB;
            return (int)((mixed ^ mixed >> 31) % (ulong)limit);
        }
    }
}
