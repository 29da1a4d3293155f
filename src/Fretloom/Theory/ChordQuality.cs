using System.Diagnostics.CodeAnalysis;

namespace Fretloom.Theory;

/// <summary>What kind of chord stands on a root: its name, its symbol, and the intervals of its members.</summary>
/// <remarks>
/// The qualities are the fixed list in <see cref="All"/>; two are equal when they are the same one. Which intervals a symbol
/// stands for is common practice and is checked in the tests against an independent theory library. Every stack of thirds
/// that a triad, sixth, seventh or ninth chord of a <see cref="ScaleKind"/> can be is in the list.
/// </remarks>
public sealed partial class ChordQuality
{
    private readonly PitchClassSet _required;
    private readonly PitchClassSet _addable;

    private ChordQuality(
        ChordFamily family,
        string symbol,
        string name,
        string members,
        string otherSymbols,
        string omissible,
        string addable
    )
    {
        Family = family;
        Symbol = symbol;
        Name = name;
        Intervals = Members(members);
        OtherSymbols = Words(otherSymbols).ToValueList();
        Omissible = Members(omissible);
        Addable = Members(addable);
        PitchClasses = OnC(Intervals);
        _addable = OnC(Addable);
        _required = new PitchClassSet(PitchClasses.Mask & ~OnC(Omissible).Mask);
    }

    /// <summary>The kind of stack.</summary>
    public ChordFamily Family { get; }

    /// <summary>The full name in lower case: <c>half-diminished seventh</c>.</summary>
    public string Name { get; }

    /// <summary>The canonical ASCII suffix behind the root: <c>m7b5</c>; empty for the major triad. Never begins with an accidental.</summary>
    public string Symbol { get; }

    /// <summary>Other usual suffixes. <see cref="TryParse"/> reads many more that are put together by the same rules.</summary>
    public ValueList<string> OtherSymbols { get; }

    /// <summary>The members above the root as stacked, the unison first, ascending.</summary>
    public ValueList<Interval> Intervals { get; }

    /// <summary>
    /// Members that players leave out and still call the chord by its name (common practice, no source): a perfect fifth where
    /// a seventh or sixth is there, and lower extensions under higher ones. A part of <see cref="Intervals"/>.
    /// </summary>
    public ValueList<Interval> Omissible { get; }

    /// <summary>Intervals not among the members that may sound without changing the name: the eleventh of a thirteenth chord.</summary>
    public ValueList<Interval> Addable { get; }

    /// <summary>The members' pitch classes on the root C.</summary>
    public PitchClassSet PitchClasses { get; }

    /// <summary>How many members there are.</summary>
    public int MemberCount => Intervals.Count;

    /// <summary>Whether a member is a third of three semitones or fewer, so that a Roman numeral is written small.</summary>
    public bool IsMinorThird => Intervals.Any(interval => interval is { Steps: 2, Semitones: <= 3 });

    /// <summary>Whether the members are a root, a third and a fifth.</summary>
    public bool IsTriad => Family == ChordFamily.Triad;

    /// <summary>Whether the members are a root, a third, a fifth and a seventh.</summary>
    public bool IsSeventh =>
        Intervals.Count == 4 && Intervals[1].Number == 3 && Intervals[2].Number == 5 && Intervals[3].Number == 7;

    /// <summary>
    /// Whether players use it by this name. The others are stacks of odd scales, of fourths, or inversions of better known chords.
    /// </summary>
    public bool IsUsual => Rank < UsualOnes.Count;

    /// <summary>The index in <see cref="All"/>: the lower, the plainer.</summary>
    internal int Rank => Table.Ranks[this];

    /// <summary>How much there is to say: one for each member beyond three and for each fifth, ninth, eleventh or thirteenth out of the ordinary.</summary>
    internal int Weight => MemberCount - 3 + Intervals.Count(IsAltered);

    // A diminished fifth over a minor third is ordinary.
    private bool IsAltered(Interval interval) =>
        interval is { AlterationFromMajor: not 0, Number: 5 or 9 or 11 or 13 }
        && !(interval.Number == 5 && interval.AlterationFromMajor < 0 && IsMinorThird);

    /// <summary>Whether a set of notes may be called by this quality on the root C.</summary>
    internal bool CanSound(PitchClassSet onC) =>
        onC.Includes(_required) && new PitchClassSet(PitchClasses.Mask | _addable.Mask).Includes(onC);

    /// <summary>The quality whose members are exactly these intervals, in stacked order; null when no quality has them.</summary>
    public static ChordQuality? Of(ValueList<Interval> intervals) => Table.ByIntervals.GetValueOrDefault(intervals);

    /// <summary>Reads a suffix: canonical, one of the others, or any spelling put together likewise (<c>M7</c>, <c>△7</c>, <c>-7b5</c>, <c>ø</c>, <c>m7(♭5)</c>).</summary>
    /// <param name="text">The suffix; empty for a major triad.</param>
    /// <param name="quality">The quality, or null.</param>
    public static bool TryParse([NotNullWhen(true)] string? text, [NotNullWhen(true)] out ChordQuality? quality)
    {
        quality = null;
        return text is not null
            && ChordSpelling.IsWellBracketed(text)
            && Table.BySpelling.TryGetValue(ChordSpelling.Normal(text), out quality);
    }

    /// <summary>Reads a suffix as <see cref="TryParse"/> does.</summary>
    /// <exception cref="FormatException">No quality is written so.</exception>
    public static ChordQuality Parse(string text) =>
        TryParse(text, out var quality)
            ? quality
            : throw new FormatException($"'{text}' is not the suffix of a chord.");

    /// <summary>The symbol.</summary>
    public override string ToString() => Symbol;

    private static PitchClassSet OnC(ValueList<Interval> intervals) =>
        PitchClassSet.Of(intervals.Select(interval => PitchClass.FromSemitones(interval.Semitones)));

    private static string[] Words(string text) => text.Split(' ', StringSplitOptions.RemoveEmptyEntries);

    // Members are written against the major scale: "1 b3 5 b7".
    private static ValueList<Interval> Members(string text) => Words(text).Select(Member).ToValueList();

    private static Interval Member(string text)
    {
        var length = Accidentals.Read(text, out var alteration);
        var steps = int.Parse(text.AsSpan(length), System.Globalization.CultureInfo.InvariantCulture) - 1;
        return new Interval(steps, 12 * (steps / 7) + ((Step)(steps % 7)).Semitones() + alteration);
    }

    private static class Table
    {
        public static readonly Dictionary<string, ChordQuality> BySpelling = Spellings();

        public static readonly Dictionary<ValueList<Interval>, ChordQuality> ByIntervals = All.ToDictionary(quality =>
            quality.Intervals
        );

        public static readonly Dictionary<ChordQuality, int> Ranks = All.Index()
            .ToDictionary(one => one.Item, one => one.Index);

        private static Dictionary<string, ChordQuality> Spellings()
        {
            var spellings = new Dictionary<string, ChordQuality>(StringComparer.Ordinal);
            foreach (var quality in All)
            {
                foreach (var spelling in quality.OtherSymbols.Prepend(quality.Symbol))
                {
                    spellings.TryAdd(ChordSpelling.Normal(spelling), quality);
                }
            }

            return spellings;
        }
    }
}
