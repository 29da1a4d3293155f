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
/// <param name="most">How many stand in the page at once.</param>
public sealed class NeckPictures(int most)
{
    private readonly Kept<Exhibit, WrittenNeck> _kept = new(ReferenceEqualityComparer.Instance);
    private readonly List<WrittenNeck> _inPage = [];
    private readonly Queue<WrittenNeck> _next = [];
    private (double Room, double NarrowestFret) _measures;
    private int _made;

    /// <summary>The pictures that stand in the page. New ones come last, so that none is moved.</summary>
    public IReadOnlyList<WrittenNeck> InPage => _inPage;

    /// <summary>The one of them that is seen; null before the first.</summary>
    public WrittenNeck? Now { get; private set; }

    /// <summary>Raised when another picture is seen.</summary>
    public event Action? Shown;

    /// <summary>Raised when other pictures are to stand in the page.</summary>
    public event Action? Changed;

    /// <summary>Shows a picture in place of the one that is seen.</summary>
    /// <inheritdoc cref="Of"/>
    public void Show(Exhibit exhibit, Shape? shape, ValueList<Spot> twin, double room, double narrowestFret)
    {
        Now = Of(exhibit, shape, twin, room, narrowestFret);
        PutInPage(Now);
        Shown?.Invoke();
    }

    /// <summary>Makes ready what may be shown soon; it stands in the page once <see cref="PutNextInPage"/> was called for it.</summary>
    /// <inheritdoc cref="Of"/>
    public void Foresee(Exhibit exhibit, double room, double narrowestFret)
    {
        var picture = Of(exhibit, null, [], room, narrowestFret);
        if (most > 1 && !_inPage.Contains(picture))
        {
            _next.Enqueue(picture);
        }
    }

    /// <summary>Puts one of the pictures that were foreseen into the page.</summary>
    /// <returns>Whether there was one.</returns>
    public bool PutNextInPage()
    {
        if (!_next.TryDequeue(out var picture))
        {
            return false;
        }

        PutInPage(picture);
        return true;
    }

    /// <summary>The picture of an exhibit.</summary>
    /// <param name="exhibit">What to show.</param>
    /// <param name="shape">A shape to bring out; null for none.</param>
    /// <param name="twin">The spots of its twin, far string first; empty for none.</param>
    /// <param name="room">Points there are.</param>
    /// <param name="narrowestFret">Points the narrowest fret has at least.</param>
    private WrittenNeck Of(Exhibit exhibit, Shape? shape, ValueList<Spot> twin, double room, double narrowestFret)
    {
        if (shape is not null || twin.Count > 0)
        {
            return Draw(exhibit, shape, twin, room, narrowestFret);
        }

        if (_measures != (room, narrowestFret))
        {
            _kept.Clear();
            _next.Clear();
            _inPage.Clear();
            _measures = (room, narrowestFret);
        }

        return _kept.Of(exhibit, () => Draw(exhibit, null, [], room, narrowestFret));
    }

    private WrittenNeck Draw(Exhibit exhibit, Shape? shape, ValueList<Spot> twin, double room, double narrowestFret)
    {
        var neck = LiveNeck.Of(exhibit, shape, room, twin, narrowestFret);
        return new WrittenNeck(
            neck,
            SvgWriter.WriteGathered(neck.Drawing, SvgTheme.Screen, FormattableString.Invariant($"live-neck-{++_made}"))
        );
    }

    private void PutInPage(WrittenNeck picture)
    {
        if (_inPage.Contains(picture))
        {
            return;
        }

        _inPage.Add(picture);
        if (_inPage.Count > most)
        {
            _inPage.Remove(_inPage.First(one => one != Now));
        }

        Changed?.Invoke();
    }
}
