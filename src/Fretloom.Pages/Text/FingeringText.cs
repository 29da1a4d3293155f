using System.Globalization;
using System.Text;
using Fretloom.Hand;
using Fretloom.Pages.Pictures;

namespace Fretloom.Pages.Text;

/// <summary>Writes fingerings as text for a terminal: strings, frets and fingers under one another, what they cost and why.</summary>
public static class FingeringText
{
    private const int LabelWidth = 7;
    private const int CellWidth = 4;
    private const double SmallestShare = 0.03;

    /// <summary>The best fingering with its reasons and cautions, then the alternatives.</summary>
    /// <param name="request">What was asked.</param>
    /// <param name="fingerings">At least one, the best first.</param>
    /// <param name="width">Characters on a line, at least <see cref="PlainText.SmallestWidth"/>.</param>
    /// <returns>Lines that end with \n.</returns>
    public static string Write(FingeringRequest request, ValueList<Fingering> fingerings, int width = 80)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(width, PlainText.SmallestWidth);
        var text = new StringBuilder();
        foreach (var line in Lines(request, fingerings, width))
        {
            text.Append(line).Append('\n');
        }

        return text.ToString();
    }

    private static IEnumerable<string> Lines(FingeringRequest request, ValueList<Fingering> fingerings, int width)
    {
        var player = request.Player;
        var how = request.Kind switch
        {
            FingeringKind.Together => "held together",
            FingeringKind.Arpeggio => "as an arpeggio",
            _ => "as a line",
        };
        var turned = player.IsTurnedOver ? " turned over" : "";
        return Wrapping
            .Lines($"{Wording.Name(player.Instrument)}{turned}, hand of {player.Hand}, {how}", width)
            .Concat(Best(fingerings[0], player.Hand, width))
            .Concat(fingerings.Skip(1).Index().SelectMany(next => Next(next.Item, next.Index + 2, width)))
            .Concat(NoMore(request, fingerings.Count));
    }

    /// <summary>Of a chord every fingering is tried, so that fewer than were asked for are all there are.</summary>
    private static IEnumerable<string> NoMore(FingeringRequest request, int count) =>
        request.Kind != FingeringKind.Together || count >= request.Count ? []
        : count == 1 ? ["", "There is no other fingering."]
        : ["", $"There are no more than these {Wording.Number(count)}."];

    private static IEnumerable<string> Best(Fingering best, HandSize hand, int width) =>
        Rows(best, width)
            .Append("")
            .Concat(Wrapping.Lines(Summary(best), width))
            .Concat(Reasons(best, width))
            .Concat(Cautions.Of(best, hand).SelectMany(caution => Wrapping.Lines(caution, width).Prepend("")));

    /// <summary>The terms that matter, and what the small ones add up to.</summary>
    private static IEnumerable<string> Reasons(Fingering fingering, int width)
    {
        var terms = fingering.Terms.ToLookup(term => term.Cost >= SmallestShare * fingering.Cost);
        foreach (var line in terms[true].SelectMany(term => Indented($"{Figure(term.Cost)}  {term.Words}", width)))
        {
            yield return line;
        }

        if (terms[false].Any())
        {
            yield return $"  {Figure(terms[false].Sum(term => term.Cost))}  in smaller terms";
        }
    }

    private static IEnumerable<string> Next(Fingering next, int place, int width) =>
        Wrapping
            .Lines($"{place.ToString(CultureInfo.InvariantCulture)}. {Summary(next)}", width)
            .Prepend("")
            .Concat(Rows(next, width));

    private static string Summary(Fingering fingering)
    {
        var pair = fingering.Widest is { } widest ? $", {fingering.Width.Words()}, {widest.Words}" : "";
        return $"cost {Figure(fingering.Cost)}{pair}";
    }

    /// <summary>Three rows, string, fret, finger, as often as the width asks for.</summary>
    private static IEnumerable<string> Rows(Fingering fingering, int width)
    {
        foreach (var run in fingering.Notes.Chunk(Math.Max(1, (width - LabelWidth) / CellWidth)))
        {
            yield return "";
            yield return Row("string", run.Select(note => note.Spot.String));
            yield return Row("fret", run.Select(note => note.Spot.Fret));
            yield return Row(
                "finger",
                run.Select(note => note.Finger == Finger.Thumb ? "T" : Wording.Number((int)note.Finger))
            );
        }
    }

    private static string Row(string label, IEnumerable<int> numbers) => Row(label, numbers.Select(Wording.Number));

    private static string Row(string label, IEnumerable<string> cells) =>
        label.PadRight(LabelWidth) + string.Concat(cells.Select(cell => cell.PadLeft(CellWidth)));

    private static IEnumerable<string> Indented(string text, int width) =>
        Wrapping.Lines(text, width - 2).Select(line => "  " + line);

    private static string Figure(double cost) => cost.ToString("0.00", CultureInfo.InvariantCulture);
}
