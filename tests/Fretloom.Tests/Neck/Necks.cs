using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Tests.Neck;

/// <summary>Shorthand for tests of necks.</summary>
internal static class Necks
{
    /// <summary>The ways a natural tonic is commonly altered, as in the keys a player meets: 35 tonics are too many, these are 17.</summary>
    public static readonly string[] Tonics =
    [
        "C",
        "C#",
        "Db",
        "D",
        "D#",
        "Eb",
        "E",
        "F",
        "F#",
        "Gb",
        "G",
        "G#",
        "Ab",
        "A",
        "A#",
        "Bb",
        "B",
    ];

    public static readonly IReadOnlyList<ScaleKind> SevenNoteKinds = ScaleKind
        .All.Where(kind => kind.IsSevenNote)
        .ToList();

    /// <summary>Every key of <see cref="Tonics"/> and every seven-note kind.</summary>
    public static IEnumerable<Key> Keys =>
        from kind in SevenNoteKinds
        from tonic in Tonics
        select new Key(NoteName.Parse(tonic), kind);

    public static Instrument Find(string name) =>
        Catalogue.TryFind(name, out var found)
            ? found
            : throw new ArgumentException($"No instrument is called {name}.");

    public static NeckMap Map(string instrument, string key, string strings, string frets) =>
        new(Find(instrument), Key.Parse(key), StringSet.Parse(strings), FretRange.Parse(frets));

    public static Gen<Key> AnyKey { get; } =
        Gen.Select(OneOf(Tonics), OneOf(SevenNoteKinds), (tonic, kind) => new Key(NoteName.Parse(tonic), kind));

    public static Gen<Instrument> AnyInstrument { get; } = OneOf(Catalogue.All);

    /// <summary>A map of some strings and frets of any instrument in any key.</summary>
    public static Gen<NeckMap> AnyMap { get; } =
        from instrument in AnyInstrument
        from key in AnyKey
        from strings in AnyStrings(instrument.Strings.Count)
        from first in Gen.Int[0, instrument.Frets - 1]
        from last in Gen.Int[first, instrument.Frets]
        select new NeckMap(instrument, key, strings, new FretRange(first, last));

    /// <summary>A non-empty set of some of the strings.</summary>
    public static Gen<StringSet> AnyStrings(int count) =>
        Gen.Int[1, (1 << count) - 1]
            .Select(bits => new StringSet(Enumerable.Range(1, count).Where(number => (bits >> (number - 1) & 1) != 0)));

    private static Gen<T> OneOf<T>(IReadOnlyList<T> items) => Gen.Int[0, items.Count - 1].Select(at => items[at]);
}
