namespace Fretloom.Pages.Documents;

/// <summary>Turns the levels an author used into levels that never skip one: 2 below the title, then 3, and so on to 6.</summary>
internal sealed class Outline
{
    private readonly Stack<int> _open = new();

    /// <summary>The level of the next heading.</summary>
    /// <param name="written">The level in the lesson file, 1 to 6.</param>
    public int LevelOf(int written)
    {
        while (_open.TryPeek(out var last) && last >= written)
        {
            _open.Pop();
        }

        _open.Push(written);
        return Math.Min(6, _open.Count + 1);
    }
}
