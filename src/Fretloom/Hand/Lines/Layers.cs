using Fretloom.Neck;

namespace Fretloom.Hand.Lines;

/// <summary>Makes the layers of a line; equal notes under the same rules share one.</summary>
internal sealed class Layers(MoveTable table, Player player, ValueList<LineNote> notes)
{
    /// <summary>The spots where a note may be played, rules aside.</summary>
    public static IEnumerable<Spot> SpotsOf(Instrument instrument, LineNote note) =>
        note switch
        {
            LineNote.At at => instrument.Has(at.Spot) ? [at.Spot] : [],
            LineNote.Sounding sounding => instrument.SpotsOf(sounding.Pitch.MidiNumber),
            _ => [],
        };

    /// <summary>The graph of the line under some rules.</summary>
    public LineGraph Graph(IEnumerable<LineRule> rules) => Graph(rules, notes.Count);

    /// <summary>The graph of the first notes of the line under some rules.</summary>
    public LineGraph Graph(IEnumerable<LineRule> rules, int count)
    {
        var set = new RuleSet(rules, notes.Count);
        var known = new Dictionary<LineNote, Layer>();
        var layers = new Layer[count];
        for (var at = 0; at < count; at++)
        {
            if (set.SpeaksOf(at))
            {
                layers[at] = Make(at, set);
            }
            else if (known.TryGetValue(notes[at], out var layer))
            {
                layers[at] = layer;
            }
            else
            {
                known[notes[at]] = layers[at] = Make(at, set);
            }
        }

        return new LineGraph(table, layers);
    }

    private Layer Make(int at, RuleSet rules) =>
        Layer.Of(table, player, SpotsOf(player.Instrument, notes[at]), (spot, touch) => rules.Allows(at, spot, touch));
}
