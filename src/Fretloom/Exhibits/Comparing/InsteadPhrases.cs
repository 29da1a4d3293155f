using System.Globalization;
using Fretloom.Neck;
using Fretloom.Sentences.Reading;
using Fretloom.Shapes;

namespace Fretloom.Exhibits.Comparing;

/// <summary>Says where shapes lie.</summary>
internal static class InsteadPhrases
{
    /// <summary>A way with its place.</summary>
    public static Instead Of(InsteadWay way, Candidate from, Reached to)
    {
        var (shape, instrument) = (to.Candidate.Shape, to.Candidate.Instrument);
        int? capo = way == InsteadWay.Capo ? instrument.Capo : null;
        var words = way switch
        {
            InsteadWay.HigherUp => "higher up",
            InsteadWay.OtherStrings => $"on strings {StringsOf(shape)}",
            InsteadWay.Inversion => InversionOf(to.Candidate),
            InsteadWay.FewerStrings => $"on strings {StringsOf(shape)} alone{LeftOut(from.Shape, shape)}",
            _ => string.Create(CultureInfo.InvariantCulture, $"with a capo at {capo}"),
        };
        return new Instead(way, $"{words}, {FretsOf(instrument, shape)}", shape, to.Fingering, capo);
    }

    /// <summary>The stopped frets: <c>frets 5-7</c>, <c>fret 5</c>, <c>open strings</c>.</summary>
    public static string FretsOf(Instrument instrument, Shape shape)
    {
        var stopped = shape.Spots.Where(spot => !instrument.IsOpen(spot)).Select(spot => spot.Fret).ToList();
        return stopped.Count == 0 ? "open strings"
            : stopped.Min() == stopped.Max() ? string.Create(CultureInfo.InvariantCulture, $"fret {stopped[0]}")
            : string.Create(CultureInfo.InvariantCulture, $"frets {stopped.Min()}-{stopped.Max()}");
    }

    /// <summary>The strings that sound.</summary>
    public static StringSet StringsOf(Shape shape) => new(shape.Spots.Select(spot => spot.String).Distinct());

    private static string InversionOf(Candidate to)
    {
        var chord = ((ShapeSource.OfChord)to.Shape.Source).Chord;
        var inversion = Enumerable
            .Range(0, chord.Notes.Count)
            .First(index => chord.MemberText(index) == to.LowestMember);
        return inversion == 0 ? "in root position" : $"in {Numbers.OrdinalWord(inversion)} inversion";
    }

    private static string LeftOut(Shape from, Shape to)
    {
        var missing = to.MembersLeftOut.Except(from.MembersLeftOut).ToList();
        return missing.Count == 0 ? "" : $" without the {string.Join(" and ", missing.Select(NameOf))}";
    }

    private static string NameOf(string member) =>
        int.TryParse(member, NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            ? Numbers.OrdinalWord(number)
            : member;
}
