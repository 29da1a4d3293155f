using Fretloom.Neck;

namespace Fretloom.Hand.Lines;

/// <summary>All the ways to play one note of a line, spot by spot, and what they cost by themselves.</summary>
internal sealed class Layer
{
    private Layer(Group[] groups, int[] costs, Label[] labels) => (Groups, Costs, Labels) = (groups, costs, labels);

    /// <summary>The spots, in the order of <see cref="Instrument.SpotsOf"/>.</summary>
    public Group[] Groups { get; }

    /// <summary>The cost of each touch, group after group, padded; forbidden where a rule is against it.</summary>
    public int[] Costs { get; }

    /// <summary>Spots with fingers, in the order in which equally good fingerings come.</summary>
    public Label[] Labels { get; }

    /// <summary>Makes the layer of some spots.</summary>
    /// <param name="table">The player's costs.</param>
    /// <param name="player">The player.</param>
    /// <param name="spots">Spots on the neck.</param>
    /// <param name="allowed">Whether the rules allow a touch of a spot.</param>
    public static Layer Of(MoveTable table, Player player, IEnumerable<Spot> spots, Func<Spot, Touch, bool> allowed)
    {
        var groups = new List<Group>();
        var costs = new List<int>();
        var labels = new List<Label>();
        foreach (var spot in spots)
        {
            var row = player.Instrument.IsOpen(spot) ? 0 : spot.Fret;
            var touches = table.TouchesOf(row);
            var notes = table.NotesOf(row);
            var start = costs.Count;
            for (var at = 0; at < notes.Length; at++)
            {
                var isAllowed = at < touches.Length && allowed(spot, touches[at]);
                costs.Add(isAllowed ? notes[at] : Tally.Forbidden);
                if (
                    isAllowed
                    && (labels.Count == 0 || labels[^1].Group < groups.Count || labels[^1].Finger != touches[at].Finger)
                )
                {
                    labels.Add(new(groups.Count, touches[at].Finger, start + at, 0));
                }

                if (isAllowed)
                {
                    labels[^1] = labels[^1] with { Count = start + at + 1 - labels[^1].Start };
                }
            }

            groups.Add(new(spot, row, player.PlaceOf(spot.String), start, touches.Length));
        }

        return new Layer([.. groups], [.. costs], [.. labels]);
    }

    /// <summary>The touches of one spot.</summary>
    /// <param name="Spot">The spot.</param>
    /// <param name="Row">Its row in the table of moves.</param>
    /// <param name="Place">The place of its string under the hand.</param>
    /// <param name="Start">Where its touches begin among those of the layer.</param>
    /// <param name="Count">How many there are, without padding.</param>
    internal readonly record struct Group(Spot Spot, int Row, int Place, int Start, int Count);

    /// <summary>The touches of one spot with one finger: they differ in the position of the hand only.</summary>
    /// <param name="Group">The spot's index.</param>
    /// <param name="Finger">The finger.</param>
    /// <param name="Start">Where they begin among those of the layer.</param>
    /// <param name="Count">How many there are; a rule may forbid some of them.</param>
    internal readonly record struct Label(int Group, Finger Finger, int Start, int Count);
}
