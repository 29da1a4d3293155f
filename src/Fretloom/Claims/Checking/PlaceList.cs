namespace Fretloom.Claims.Checking;

/// <summary>The string sets of a scope, in their order, made only when asked for: there may be millions.</summary>
internal sealed class PlaceList
{
    private readonly ValueList<Place> _named;
    private readonly PlaceScope.Tunings? _tunings;

    public PlaceList(PlaceScope scope)
    {
        ArgumentNullException.ThrowIfNull(scope);
        _tunings = scope as PlaceScope.Tunings;
        _named = scope switch
        {
            PlaceScope.On on => [Place.On(on.Instrument, on.Strings)],
            PlaceScope.Listed listed => ListedStringSets
                .All.Where(place => !listed.IsPalindromic || place.Strings.IsPalindromic)
                .Where(place => !listed.IsFourString || place.Strings.Count == 4)
                .ToValueList(),
            _ => [],
        };
        Count = _tunings is { } tunings ? CountOf(tunings) : _named.Count;
    }

    /// <summary>Some string sets by name.</summary>
    public PlaceList(ValueList<Place> named) => (_named, Count) = (named, named.Count);

    public int Count { get; }

    /// <summary>Whether they are tunings, which are counted and not named.</summary>
    public bool AreTunings => _tunings is not null;

    public Place this[int index] => _tunings is null ? _named[index] : Place.Tuned(Steps(index));

    /// <summary>The first on which a sentence can be asked; null when there is none.</summary>
    public Place? FirstFitting(ClaimSentence sentence) =>
        Enumerable
            .Range(0, AreTunings ? 1 : Count)
            .Select(at => this[at])
            .FirstOrDefault(place => Applicability.Applies(place, sentence));

    /// <summary>On how many of them a sentence can be asked. All tunings of a scope have the same strings, so the first decides.</summary>
    public int CountOfFitting(ClaimSentence sentence) =>
        _tunings is null ? _named.Count(place => Applicability.Applies(place, sentence))
        : Applicability.Applies(this[0], sentence) ? Count
        : 0;

    /// <summary>The steps of a tuning, far to near; the last step varies fastest.</summary>
    public int[] Steps(int index)
    {
        var tunings = _tunings ?? throw new InvalidOperationException("Only tunings are given by their steps.");
        var steps = new int[tunings.Strings - 1];
        WriteSteps(index, steps);
        return steps;
    }

    /// <summary>What the strings of some tunings sound when open.</summary>
    /// <param name="first">The first tuning.</param>
    /// <param name="count">How many.</param>
    /// <param name="opens">Filled string by string, the farthest first, and tuning by tuning.</param>
    /// <param name="lanes">How many places there are for each string.</param>
    public void WriteOpens(int first, int count, Span<ushort> opens, int lanes)
    {
        Span<int> steps = stackalloc int[_tunings!.Strings - 1];
        WriteSteps(first, steps);
        for (var lane = 0; lane < count; lane++)
        {
            var open = Place.LowestTuned;
            opens[lane] = (ushort)open;
            for (var at = 0; at < steps.Length; at++)
            {
                open += steps[at];
                opens[(at + 1) * lanes + lane] = (ushort)open;
            }

            Advance(steps);
        }
    }

    private void WriteSteps(int index, Span<int> steps)
    {
        var (least, choices) = (_tunings!.Least, _tunings.Most - _tunings.Least + 1);
        for (var at = Free(steps.Length) - 1; at >= 0; at--)
        {
            steps[at] = least + index % choices;
            index /= choices;
        }

        Mirror(steps);
    }

    /// <summary>Goes on to the next tuning; from the last one to the first.</summary>
    private void Advance(Span<int> steps)
    {
        var at = Free(steps.Length) - 1;
        while (at >= 0 && steps[at] == _tunings!.Most)
        {
            steps[at--] = _tunings.Least;
        }

        if (at >= 0)
        {
            steps[at]++;
        }

        Mirror(steps);
    }

    /// <summary>How many steps can be chosen; the others mirror them.</summary>
    private int Free(int steps) => _tunings!.IsPalindromic ? (steps + 1) / 2 : steps;

    private void Mirror(Span<int> steps)
    {
        for (var at = Free(steps.Length); at < steps.Length; at++)
        {
            steps[at] = steps[steps.Length - 1 - at];
        }
    }

    private static int CountOf(PlaceScope.Tunings tunings)
    {
        var free = tunings.IsPalindromic ? tunings.Strings / 2 : tunings.Strings - 1;
        var count = 1;
        for (var at = 0; at < free; at++)
        {
            count *= tunings.Most - tunings.Least + 1;
        }

        return count;
    }
}
