using Fretloom.Exhibits;
using Fretloom.Neck;
using Fretloom.Pages.Pictures;
using Fretloom.Pages.Svg;
using Fretloom.Shapes;
using Fretloom.Studio.Client.State;

namespace Fretloom.Studio.Client.See;

/// <summary>
/// Pictures of necks, written for the page. Those in which no shape is brought out are kept, so that they can be made before they are wanted; and
/// those that may be wanted next stand in the page already, where they are not seen.
/// </summary>
public sealed class NeckPictures
{
    private readonly Kept<Exhibit, WrittenNeck> _kept = new(ReferenceEqualityComparer.Instance);
    private readonly List<WrittenNeck> _inPage = [];
    private readonly Queue<WrittenNeck> _next = [];
    private readonly int _most;

    // Those in the page, the one that was wanted longest ago first.
    private readonly List<WrittenNeck> _wanted = [];
    private (double Room, double NarrowestFret) _measures;
    private bool _isPassing;
    private bool _isChanged;
    private int _made;

    /// <summary>Begins with none.</summary>
    /// <param name="most">How many stand in the page at once, the one that is seen among them; at least 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no room for one.</exception>
    public NeckPictures(int most)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(most, 1);
        _most = most;
    }

    /// <summary>The pictures that stand in the page. New ones come last, so that none is moved.</summary>
    public IReadOnlyList<WrittenNeck> InPage => _inPage;

    /// <summary>The one of them that is seen; null before the first.</summary>
    public WrittenNeck? Now { get; private set; }

    /// <summary>Raised when another picture is seen.</summary>
    public event Action? Shown;

    /// <summary>Raised when other pictures are to stand in the page.</summary>
    public event Action? Changed;

    /// <summary>Shows a picture in place of the one that is seen.</summary>
    /// <param name="exhibit">What to show.</param>
    /// <param name="shape">A shape to bring out; null for none.</param>
    /// <param name="twin">The spots of its twin, far string first; empty for none.</param>
    /// <param name="room">Points there are.</param>
    /// <param name="narrowestFret">Points the narrowest fret has at least.</param>
    public void Show(Exhibit exhibit, Shape? shape, ValueList<Spot> twin, double room, double narrowestFret)
    {
        if (_measures != (room, narrowestFret))
        {
            _kept.Clear();
            _next.Clear();
            _wanted.Clear();
            _inPage.Clear();
            _measures = (room, narrowestFret);
        }
        else if (_isPassing)
        {
            // With a shape brought out it is never the same again.
            TakeOut(Now!);
        }

        _isPassing = shape is not null || twin.Count > 0;
        Now = _isPassing ? Draw(exhibit, shape, twin) : Kept(exhibit);
        PutInPage(Now);
        TellChange();
        Shown?.Invoke();
    }

    /// <summary>Makes ready what may be shown soon, of the measures of what is seen; it stands in the page once <see cref="PutNextInPage"/> was called for it.</summary>
    /// <param name="exhibit">What may be shown.</param>
    public void Foresee(Exhibit exhibit)
    {
        var picture = Kept(exhibit);
        if (_inPage.Contains(picture))
        {
            Want(picture);
        }
        else if (_most > 1 && !_next.Contains(picture))
        {
            _next.Enqueue(picture);
        }
    }

    /// <summary>Puts one of the pictures that were foreseen into the page, those foreseen first before the others.</summary>
    /// <returns>Whether there was one.</returns>
    public bool PutNextInPage()
    {
        if (!_next.TryDequeue(out var picture))
        {
            return false;
        }

        PutInPage(picture);
        TellChange();
        return true;
    }

    private WrittenNeck Kept(Exhibit exhibit) => _kept.Of(exhibit, () => Draw(exhibit, null, []));

    private WrittenNeck Draw(Exhibit exhibit, Shape? shape, ValueList<Spot> twin)
    {
        var neck = LiveNeck.Of(exhibit, shape, _measures.Room, twin, _measures.NarrowestFret);
        return new WrittenNeck(
            neck,
            SvgWriter.WriteGathered(neck.Drawing, SvgTheme.Screen, FormattableString.Invariant($"live-neck-{++_made}"))
        );
    }

    private void PutInPage(WrittenNeck picture)
    {
        Want(picture);
        if (_inPage.Contains(picture))
        {
            return;
        }

        _inPage.Add(picture);
        _isChanged = true;
        if (_inPage.Count > _most)
        {
            TakeOut(_wanted.First(one => one != Now));
        }
    }

    private void TakeOut(WrittenNeck picture)
    {
        _isChanged = true;
        _inPage.Remove(picture);
        _wanted.Remove(picture);
    }

    private void TellChange()
    {
        if (_isChanged)
        {
            _isChanged = false;
            Changed?.Invoke();
        }
    }

    private void Want(WrittenNeck picture)
    {
        _wanted.Remove(picture);
        _wanted.Add(picture);
    }
}
