using System.Globalization;
using Fretloom.Neck;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Tests.Shapes;

/// <summary>Short ways to say where to look, and to write down what was found.</summary>
internal static class Find
{
    public static readonly Voicing EveryClosePosition = new Voicing.OneNotePerString(Arrangement.Close, []);

    public static readonly Voicing RootPosition = new Voicing.OneNotePerString(Arrangement.Close, [0]);

    public static Instrument Instrument(string name) =>
        Catalogue.TryFind(name, out var instrument) ? instrument : throw new ArgumentException(name);

    public static NeckMap Map(string instrument, string? strings = null, string frets = "0-12", string key = "C major")
    {
        var found = Instrument(instrument);
        return new NeckMap(
            found,
            Key.Parse(key),
            strings is null ? found.AllStrings : StringSet.Parse(strings),
            FretRange.Parse(frets)
        );
    }

    public static ShapeSource.OfChord ChordOf(string symbol) => new(Chord.Parse(symbol), null);

    public static ValueList<Shape> Shapes(NeckMap map, string chord, Voicing voicing) =>
        ShapeFinder.Find(map, ChordOf(chord), voicing);

    /// <summary>Frets from the far string on, x for a muted one; with hyphens when one has two digits: <c>x32010</c>, <c>10-9-8-7</c>.</summary>
    public static string Frets(Shape shape) => Frets(shape.Strings, shape.Spots);

    public static string Frets(StringSet strings, IEnumerable<Spot> spots)
    {
        var byString = spots.ToDictionary(spot => spot.String, spot => spot.Fret);
        var frets = strings
            .Numbers.Select(number =>
                byString.TryGetValue(number, out var fret) ? fret.ToString(CultureInfo.InvariantCulture) : "x"
            )
            .ToList();
        return string.Join(frets.Any(fret => fret.Length > 1) ? "-" : "", frets);
    }
}
