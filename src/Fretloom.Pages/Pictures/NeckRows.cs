using Fretloom.Neck;

namespace Fretloom.Pages.Pictures;

/// <summary>Breaks a long neck into rows, so that neighbouring marks on a string do not touch.</summary>
internal static class NeckRows
{
    /// <summary>The ranges of frets, one a row. Neighbouring rows share a fret, so that nothing is lost between them.</summary>
    /// <param name="instrument">The neck.</param>
    /// <param name="frets">All the frets.</param>
    /// <param name="width">Points for the frets of a row, without names and open strings.</param>
    /// <param name="measures">Sizes.</param>
    public static IEnumerable<FretRange> Of(Instrument instrument, FretRange frets, double width, Measures measures)
    {
        if (
            frets.Count <= 4
            || ClosestMarks(instrument, frets, width) >= measures.MarkRadius + measures.RingRadius + measures.MarkLine
        )
        {
            return [frets];
        }

        var joint = frets.First < 12 && frets.Last > 12 ? 12 : (frets.First + frets.Last + 1) / 2;
        return Of(instrument, new FretRange(frets.First, joint), width, measures)
            .Concat(Of(instrument, new FretRange(joint, frets.Last), width, measures));
    }

    /// <summary>The distance between the middles of the two narrowest frets when the row fills the width.</summary>
    private static double ClosestMarks(Instrument instrument, FretRange frets, double width)
    {
        var first = instrument.FretMm(Math.Max(0, frets.First - 1));
        var last = instrument.FretMm(frets.Last);
        return (last - instrument.FretMm(frets.Last - 2)) / 2 * width / (last - first);
    }
}
