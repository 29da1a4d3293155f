using Fretloom.Theory;

namespace Fretloom.Scores.MusicXml;

/// <summary>How a member of a chord departs from the kind it is written as.</summary>
/// <param name="Number">The member: 5, 9, 11.</param>
/// <param name="Alteration">Semitones; of what is added, against the major or perfect interval, for a seventh the minor one.</param>
/// <param name="Type"><c>add</c>, <c>alter</c> or <c>subtract</c>.</param>
internal readonly record struct ChordDegree(int Number, int Alteration, string Type);

/// <summary>A chord quality as MusicXML says it: the nearest of its kinds, and what is added to it, altered or taken away.</summary>
/// <remarks>Kinds and degrees: MusicXML 4.0, types <c>kind-value</c>, <c>degree</c> and <c>degree-alter</c>. Where one name means one thing there and here, as of the thirteenth without its eleventh, no degree is written.</remarks>
internal static class ChordKinds
{
    // The plainer ones first: of kinds equally near, the first is taken.
    private static readonly (ChordQuality Quality, string Kind)[] Kinds =
    [
        .. new[]
        {
            ("", "major"),
            ("m", "minor"),
            ("dim", "diminished"),
            ("aug", "augmented"),
            ("sus4", "suspended-fourth"),
            ("sus2", "suspended-second"),
            ("5", "power"),
            ("7", "dominant"),
            ("maj7", "major-seventh"),
            ("m7", "minor-seventh"),
            ("m7b5", "half-diminished"),
            ("dim7", "diminished-seventh"),
            ("7#5", "augmented-seventh"),
            ("mMaj7", "major-minor"),
            ("6", "major-sixth"),
            ("m6", "minor-sixth"),
            ("9", "dominant-ninth"),
            ("maj9", "major-ninth"),
            ("m9", "minor-ninth"),
            ("11", "dominant-11th"),
            ("maj11", "major-11th"),
            ("m11", "minor-11th"),
            ("13", "dominant-13th"),
            ("maj13", "major-13th"),
            ("m13", "minor-13th"),
        }.Select(row => (ChordQuality.Parse(row.Item1), row.Item2)),
    ];

    private static readonly Dictionary<ChordQuality, string> Exact = Kinds.ToDictionary(
        kind => kind.Quality,
        kind => kind.Kind
    );

    /// <summary>The kind that needs the fewest degrees, and those.</summary>
    public static (string Kind, ValueList<ChordDegree> Degrees) Of(ChordQuality quality) =>
        Exact.TryGetValue(quality, out var exact) ? (exact, []) : Nearest(quality);

    private static (string Kind, ValueList<ChordDegree> Degrees) Nearest(ChordQuality quality) =>
        Kinds
            .Select(kind => (kind.Kind, Degrees: Between(kind.Quality, quality)))
            .MinBy(written => written.Degrees.Count);

    private static ValueList<ChordDegree> Between(ChordQuality kind, ChordQuality quality)
    {
        var (has, wants) = (ByNumber(kind), ByNumber(quality));
        var degrees = new List<ChordDegree>();
        foreach (var (number, asked) in wants)
        {
            var there = has.GetValueOrDefault(number) ?? [];
            // A ninth both flat and sharp is one ninth altered and another added.
            var altered = asked.Except(there).ToList();
            var free = there.Except(asked).ToList();
            for (var at = 0; at < altered.Count; at++)
            {
                degrees.Add(
                    at < free.Count
                        ? new(number, altered[at] - free[at], "alter")
                        : new(number, altered[at] + (number == 7 ? 1 : 0), "add")
                );
            }
        }

        degrees.AddRange(
            has.Where(member => !wants.ContainsKey(member.Key))
                .Select(member => new ChordDegree(member.Key, 0, "subtract"))
        );
        return degrees.OrderBy(degree => degree.Number).ToValueList();
    }

    /// <summary>The members of a chord by number, with their alterations against the major scale.</summary>
    private static Dictionary<int, List<int>> ByNumber(ChordQuality quality) =>
        quality
            .Intervals.GroupBy(interval => interval.Number)
            .ToDictionary(same => same.Key, same => same.Select(interval => interval.AlterationFromMajor).ToList());
}
