using Fretloom.Claims.Checking;
using Fretloom.Theory;

namespace Fretloom.Claims.Discovery;

/// <summary>
/// Looks for the nearest place where a statement is false: these strings tuned otherwise, a listed set, or other keys. What is near is measured by
/// <see cref="Retunings.Distance"/>; keys of another kind lie two semitones farther.
/// </summary>
internal sealed class NearestFailures
{
    private const int OtherKindSemitones = 2;

    private readonly Search _search;
    private readonly CancellationToken _cancellation;
    private readonly ILookup<int, Near> _near;
    private readonly int _farthest;

    public NearestFailures(Search search, CancellationToken cancellation)
    {
        (_search, _cancellation) = (search, cancellation);
        var here = search.Here;
        var onGround = search
            .Ground.Steps.Index()
            .ToDictionary(steps => string.Join(' ', steps.Item), steps => steps.Index);
        // Of equally near ones the target itself comes first, then its strings tuned otherwise.
        _near = OfOneString()
            .Concat(OnGround())
            .Concat(Listed())
            .Prepend(new Near(0, () => here, null))
            .ToLookup(near => near.Semitones);
        _farthest = _near.Max(near => near.Key);

        IEnumerable<Near> Listed() =>
            ListedStringSets
                .All.Where(place => place.Strings.Count == here.Strings.Count)
                .Select(place => new Near(Far(place.Strings.Opens), () => place, null));

        IEnumerable<Near> OfOneString() =>
            Retunings
                .OfOneString(here)
                .Select(place => new Near(Far(place.Strings.Opens), () => place, IndexOf(place)));

        IEnumerable<Near> OnGround() =>
            from steps in search.Ground.Steps.Index()
            let opens = Retunings.InSteps(here, steps.Item)
            where opens is not null
            select new Near(Far(opens.Value), () => Retunings.Tuned(here, opens.Value), steps.Index);

        int? IndexOf(Place place) =>
            onGround.TryGetValue(string.Join(' ', place.Strings.Steps), out var at) ? at : null;

        int Far(ValueList<int> opens) => Retunings.Distance(here.Strings.Opens, opens);
    }

    /// <summary>The nearest one; null when the statement is true wherever it was tried.</summary>
    /// <param name="candidate">The statement.</param>
    /// <param name="kinds">The kinds of key that it is told of.</param>
    public NearestFailure? Of(Candidate candidate, ValueList<ScaleKind> kinds)
    {
        var (own, others) = (_search.Kinds.Where(kinds.Contains), _search.Kinds.Where(kind => !kinds.Contains(kind)));
        return Enumerable
            .Range(0, _farthest + OtherKindSemitones + 1)
            .SelectMany(far => In(own, _near[far]).Concat(In(others, _near[far - OtherKindSemitones])))
            .Select(each => At(candidate, each.Near, each.Kind))
            .FirstOrDefault(failure => failure is not null);

        static IEnumerable<(Near Near, ScaleKind Kind)> In(IEnumerable<ScaleKind> kinds, IEnumerable<Near> places) =>
            places.SelectMany(near => kinds.Select(kind => (near, kind)));
    }

    private NearestFailure? At(Candidate candidate, Near near, ScaleKind kind)
    {
        _cancellation.ThrowIfCancellationRequested();
        if (near.OnGround is { } at && !candidate.Truth.Fails[_search.Kinds.IndexOf(kind), at])
        {
            return null;
        }

        var (search, place) = (_search, near.Place());
        var claim = candidate.Statement.On(search.Here.Strings.Numbers, place.Strings.Numbers);
        var sentence = new ClaimSentence(new KeyScope.EveryOf(kind), search.Scope.Place, null, claim);
        var row = OutcomeTable.Of(sentence, [place], _cancellation).Single();
        if (!row.Fails)
        {
            return null;
        }

        var failing = row.Smallest(sentence);
        var on = new PlaceScope.On(failing.Instrument, failing.Strings);
        return new NearestFailure(kind, place.Name, near.Semitones, failing, Examples.In(failing.Key, claim, on));
    }

    /// <summary>A string set to look at.</summary>
    /// <param name="Semitones">How far it is from the target.</param>
    /// <param name="Place">It itself.</param>
    /// <param name="OnGround">Its index among the tunings on which all statements were tried; null when it is none of them.</param>
    private sealed record Near(int Semitones, Func<Place> Place, int? OnGround);
}
