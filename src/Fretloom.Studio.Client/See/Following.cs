using Fretloom.Exhibits;
using Fretloom.Studio.Client.Ask;
using Fretloom.Studio.Client.State;
using Fretloom.Studio.Client.Words;
using Microsoft.AspNetCore.Components;

namespace Fretloom.Studio.Client.See;

/// <summary>
/// A part of the page that follows the neck. Where what it shows was seen before, or foreseen, it is there in the neck's own frame; else it is worked
/// out after the neck is seen.
/// </summary>
/// <typeparam name="T">What it shows of an exhibit.</typeparam>
public abstract class Following<T> : Spoken
    where T : class
{
    // What takes longer to make ready would hold up who goes through a list.
    private static readonly TimeSpan Longest = TimeSpan.FromMilliseconds(50);

    // So long nothing more is foreseen before this is made ready: necks come first.
    private static readonly TimeSpan Rest = TimeSpan.FromMilliseconds(150);

    // Pictures are large: no more of them than one list foresees.
    private readonly Kept<Exhibit, T> _kept = new(ReferenceEqualityComparer.Instance, 1 + Picker.MostForeseen);
    private readonly Queue<Exhibit> _foreseen = [];
    private int _turn;
    private int _foreseeing;

    /// <summary>What is seen.</summary>
    [Inject]
    protected State.Studio Studio { get; set; } = null!;

    /// <summary>The page.</summary>
    [Inject]
    protected Page Page { get; set; } = null!;

    [Inject]
    private Errands Errands { get; set; } = null!;

    [Inject]
    private TimeProvider Clock { get; set; } = null!;

    /// <summary>What is shown; null before the first.</summary>
    protected T? Shown { get; private set; }

    /// <summary>What is shown of an exhibit.</summary>
    /// <param name="exhibit">The exhibit.</param>
    /// <param name="shape">Which of its shapes is brought out; null for none, and for a part that shows none.</param>
    protected abstract T WorkOut(Exhibit exhibit, int? shape);

    /// <summary>Of how much that is foreseen in one list <see cref="MakeReady"/> is told, the nearest first.</summary>
    protected virtual int Near => 0;

    /// <summary>The shape that is brought out here; null for none.</summary>
    protected virtual int? ShapeAt => null;

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        base.OnInitialized();
        Studio.Changed += Follow;
        Studio.Foreseen += Foresee;
        Follow();
    }

    /// <inheritdoc/>
    protected override void Leave()
    {
        Studio.Changed -= Follow;
        Studio.Foreseen -= Foresee;
        _foreseen.Clear();
        _turn++;
    }

    /// <summary>Shows something else.</summary>
    protected virtual void Show(T what)
    {
        Shown = what;
        StateHasChanged();
    }

    /// <summary>Called when the browser has nothing else to do, with something that may be shown soon.</summary>
    protected virtual void MakeReady(T what) { }

    private void Follow()
    {
        _foreseen.Clear();
        var turn = ++_turn;
        if (ShapeAt is null && _kept.Knows(Studio.Exhibit))
        {
            Show(Known(Studio.Exhibit));
        }
        else
        {
            Errands.Run(() => FollowAsync(turn));
        }
    }

    // Only the last of several changes is shown.
    private async Task FollowAsync(int turn)
    {
        await Page.Seen();
        if (turn == _turn)
        {
            // With a shape brought out it is hardly ever the same again.
            Show(ShapeAt is { } shape ? WorkOut(Studio.Exhibit, shape) : Known(Studio.Exhibit));
        }
    }

    private T Known(Exhibit exhibit) => _kept.Of(exhibit, () => WorkOut(exhibit, null));

    private void Foresee(Exhibit exhibit)
    {
        if ((Near > 0 || !_kept.Knows(exhibit)) && !_foreseen.Any(one => ReferenceEquals(one, exhibit)))
        {
            _foreseen.Enqueue(exhibit);
            var turn = ++_foreseeing;
            Errands.Run(() => MakeReadyAsync(turn));
        }
    }

    private async Task MakeReadyAsync(int turn)
    {
        await Task.Delay(Rest, Clock);
        var (said, made) = (_turn, 0);
        while (turn == _foreseeing && _foreseen.Count > 0)
        {
            await Page.Idle();
            // Something may have been said, or foreseen, meanwhile.
            if (turn != _foreseeing || !_foreseen.TryDequeue(out var exhibit))
            {
                return;
            }

            var begun = Clock.GetTimestamp();
            var ready = Known(exhibit);
            if (Clock.GetElapsedTime(begun) > Longest)
            {
                _foreseen.Clear();
            }

            if (made++ < Near)
            {
                await Page.Idle();
                // Nothing was said meanwhile.
                if (said == _turn)
                {
                    MakeReady(ready);
                }
            }
        }
    }
}
