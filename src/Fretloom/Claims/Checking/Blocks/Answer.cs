namespace Fretloom.Claims.Checking.Blocks;

/// <summary>The registers in which a claim's outcome stands: all bits or none in each lane.</summary>
/// <param name="Fails">Where it is false.</param>
/// <param name="Untested">Where there is nothing to speak about, never where it is false; null for nowhere.</param>
internal readonly record struct Answer(int Fails, int? Untested);
