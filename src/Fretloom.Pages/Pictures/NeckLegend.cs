using Fretloom.Pages.Scene;
using Fretloom.Shapes;

namespace Fretloom.Pages.Pictures;

/// <summary>The legend of a neck: only what occurs on it.</summary>
internal static class NeckLegend
{
    private static readonly Measures Small = new(17);

    // A ring around nothing is drawn as large as the second ring of a mark.
    private static readonly Measures Ring = new(13);

    public static IEnumerable<LegendItem> For(NeckContent content)
    {
        var marks = content.Notes.Select(content.MarkOf).ToList();
        var kinds = marks.Select(mark => mark.Kind).ToHashSet();
        var hasPlain =
            marks.Exists(mark => mark is { Kind: MarkKind.OfKey, IsTonic: false }) && !content.HasFingersInside;
        if (hasPlain && (kinds.Count > 1 || marks.Exists(mark => mark.IsTonic)))
        {
            yield return MarkItem(MarkKind.OfKey, false, false, content.IsWholeKey ? "in the key" : "note");
        }

        if (marks.Exists(mark => mark.IsTonic))
        {
            yield return Tonic([
                .. marks
                    .Where(mark => mark.IsTonic)
                    .Select(mark => mark with { Label = "", IsRoot = false })
                    .Distinct()
                    .OrderBy(mark => mark.Kind)
                    .ThenBy(mark => mark.IsSolid),
            ]);
        }

        if (kinds.Contains(MarkKind.OfChord))
        {
            yield return MarkItem(MarkKind.OfChord, false, false, $"in {content.ChordName}");
        }

        if (marks.Exists(mark => mark.IsRoot))
        {
            var kind = kinds.Contains(MarkKind.OfChord) ? MarkKind.OfChord : MarkKind.Chosen;
            yield return MarkItem(kind, false, true, "root");
        }

        if (content.Chosen.Count > 0)
        {
            var words = content.Chosen[0].Source is ShapeSource.OfScale ? "in the position" : "the shape";
            yield return new LegendItem(Band, 2 * Small.BandRadius, words);
        }

        foreach (var item in content.FingerLegendItems.Concat(Threads(content)).Concat(Landmarks(content)))
        {
            yield return item;
        }

        if (content.Landmarks?.Hinge is not null)
        {
            yield return new LegendItem((x, y) => Emblem.Hinge(x + 2, y + 6, y - 6), 10, "hinge");
        }

        if (content.Culprits is not null)
        {
            yield return new LegendItem(
                (x, y) => CulpritRings.Around(x, y, Ring),
                2 * Ring.CulpritRadius,
                CulpritRings.Words
            );
        }

        if (content.HalfTurnCentres.Any())
        {
            yield return new LegendItem(Emblem.HalfTurn, Emblem.HalfTurnWidth, "half-turn");
        }
    }

    private static LegendItem MarkItem(MarkKind kind, bool isTonic, bool isRoot, string words) =>
        new(
            (x, y) => new Mark("", kind, isTonic, isRoot).DrawnAt(x, y, Small),
            2 * (isTonic ? Small.RingRadius : Small.MarkRadius),
            words
        );

    /// <summary>The second ring around every kind of mark that has it.</summary>
    private static LegendItem Tonic(List<Mark> marks)
    {
        var each = 2 * Small.RingRadius + 2;
        return new LegendItem(
            (x, y) =>
                new Node.Group(
                    "tonic",
                    marks
                        .Select<Mark, Node>(
                            (mark, at) => mark.DrawnAt(x + (at - (marks.Count - 1) / 2.0) * each, y, Small)
                        )
                        .ToValueList()
                ),
            each * marks.Count - 2,
            "tonic"
        );
    }

    private static Node.Group Band(double x, double y) =>
        new(
            "shape",
            [
                new Node.Path(
                    BandOutline.Around([(x, y)], Small.BandRadius),
                    Tone.Band,
                    new Stroke(Tone.Focus, Small.StitchLine, Dash.Stitch)
                ),
                new Mark("", MarkKind.Chosen, false, false).DrawnAt(x, y, Small),
            ]
        );

    private static IEnumerable<LegendItem> Threads(NeckContent content)
    {
        foreach (var isThick in (bool[])[true, false])
        {
            var kinds = (content.Landmarks?.Thirds ?? [])
                .Where(third => third.Interval.Semitones >= 4 == isThick)
                .Select(content.KindOf)
                .Distinct()
                .Where(kind => kind != MarkKind.Chosen)
                .OrderDescending()
                .ToList();
            if (kinds.Count > 0)
            {
                yield return new LegendItem(
                    (x, y) => ThreadSample(x, y, kinds, isThick),
                    15 * kinds.Count,
                    isThick ? "major third" : "minor third"
                );
            }
        }
    }

    private static Node.Group ThreadSample(double x, double y, List<MarkKind> kinds, bool isThick) =>
        new(
            "thread",
            kinds
                .Select<MarkKind, Node>(
                    (kind, at) =>
                    {
                        var left = x + (at - kinds.Count / 2.0) * 15;
                        return new ThreadLine(isThick, kind).Drawn(left + 0.5, y, left + 14.5, y, Measures.Neck);
                    }
                )
                .ToValueList()
        );

    /// <summary>The signs of full and empty frets.</summary>
    public static IEnumerable<LegendItem> Landmarks(NeckContent content)
    {
        if (content.Landmarks?.FullFrets.Count > 0)
        {
            yield return new LegendItem(
                (x, y) => Column(x, y, content.HasColumns ? Tone.Full : Tone.None, Tone.Ink),
                14,
                "full fret"
            );
        }

        if (content.Landmarks?.EmptyFrets.Count > 0)
        {
            yield return new LegendItem(
                (x, y) => Column(x, y, content.HasColumns ? Tone.Empty : Tone.None, Tone.Paper),
                14,
                "empty fret"
            );
        }
    }

    private static Node.Group Column(double x, double y, Tone column, Tone tick) =>
        column == Tone.None
            ? new("tick", [LandmarkTick.At(x, y - Small.TickHeight / 2, Small, tick)])
            : new("column", [new Node.Rect(x - 6, y - 8, 12, 10, column), LandmarkTick.At(x, y + 4, Small, tick)]);
}
