using Fretloom.Theory;

namespace Fretloom.Claims.Checking.Blocks;

/// <summary>Runs a claim's program over blocks of string sets, key after key.</summary>
internal sealed class BlockWorker : IWorker
{
    private const int PlacesInPiece = 16 * Lanes.Count;

    private readonly PlaceList _places;
    private readonly ValueList<Run> _runs;
    private readonly int _keys;
    private readonly bool _inVectors;
    private readonly Dictionary<Program, Machine> _machines = [];

    private BlockWorker(PlaceList places, ValueList<Run> runs, int keys, bool inVectors)
    {
        (_places, _runs, _keys, _inVectors) = (places, runs, keys, inVectors);
        PlacesThatFit = runs.Sum(run => run.Count);
        Pieces = places.AreTunings ? (PlacesThatFit + PlacesInPiece - 1) / PlacesInPiece : runs.Count;
    }

    /// <inheritdoc/>
    public int Pieces { get; }

    /// <inheritdoc/>
    public int PlacesThatFit { get; }

    /// <summary>The worker for a sentence that the compiler knows.</summary>
    public static BlockWorker For(ClaimSentence sentence, PlaceList places, ValueList<Key> keys, bool inVectors)
    {
        var runs = places.AreTunings ? OfTunings(sentence, places, keys) : OfNamed(sentence, places, keys);
        return new BlockWorker(places, runs.ToValueList(), keys.Count, inVectors);
    }

    public IWorker Another() => new BlockWorker(_places, _runs, _keys, _inVectors);

    public void Do(int piece, Tally[] tallies, CancellationToken cancellation)
    {
        var run = Piece(piece);
        Go(
            run,
            (machine, done, count, key) =>
            {
                cancellation.ThrowIfCancellationRequested();
                Count(run, machine, done, count, tallies[key]);
            }
        );
    }

    /// <summary>What became of each string set in each key: all keys of the first string set, then of the next. Null where the claim cannot be asked.</summary>
    public Outcome?[] Table(CancellationToken cancellation)
    {
        var table = new Outcome?[_places.Count * _keys];
        foreach (var run in _runs)
        {
            Go(
                run,
                (machine, done, count, key) =>
                {
                    cancellation.ThrowIfCancellationRequested();
                    var fails = machine.Register(run.Program.Answer.Fails);
                    var untested = run.Program.Answer.Untested is { } register ? machine.Register(register) : [];
                    for (var lane = 0; lane < count; lane++)
                    {
                        table[run.PlaceOf(done + lane) * _keys + key] =
                            fails[lane] != 0 ? Outcome.Fails
                            : !untested.IsEmpty && untested[lane] != 0 ? Outcome.Untested
                            : Outcome.Holds;
                    }
                }
            );
        }

        return table;
    }

    /// <summary>Named string sets of one layout are one piece; tunings, which have one layout and may be millions, are cut up when they are asked for.</summary>
    private Run Piece(int piece)
    {
        if (!_places.AreTunings)
        {
            return _runs[piece];
        }

        var first = piece * PlacesInPiece;
        return _runs[0] with { First = first, Count = Math.Min(PlacesInPiece, PlacesThatFit - first) };
    }

    /// <summary>Works out block by block and key by key; what is found is read from the machine at once.</summary>
    private void Go(Run run, Action<Machine, int, int, int> read)
    {
        if (!_machines.TryGetValue(run.Program, out var machine))
        {
            machine = new Machine(run.Program.Code, _inVectors);
            _machines.Add(run.Program, machine);
        }

        for (var done = 0; done < run.Count; done += Lanes.Count)
        {
            var count = Math.Min(Lanes.Count, run.Count - done);
            run.Fill(_places, machine, done, count);
            machine.Begin();
            for (var key = 0; key < _keys; key++)
            {
                machine.RunKey(key);
                read(machine, done, count, key);
            }
        }
    }

    private static void Count(Run run, Machine machine, int done, int count, Tally tally)
    {
        var answer = run.Program.Answer;
        var fails = machine.Register(answer.Fails)[..count];
        var failing = Lanes.CountSet(fails);
        var untested = answer.Untested is { } register ? Lanes.CountSet(machine.Register(register)[..count]) : 0;
        tally.Add(failing, untested);
        if (failing == 0 || !tally.Wants(run.PlaceOf(done)))
        {
            return;
        }

        for (var lane = 0; lane < count; lane++)
        {
            if (fails[lane] != 0)
            {
                tally.Remember(run.PlaceOf(done + lane));
            }
        }
    }

    private static IEnumerable<Run> OfTunings(ClaimSentence sentence, PlaceList places, ValueList<Key> keys) =>
        Applicability.Applies(places[0], sentence)
            ?
            [
                new Run(
                    Program.Of(sentence.Claim, keys, StringLayout.Of(places[0]), sentence.Window),
                    0,
                    places.Count,
                    null
                ),
            ]
            : [];

    /// <summary>Named string sets side by side that have the same strings in the same order by sound.</summary>
    private static IEnumerable<Run> OfNamed(ClaimSentence sentence, PlaceList places, ValueList<Key> keys) =>
        Enumerable
            .Range(0, places.Count)
            .Where(at => Applicability.Applies(places[at], sentence))
            .GroupBy(at => StringLayout.Of(places[at]))
            .Select(group => new Run(
                Program.Of(sentence.Claim, keys, group.Key, sentence.Window),
                0,
                group.Count(),
                group.ToValueList()
            ));
}
