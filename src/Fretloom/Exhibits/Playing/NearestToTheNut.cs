using Fretloom.Neck;

namespace Fretloom.Exhibits.Playing;

/// <summary>Where a note is played of which only the sound is given.</summary>
/// <remarks>
/// Nearest to the nut; on a string that breaks the order of the others, such as string 4 of a ukulele and the short string of a
/// banjo, only where no other string has it. Common practice, no source.
/// </remarks>
internal static class NearestToTheNut
{
    /// <summary>The place to take of some that sound the same.</summary>
    public static NeckNote Of(IEnumerable<NeckNote> places, Instrument instrument) =>
        places
            .OrderBy(place => BreaksOrder(instrument, place.Spot.String))
            .ThenBy(place => place.Spot.Fret)
            .ThenBy(place => place.Spot.String)
            .First();

    // It sounds higher when open than the next string toward the floor.
    private static bool BreaksOrder(Instrument instrument, int number) =>
        number > 1 && instrument.String(number).Open.MidiNumber > instrument.String(number - 1).Open.MidiNumber;
}
