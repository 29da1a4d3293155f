using Fretloom.Neck;

namespace Fretloom.Claims.Checking;

/// <summary>The string sets that <c>every listed string set</c> goes through.</summary>
internal static class ListedStringSets
{
    private static readonly (string Instrument, string[] Sets)[] Table =
    [
        ("guitar", ["6-1", "4-1", "5-2", "6-3"]),
        ("guitar in fourths", ["6-1", "4-1"]),
        ("drop D guitar", ["6-1", "6-3"]),
        ("DADGAD guitar", ["6-1", "4-1"]),
        ("open G guitar", ["6-1", "5-2"]),
        ("low-G ukulele", ["4-1"]),
        ("re-entrant ukulele", ["4-1"]),
        ("baritone ukulele", ["4-1"]),
        ("bass", ["4-1"]),
        ("five-string bass", ["5-1"]),
        ("mandolin", ["4-1"]),
        ("banjo", ["5-1", "4-1"]),
    ];

    /// <summary>Twenty, in the order of the list.</summary>
    public static ValueList<Place> All { get; } = Places().ToValueList();

    private static IEnumerable<Place> Places()
    {
        foreach (var (name, sets) in Table)
        {
            if (!Catalogue.TryFind(name, out var instrument))
            {
                throw new InvalidOperationException($"The catalogue has no {name}.");
            }

            foreach (var set in sets)
            {
                yield return Place.On(instrument, StringSet.Parse(set));
            }
        }
    }
}
