namespace Fretloom.Studio.Client.State;

/// <summary>Something that was done, and how to take it back.</summary>
/// <param name="Name">What it was, as the undo button says it.</param>
/// <param name="Undo">Takes it back.</param>
/// <param name="Redo">Does it again.</param>
public sealed record Step(string Name, Action Undo, Action Redo);

/// <summary>What was done, the last thing on top.</summary>
public sealed class History
{
    // More than anybody takes back by hand.
    private const int Most = 500;

    private readonly List<Step> _done = [];
    private readonly Stack<Step> _undone = [];

    /// <summary>Raised when a step is done, taken back or done again.</summary>
    public event Action? Changed;

    /// <summary>What would be taken back; null for nothing.</summary>
    public string? Last => _done.LastOrDefault()?.Name;

    /// <summary>What would be done again; null for nothing.</summary>
    public string? Next => _undone.TryPeek(out var step) ? step.Name : null;

    /// <summary>Notes a step that has just been done; what was undone before is forgotten.</summary>
    public void Note(Step step)
    {
        _done.Add(step);
        if (_done.Count > Most)
        {
            _done.RemoveAt(0);
        }

        _undone.Clear();
        Changed?.Invoke();
    }

    /// <summary>Takes the last step back; nothing happens when there is none.</summary>
    public void Undo()
    {
        if (_done.Count == 0)
        {
            return;
        }

        var step = _done[^1];
        _done.RemoveAt(_done.Count - 1);
        _undone.Push(step);
        step.Undo();
        Changed?.Invoke();
    }

    /// <summary>Does again what was taken back last; nothing happens when there is nothing.</summary>
    public void Redo()
    {
        if (_undone.TryPop(out var step))
        {
            _done.Add(step);
            step.Redo();
            Changed?.Invoke();
        }
    }
}
