using System.Net;
using System.Net.Sockets;

namespace Fretloom.Studio.PassPhrase;

/// <summary>
/// Makes whoever gives wrong pass phrases wait: a second after the first, twice as long after each further one, a minute at most. Nobody waits for what
/// others tried. Ours, without source.
/// </summary>
/// <param name="clock">Tells the time.</param>
internal sealed class WrongTries(TimeProvider clock)
{
    /// <summary>More addresses are not remembered: the one that has not tried for longest is forgotten first.</summary>
    public const int MostAddresses = 1000;

    // The part of an IPv6 address that names the network; the rest a computer chooses itself, as often as it likes (RFC 4291, 2.5.1 and 2.5.4).
    private const int NetworkBytes = 8;

    private static readonly TimeSpan First = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan Longest = TimeSpan.FromMinutes(1);

    private readonly Lock _gate = new();
    private readonly Dictionary<IPAddress, LinkedListNode<Waiting>> _waiting = [];

    // In the order of their last tries, the oldest first.
    private readonly LinkedList<Waiting> _order = [];

    /// <summary>How long an address has to wait before it may try again; zero for not at all.</summary>
    public TimeSpan WaitOf(IPAddress address)
    {
        lock (_gate)
        {
            var left = _waiting.TryGetValue(NetworkOf(address), out var one)
                ? one.Value.Until - clock.GetUtcNow()
                : TimeSpan.Zero;
            return left > TimeSpan.Zero ? left : TimeSpan.Zero;
        }
    }

    /// <summary>Notes a wrong try.</summary>
    public void Add(IPAddress address)
    {
        lock (_gate)
        {
            var who = NetworkOf(address);
            var tries = Forget(who) + 1;
            var wait = First * Math.Pow(2, Math.Min(tries - 1, 10));
            var until = clock.GetUtcNow() + (wait < Longest ? wait : Longest);
            _waiting[who] = _order.AddLast(new Waiting(who, tries, until));
            if (_order.Count > MostAddresses)
            {
                Forget(_order.First!.Value.Who);
            }
        }
    }

    /// <summary>Forgets the wrong tries of an address that gave the right one.</summary>
    public void Forgive(IPAddress address)
    {
        lock (_gate)
        {
            Forget(NetworkOf(address));
        }
    }

    // Answers how often it tried.
    private int Forget(IPAddress who)
    {
        if (!_waiting.Remove(who, out var one))
        {
            return 0;
        }

        _order.Remove(one);
        return one.Value.Tries;
    }

    private static IPAddress NetworkOf(IPAddress address)
    {
        if (address.IsIPv4MappedToIPv6)
        {
            return address.MapToIPv4();
        }

        if (address.AddressFamily != AddressFamily.InterNetworkV6)
        {
            return address;
        }

        var bytes = address.GetAddressBytes();
        Array.Clear(bytes, NetworkBytes, bytes.Length - NetworkBytes);
        return new IPAddress(bytes);
    }

    private sealed record Waiting(IPAddress Who, int Tries, DateTimeOffset Until);
}
