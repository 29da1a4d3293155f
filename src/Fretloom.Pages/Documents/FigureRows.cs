using Fretloom.Lessons.Syntax;

namespace Fretloom.Pages.Documents;

/// <summary>Finds figures that follow each other and together take no more than the width of the text.</summary>
internal static class FigureRows
{
    /// <summary>Room between figures that stand side by side, in points: 6 mm.</summary>
    public const double Gutter = 6 / 25.4 * 72;

    /// <summary>The blocks in order: each alone, but figures that may stand side by side together.</summary>
    public static IEnumerable<ValueList<Block>> Of(ValueList<Block> blocks)
    {
        var row = new List<Block>();
        var taken = 0;
        foreach (var block in blocks)
        {
            var share = (block as Block.Figure)?.Options.WidthPercent ?? 100;
            if (row.Count > 0 && taken + share > 100)
            {
                yield return row.ToValueList();
                (row, taken) = ([], 0);
            }

            row.Add(block);
            taken += share;
        }

        if (row.Count > 0)
        {
            yield return row.ToValueList();
        }
    }
}
