using Fretloom.Claims;
using Fretloom.Neck;
using Fretloom.Sentences;

namespace Fretloom.Exhibits;

/// <summary>What shows that a claim is false.</summary>
/// <param name="Frets">Places along the neck, ascending, halves allowed; none at which a spot is named.</param>
/// <param name="Spots">Spots.</param>
public sealed record Culprits(ValueList<double> Frets, ValueList<Spot> Spots);

/// <summary>Makes a failing case of a claim something to be seen.</summary>
public static class Counterexample
{
    private const int NearNut = 2;

    /// <summary>
    /// The part of the neck where a claim fails, with the notes of the key and a fret to spare on either side. Full and empty frets are
    /// shown where frets are to blame. A short string is counted from its own nut, as the claim counts it.
    /// </summary>
    /// <param name="failure">The case.</param>
    /// <param name="window">The frets that the claim looks at; null for all. No fret beyond them is shown.</param>
    /// <returns>Null when no place on the neck shows it, as when the tuning itself is to blame.</returns>
    public static Exhibit? Of(ClaimFailure failure, FretRange? window = null)
    {
        ArgumentNullException.ThrowIfNull(failure);
        var instrument = failure.Instrument;
        var spots = failure.Spots.Where(instrument.Has).ToValueList();
        var places = failure.Frets.Where(fret => fret <= instrument.LastFret).ToValueList();
        var strings = new StringSet(failure.Strings.Numbers.Union(spots.Select(spot => spot.String)));
        var frets = places
            .SelectMany(place => new[] { (int)Math.Floor(place), (int)Math.Ceiling(place) })
            .SelectMany(fret =>
                strings.Numbers.Select(number => fret + instrument.String(number).StartsAtFret).Distinct()
            )
            .Where(fret => fret <= instrument.LastFret)
            .Concat(spots.Select(spot => spot.Fret))
            .ToList();
        if (frets.Count == 0)
        {
            return null;
        }

        var first = frets.Min() <= NearNut ? 0 : frets.Min() - 1;
        var last = Math.Min(frets.Max() + 1, instrument.LastFret);
        var range = new FretRange(
            Math.Max(first, Math.Min(window?.First ?? 0, frets.Min())),
            Math.Min(last, Math.Max(window?.Last ?? last, frets.Max()))
        );
        var map = new NeckMap(instrument, failure.Key, strings, range);
        return OwnNut.Of(
            new Exhibit
            {
                Sentence = new ShowSentence
                {
                    Subjects = [new Subject.NotesOfTheKey()],
                    Instrument = instrument,
                    Capo = instrument.Capo == 0 ? null : instrument.Capo,
                    Key = failure.Key,
                    Strings = strings,
                    Frets = range,
                }.ToString(),
                Map = map,
                Labels = LabelStyle.Degrees,
                Player = new Hand.Player(instrument),
                Notes = map.NotesOfKey.ToValueList(),
                Landmarks = places.Count == 0 ? null : Landmarks.Of(map) with { Thirds = [], Hinge = null },
                Culprits = new Culprits(
                    places.Where(fret => spots.All(spot => spot.Fret != fret)).ToValueList(),
                    spots
                ),
                CountingNote = failure.CountingNote,
            }
        );
    }
}
