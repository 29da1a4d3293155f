using Fretloom.Exhibits;
using Fretloom.Neck;
using Fretloom.Pages.Pictures;
using Fretloom.Pages.Svg;
using Fretloom.Shapes;
using Fretloom.Studio.Client.State;

namespace Fretloom.Studio.Client.See;

/// <summary>Pictures of necks, written for the page. Those in which no shape is brought out are kept, so that they can be made before they are wanted.</summary>
internal sealed class NeckPictures
{
    private readonly Kept<Exhibit, NeckSeen> _kept = new(ReferenceEqualityComparer.Instance);
    private (double Room, double NarrowestFret) _measures;

    /// <summary>The picture of an exhibit.</summary>
    /// <param name="exhibit">What to show.</param>
    /// <param name="shape">A shape to bring out; null for none.</param>
    /// <param name="twin">The spots of its twin, far string first; empty for none.</param>
    /// <param name="room">Points there are.</param>
    /// <param name="narrowestFret">Points the narrowest fret has at least.</param>
    public NeckSeen Of(Exhibit exhibit, Shape? shape, ValueList<Spot> twin, double room, double narrowestFret)
    {
        if (shape is not null || twin.Count > 0)
        {
            return Draw(exhibit, shape, twin, room, narrowestFret);
        }

        if (_measures != (room, narrowestFret))
        {
            _kept.Clear();
            _measures = (room, narrowestFret);
        }

        return _kept.Of(exhibit, () => Draw(exhibit, null, [], room, narrowestFret));
    }

    private static NeckSeen Draw(Exhibit exhibit, Shape? shape, ValueList<Spot> twin, double room, double narrowestFret)
    {
        var neck = LiveNeck.Of(exhibit, shape, room, twin, narrowestFret);
        return new NeckSeen(neck, SvgWriter.WriteGathered(neck.Drawing, SvgTheme.Screen, "live-neck"));
    }
}

/// <summary>A neck and its picture.</summary>
/// <param name="Neck">Where everything lies.</param>
/// <param name="Svg">The picture, for a page that carries the styles of pictures.</param>
internal sealed record NeckSeen(LiveNeck Neck, string Svg);
