namespace Fretloom.Claims.Checking;

/// <summary>Whether one tonic decides for all twelve.</summary>
/// <remarks>
/// Raising the key by a semitone lowers every fret of the endless neck by one, on every string. What is said of how
/// frets and shapes lie to each other stays as it is. So one tonic decides for twelve unless the sentence names a fret number, a window (the neck
/// ends), or one key.
/// </remarks>
internal static class Transposition
{
    public const int Tonics = 12;

    public static bool Settles(ClaimSentence sentence) =>
        sentence.Window is null
        && sentence.Keys is not KeyScope.One
        && !Parts.Of(sentence.Claim).Any(part => part is FretSet.Numbers);
}
