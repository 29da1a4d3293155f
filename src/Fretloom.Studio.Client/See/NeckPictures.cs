using Fretloom.Exhibits;
using Fretloom.Neck;
using Fretloom.Pages.Pictures;
using Fretloom.Pages.Svg;
using Fretloom.Shapes;
using Fretloom.Studio.Client.State;

namespace Fretloom.Studio.Client.See;

/// <summary>Pictures of necks, written for the page. Those in which no shape is brought out are kept, so that they can be made before they are wanted.</summary>
/// <param name="most">How many stand in the page at once, the one that is seen among them; at least 1.</param>
/// <exception cref="ArgumentOutOfRangeException">There is no room for one.</exception>
public sealed class NeckPictures(int most)
{
    private readonly Kept<Exhibit, WrittenNeck> _kept = new(ReferenceEqualityComparer.Instance);
    private (double Room, double NarrowestFret) _measures;
    private bool _isPassing;
    private int _made;

    /// <summary>The pictures in the page.</summary>
    public Layers<WrittenNeck> Layers { get; } = new(most);

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
            Layers.LetAllGo();
            _measures = (room, narrowestFret);
        }
        else if (_isPassing)
        {
            // With a shape brought out it is never the same again.
            Layers.LetGo();
        }

        _isPassing = shape is not null || twin.Count > 0;
        Layers.Show(_isPassing ? Draw(exhibit, shape, twin) : Kept(exhibit));
    }

    /// <summary>Makes ready what may be shown soon, of the measures of what is seen.</summary>
    /// <param name="exhibit">What may be shown.</param>
    public void Foresee(Exhibit exhibit) => Layers.Foresee(Kept(exhibit));

    private WrittenNeck Kept(Exhibit exhibit) => _kept.Of(exhibit, () => Draw(exhibit, null, []));

    private WrittenNeck Draw(Exhibit exhibit, Shape? shape, ValueList<Spot> twin)
    {
        var neck = LiveNeck.Of(exhibit, shape, _measures.Room, twin, _measures.NarrowestFret);
        return new WrittenNeck(
            neck,
            SvgWriter.WriteGathered(neck.Drawing, SvgTheme.Screen, FormattableString.Invariant($"live-neck-{++_made}"))
        );
    }
}
