namespace Fretloom.Studio.Client.Write.Preview;

/// <summary>How many blocks are worked out at once, so that the page is held up for a moment only.</summary>
internal sealed class Pace(TimeProvider clock)
{
    /// <summary>What lies between two slices: the page draws and hears the keys.</summary>
    public static readonly TimeSpan Rest = TimeSpan.FromMilliseconds(1);

    // Well below the twentieth of a second after which a key is felt to be late. Ours, without source.
    private static readonly TimeSpan Short = TimeSpan.FromMilliseconds(20);

    private TimeSpan _longest = Short;
    private int _step;

    /// <summary>How many blocks the next slice has: twice as many as the last, if all its steps were short.</summary>
    public int Step => _longest < Short ? _step * 2 : 1;

    /// <summary>Begins a slice.</summary>
    public void Begin() => (_step, _longest) = (Step, TimeSpan.Zero);

    /// <summary>Does a step of it.</summary>
    public void Measure(Action work)
    {
        var start = clock.GetTimestamp();
        work();
        var took = clock.GetElapsedTime(start);
        _longest = took > _longest ? took : _longest;
    }
}
