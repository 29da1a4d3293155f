namespace Fretloom.Claims.Checking;

/// <summary>What became of the string sets in one key: counts, and the first that fail. Its size does not grow with the number of cases.</summary>
internal sealed class Tally
{
    /// <summary>How many failing string sets are remembered.</summary>
    public const int Remembered = 32;

    private readonly SortedSet<int> _firstFailing = [];

    public long Failing { get; private set; }

    public long Untested { get; private set; }

    /// <summary>Indexes of the first string sets that fail, ascending.</summary>
    public IReadOnlyCollection<int> FirstFailing => _firstFailing;

    public void Add(int place, Outcome outcome)
    {
        if (outcome == Outcome.Fails)
        {
            Failing++;
            Remember(place);
        }
        else if (outcome == Outcome.Untested)
        {
            Untested++;
        }
    }

    /// <summary>Counts of a whole block; what fails is given with <see cref="Remember"/>.</summary>
    public void Add(int failing, int untested) => (Failing, Untested) = (Failing + failing, Untested + untested);

    /// <summary>Whether a string set could still be among the first.</summary>
    public bool Wants(int place) => _firstFailing.Count < Remembered || place < _firstFailing.Max;

    public void Remember(int place)
    {
        if (!Wants(place))
        {
            return;
        }

        _firstFailing.Add(place);
        if (_firstFailing.Count > Remembered)
        {
            _firstFailing.Remove(_firstFailing.Max);
        }
    }

    public void Add(Tally other)
    {
        (Failing, Untested) = (Failing + other.Failing, Untested + other.Untested);
        foreach (var place in other._firstFailing)
        {
            Remember(place);
        }
    }
}
