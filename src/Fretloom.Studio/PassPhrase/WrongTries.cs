using System.Net;

namespace Fretloom.Studio.PassPhrase;

/// <summary>Makes whoever gives wrong pass phrases wait: a second after the first, twice as long after each further one, a minute at most. Ours, without source.</summary>
/// <param name="clock">Tells the time.</param>
internal sealed class WrongTries(TimeProvider clock)
{
    private static readonly TimeSpan First = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan Longest = TimeSpan.FromMinutes(1);

    // More addresses than this are not told apart: then all of them wait.
    private const int MostAddresses = 1000;

    private readonly Lock _gate = new();
    private readonly Dictionary<IPAddress, (int Tries, DateTimeOffset Until)> _waiting = [];

    /// <summary>How long an address has to wait before it may try again; zero for not at all.</summary>
    public TimeSpan WaitOf(IPAddress address)
    {
        lock (_gate)
        {
            var left = _waiting.TryGetValue(Told(address), out var one) ? one.Until - clock.GetUtcNow() : TimeSpan.Zero;
            return left > TimeSpan.Zero ? left : TimeSpan.Zero;
        }
    }

    /// <summary>Notes a wrong try.</summary>
    public void Add(IPAddress address)
    {
        lock (_gate)
        {
            var who = Told(address);
            var tries = _waiting.GetValueOrDefault(who).Tries + 1;
            var wait = First * Math.Pow(2, Math.Min(tries - 1, 10));
            _waiting[who] = (tries, clock.GetUtcNow() + (wait < Longest ? wait : Longest));
        }
    }

    /// <summary>Forgets the wrong tries of an address that gave the right one.</summary>
    public void Forgive(IPAddress address)
    {
        lock (_gate)
        {
            _waiting.Remove(Told(address));
        }
    }

    private IPAddress Told(IPAddress address) =>
        _waiting.Count < MostAddresses || _waiting.ContainsKey(address) ? address : IPAddress.None;
}
