using Fretloom.Neck;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Exhibits;

/// <summary>Counts the frets of an exhibit as claims do: a short string from its own nut.</summary>
public static class OwnNut
{
    /// <summary>The exhibit with the landmarks and half-turn centres that a claim means; itself where no string is short.</summary>
    public static Exhibit Of(Exhibit exhibit)
    {
        ArgumentNullException.ThrowIfNull(exhibit);
        var map = exhibit.Map;
        return ShortStrings.Words(map.Instrument, map.Strings) is not { } words
            ? exhibit
            : exhibit with
            {
                CountsFromOwnNut = true,
                CountingNote = exhibit.CountingNote ?? words,
                Landmarks = exhibit.Landmarks is { } landmarks
                    ? landmarks with
                    {
                        FullFrets = FretsWhere(map, areInKey: true),
                        EmptyFrets = FretsWhere(map, areInKey: false),
                    }
                    : null,
                Symmetries = exhibit.Symmetries is { } symmetries
                    ? symmetries with
                    {
                        HalfTurnCentres = KeySymmetry.HalfTurnCentres(
                            map.Key.PitchClasses,
                            map.Strings.Numbers.Select(number => map.Instrument.String(number).Open.Name.PitchClass)
                                .ToValueList(),
                            map.Frets.First,
                            map.Frets.Last
                        ),
                    }
                    : null,
            };
    }

    private static ValueList<int> FretsWhere(NeckMap map, bool areInKey) =>
        map
            .Frets.Frets.Where(fret =>
                map.Strings.Numbers.All(number =>
                    map.Key.PitchClasses.Contains(
                        PitchClass.FromSemitones(map.Instrument.String(number).Open.MidiNumber + fret)
                    ) == areInKey
                )
            )
            .ToValueList();
}
