namespace Fretloom.Studio.Client.See;

/// <summary>Parts of the page that take turns in one place: one is seen, and those that may be wanted next stand in the page already, where they are not.</summary>
/// <typeparam name="T">What a layer is made of; it never changes.</typeparam>
public sealed class Layers<T>
    where T : class
{
    private readonly int _most;
    private readonly List<T> _inPage = [];
    private readonly Queue<T> _next = [];

    // Those in the page, the one that was wanted longest ago first.
    private readonly List<T> _wanted = [];
    private bool _isChanged;

    /// <summary>Begins with none.</summary>
    /// <param name="most">How many stand in the page at once, the one that is seen among them; at least 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no room for one.</exception>
    public Layers(int most)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(most, 1);
        _most = most;
    }

    /// <summary>Those that stand in the page. New ones come last, so that none is moved.</summary>
    public IReadOnlyList<T> InPage => _inPage;

    /// <summary>The one of them that is seen; null before the first.</summary>
    public T? Now { get; private set; }

    /// <summary>Raised when another is seen.</summary>
    public event Action? Shown;

    /// <summary>Raised when others are to stand in the page.</summary>
    public event Action? Changed;

    /// <summary>Shows one in place of the one that is seen.</summary>
    /// <param name="layer">What to show.</param>
    public void Show(T layer)
    {
        Now = layer;
        PutInPage(layer);
        TellChange();
        Shown?.Invoke();
    }

    /// <summary>Says that one may be shown soon; it stands in the page once <see cref="PutNextInPage"/> was called for it.</summary>
    /// <param name="layer">What may be shown.</param>
    public void Foresee(T layer)
    {
        if (_inPage.Contains(layer))
        {
            Want(layer);
        }
        else if (_most > 1 && !_next.Contains(layer))
        {
            _next.Enqueue(layer);
        }
    }

    /// <summary>Puts one of those that were foreseen into the page, those foreseen first before the others.</summary>
    /// <returns>Whether there was one.</returns>
    public bool PutNextInPage()
    {
        if (!_next.TryDequeue(out var layer))
        {
            return false;
        }

        PutInPage(layer);
        TellChange();
        return true;
    }

    /// <summary>Lets the one that is seen go when another is shown: it will not be wanted again.</summary>
    public void LetGo()
    {
        if (Now is not null)
        {
            TakeOut(Now);
        }
    }

    /// <summary>Lets all go when another is shown: none of them is right any more.</summary>
    public void LetAllGo()
    {
        _isChanged |= _inPage.Count > 0;
        _next.Clear();
        _wanted.Clear();
        _inPage.Clear();
    }

    private void PutInPage(T layer)
    {
        Want(layer);
        if (_inPage.Contains(layer))
        {
            return;
        }

        _inPage.Add(layer);
        _isChanged = true;
        if (_inPage.Count > _most)
        {
            TakeOut(_wanted.First(one => one != Now));
        }
    }

    private void TakeOut(T layer)
    {
        _isChanged = true;
        _inPage.Remove(layer);
        _wanted.Remove(layer);
    }

    private void TellChange()
    {
        if (_isChanged)
        {
            _isChanged = false;
            Changed?.Invoke();
        }
    }

    private void Want(T layer)
    {
        _wanted.Remove(layer);
        _wanted.Add(layer);
    }
}
