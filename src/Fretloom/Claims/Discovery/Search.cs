using Fretloom.Claims.Checking;
using Fretloom.Claims.Checking.Blocks;
using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Claims.Discovery;

/// <summary>The candidates of a scope, and what they were tried on.</summary>
internal sealed class Search
{
    private static readonly ValueList<Key> UsualKinds = OneOfEach(new KeyScope.EveryKey());

    private Search(DiscoveryScope scope, int seed)
    {
        Scope = scope;
        Here = Place.On(scope.Instrument, scope.Strings);
        var asked = OneOfEach(scope.Keys);
        IsUsual = asked.All(key => UsualKinds.Any(usual => usual.Kind == key.Kind));
        Ground = Ground.Of(IsUsual ? UsualKinds : asked, Here, seed);
        Asked = asked.Select(key => Kinds.IndexOf(key.Kind)).ToValueList();
    }

    public DiscoveryScope Scope { get; }

    public Place Here { get; }

    public Ground Ground { get; }

    /// <summary>Whether the kinds tried are those of <c>every key</c>; if not, they are those asked for.</summary>
    public bool IsUsual { get; }

    /// <summary>The kinds of key tried.</summary>
    public ValueList<ScaleKind> Kinds => Ground.Kinds.Select(key => key.Kind).ToValueList();

    /// <summary>Indexes of the kinds asked for.</summary>
    public ValueList<int> Asked { get; }

    private readonly HashSet<Claim> _trueHere = [];

    public int Tried { get; private set; }

    public IReadOnlyList<Candidate> Candidates { get; private set; } = [];

    /// <summary>What is true of the target in all kinds of key asked for, and not nearly everywhere.</summary>
    public IEnumerable<Candidate> TrueHere =>
        Candidates.Where(one => one is { IsTrueHere: true, IsTrivial: false, TellsOfNeck: true });

    /// <summary>Whether a statement that was tried is true of the target in all kinds of key asked for.</summary>
    public bool IsTrue(Claim here) => _trueHere.Contains(here);

    public static Search Of(DiscoveryScope scope, int seed, Action<double>? progress, CancellationToken cancellation)
    {
        var search = new Search(scope, seed);
        search.Try(progress, cancellation);
        return search;
    }

    private void Try(Action<double>? progress, CancellationToken cancellation)
    {
        var tuned = Place.Tuned([.. Enumerable.Repeat(1, Here.Strings.Count - 1)]);
        var chosen = Here.Strings.Numbers;
        var statements = Statement
            .All(new ChosenStrings(chosen, chosen), new ChosenStrings(tuned.Strings.Numbers, chosen))
            .Where(one => Applicability.Applies(Here, one.Here) && Applicability.Applies(tuned, one.Anywhere))
            .ToList();
        Tried = statements.Count;
        var here = TruthTable.Of(
            [.. statements.Select(one => one.Here)],
            Ground.Kinds,
            StringLayout.Of(Here),
            [Here.All.Opens],
            share => progress?.Invoke(0.3 * share),
            cancellation
        );
        var kindsHere = statements
            .Index()
            .ToDictionary(
                one => one.Item.Here,
                one => Asked.Where(kind => here[one.Index].Holds[kind, 0]).ToValueList()
            );
        var isTrue = statements.Where(one => kindsHere[one.Here].Count == Asked.Count).ToList();
        _trueHere.UnionWith(isTrue.Select(one => one.Here));
        // What the half-turn of the whole set does is a law of palindromic tunings, even where these strings are not tuned so.
        var isTrueElsehow = statements
            .Index()
            .Where(one => one.Item.Template.Family is null)
            .Where(one => here[one.Index].Holds.IsAny || one.Item.Template.IsOfHalfTurn && IsOfAll(one.Item.Here))
            .Select(one => one.Item)
            .Where(one => kindsHere[one.Here].Count < Asked.Count);
        var kept = Statement.Folded(isTrue).ToList();
        var trueHere = kept.Count;
        kept.AddRange(isTrueElsehow);
        var truths = TruthTable.Of(
            [.. kept.Select(one => one.Anywhere)],
            Ground.Kinds,
            StringLayout.Of(tuned),
            [.. Ground.Steps.Select(steps => Place.Tuned(steps).Strings.Opens)],
            share => progress?.Invoke(0.3 + 0.5 * share),
            cancellation
        );
        Candidates =
        [
            .. kept.Select(
                (one, at) =>
                    new Candidate(
                        one,
                        truths[at],
                        Ground,
                        at < trueHere ? Asked : kindsHere[one.Here],
                        isTrueHere: at < trueHere
                    )
            ),
        ];
    }

    private static bool IsOfAll(Claim claim) => !Parts.Of(claim).OfType<OtherStrings>().Any();

    private static ValueList<Key> OneOfEach(KeyScope keys) => keys.Keys.DistinctBy(key => key.Kind).ToValueList();
}
