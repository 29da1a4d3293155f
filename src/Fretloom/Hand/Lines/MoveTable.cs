namespace Fretloom.Hand.Lines;

/// <summary>The costs of one player's notes and moves, worked out when first asked for and kept.</summary>
/// <remarks>
/// Row 0 stands for an open string, row n for fret n on any string. A row's touches are sorted by finger, then by position.
/// Moves depend on the two rows and on how many strings lie between them. Any number of threads may use one: what two of them
/// work out at once is the same, and either may be kept.
/// </remarks>
internal sealed class MoveTable
{
    /// <summary>Touches of a row are padded to a multiple of this with forbidden ones.</summary>
    public const int Lane = 8;

    private static (Player Player, MoveTable Table)[] s_recent = [];

    private readonly LineCost _cost;
    private readonly int _places;
    private readonly Touch[][] _touches;
    private readonly int[][] _notes;
    private readonly int[]?[] _moves;

    public MoveTable(Player player, LineWeights weights)
    {
        _cost = new LineCost(player, weights);
        _places = 2 * player.Instrument.Strings.Count - 1;
        _touches = [.. Enumerable.Range(0, _cost.Frame.LastFret + 1).Select(Touches)];
        _notes = [.. _touches.Select(NoteCosts)];
        _moves = new int[]?[_touches.Length * _touches.Length * _places];
    }

    /// <summary>The table of a player; those of the last few players are kept.</summary>
    public static MoveTable Of(Player player)
    {
        const int Kept = 4;
        var key = player with { UsesThumb = false };
        var recent = s_recent;
        foreach (var (known, table) in recent)
        {
            if (known == key)
            {
                return table;
            }
        }

        var fresh = new MoveTable(key, LineWeights.Default);
        s_recent = [(key, fresh), .. recent.Take(Kept - 1)];
        return fresh;
    }

    /// <summary>The costs term by term.</summary>
    public LineCost Cost => _cost;

    /// <summary>The touches of a row, without padding. Their place is 1.</summary>
    public Touch[] TouchesOf(int row) => _touches[row];

    /// <summary>What the touches of a row cost by themselves, padded.</summary>
    public int[] NotesOf(int row) => _notes[row];

    /// <summary>How many touches a row has with its padding.</summary>
    public int WidthOf(int row) => _notes[row].Length;

    /// <summary>
    /// What it costs to move between each touch of one row and each of another, whichever comes first: a matrix, row by row,
    /// each row padded.
    /// </summary>
    /// <param name="one">The row of the first touches.</param>
    /// <param name="other">The row of the second.</param>
    /// <param name="places">By how many places the second string lies farther from the floor.</param>
    public int[] Moves(int one, int other, int places)
    {
        ref var moves = ref _moves[(one * _touches.Length + other) * _places + places + (_places >> 1)];
        return moves ??= MoveCosts(one, other, places);
    }

    private Touch[] Touches(int row)
    {
        var positions = Enumerable.Range(1, _cost.Frame.LastFret);
        return row == 0
            ? [.. positions.Select(position => new Touch(1, 0, Finger.None, position))]
            :
            [
                .. from finger in new[] { Finger.Index, Finger.Middle, Finger.Ring, Finger.Little }
                from position in positions
                where _cost.Reaches(position, finger, row)
                select new Touch(1, row, finger, position),
            ];
    }

    private int[] NoteCosts(Touch[] touches)
    {
        var costs = new int[(touches.Length + Lane - 1) / Lane * Lane];
        costs.AsSpan().Fill(Tally.Forbidden);
        var tally = new Tally();
        for (var at = 0; at < touches.Length; at++)
        {
            tally.Clear();
            _cost.Add(touches[at], tally);
            costs[at] = tally.Total;
        }

        return costs;
    }

    private int[] MoveCosts(int one, int other, int places)
    {
        var width = WidthOf(other);
        var costs = new int[_touches[one].Length * width];
        costs.AsSpan().Fill(Tally.Forbidden);
        var tally = new Tally();
        for (var from = 0; from < _touches[one].Length; from++)
        {
            for (var to = 0; to < _touches[other].Length; to++)
            {
                tally.Clear();
                _cost.Add(_touches[one][from], _touches[other][to] with { Place = 1 + places }, tally);
                costs[from * width + to] = tally.Total;
            }
        }

        return costs;
    }
}
