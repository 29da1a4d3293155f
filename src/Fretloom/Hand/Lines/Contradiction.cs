namespace Fretloom.Hand.Lines;

/// <summary>Finds rules that leave no fingering, as few as possible, and the note where they do.</summary>
/// <remarks>
/// Taking away any one of the rules found makes a fingering possible. They are found by halving (U. Junker, QuickXplain,
/// AAAI 2004, from memory).
/// </remarks>
internal static class Contradiction
{
    /// <summary>The culprits and the first note that cannot be reached under them.</summary>
    public static FingeringRefusal Of(Layers layers, ValueList<LineNote> notes, ValueList<LineRule> rules)
    {
        var culprits = Fewest(layers, [], false, [.. rules.Distinct()]);
        var note = FirstUnreached(layers, notes.Count, culprits);
        var words = string.Join(" and ", culprits.Select(rule => $"'{rule}'"));
        var message =
            culprits.Count == 1
                ? $"No fingering keeps the rule {words}: nothing is left for note {note + 1} ({notes[note]}). Leave the rule out."
                : $"No fingering keeps the rules {words} together: nothing is left for note {note + 1} ({notes[note]}). Leave out one of them.";
        return new FingeringRefusal(message, note, rules.IndexOf(culprits[^1]));
    }

    private static List<LineRule> Fewest(Layers layers, List<LineRule> kept, bool hasNew, List<LineRule> tried)
    {
        if (hasNew && layers.Graph(kept).DeadEnd is not null)
        {
            return [];
        }

        if (tried.Count == 1)
        {
            return tried;
        }

        var half = tried.Count / 2;
        var first = tried[..half];
        var second = tried[half..];
        var ofSecond = Fewest(layers, [.. kept, .. first], true, second);
        var ofFirst = Fewest(layers, [.. kept, .. ofSecond], ofSecond.Count > 0, first);
        return [.. ofFirst, .. ofSecond];
    }

    // By halving too: once the first notes of a line cannot be played, more of them cannot.
    private static int FirstUnreached(Layers layers, int count, List<LineRule> culprits)
    {
        var (least, most) = (1, count);
        while (least < most)
        {
            var middle = (least + most) / 2;
            (least, most) = layers.Graph(culprits, middle).DeadEnd is null ? (middle + 1, most) : (least, middle);
        }

        return least - 1;
    }
}
