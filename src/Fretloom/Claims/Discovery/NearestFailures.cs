using Fretloom.Claims.Checking;
using Fretloom.Sentences.Claims;
using Fretloom.Theory;

namespace Fretloom.Claims.Discovery;

/// <summary>Looks for the nearest place where a statement is false: these strings with one of them retuned, a listed set, or other keys.</summary>
internal sealed class NearestFailures(Search search, CancellationToken cancellation)
{
    private const int OtherKindSemitones = 2;

    private readonly List<(Place Place, int Semitones)> _near =
    [
        .. ListedStringSets
            .All.Where(place => place.Strings.Count == search.Here.Strings.Count)
            .Concat(ElsewhereFinder.Retunings(search.Here))
            .Prepend(search.Here)
            .Select(place => (place, Semitones: ElsewhereFinder.Distance(search.Here, place)))
            .OrderBy(each => each.Semitones),
    ];

    private readonly List<(Place Place, int Semitones)> _farther =
    [
        .. ElsewhereFinder
            .Retunings(search.Here, -3, 3, -4, 4, -5, 5, -6, 6)
            .Select(place => (place, Semitones: ElsewhereFinder.Distance(search.Here, place)))
            .OrderBy(each => each.Semitones),
    ];

    /// <summary>The nearest one; null when the statement is true wherever it was tried.</summary>
    /// <param name="statement">The statement.</param>
    /// <param name="kinds">The kinds of key that it is told of; other kinds count as two semitones away.</param>
    public NearestFailure? Of(Statement statement, ValueList<ScaleKind> kinds)
    {
        return Nearest(_near) ?? Nearest(_farther) ?? OnTheGround(statement, kinds);

        NearestFailure? Nearest(List<(Place Place, int Semitones)> places) =>
            places
                .SelectMany(each =>
                    search.Kinds.Select(kind => (each.Place, Kind: kind, Far: Far(each.Semitones, kind)))
                )
                .OrderBy(each => each.Far)
                .Select(each => At(statement, each.Place, each.Kind))
                .FirstOrDefault(failure => failure is not null);

        int Far(int semitones, ScaleKind kind) => semitones + (kinds.Contains(kind) ? 0 : OtherKindSemitones);
    }

    /// <summary>The nearest of all tunings that were tried, for what takes more than one string to fail.</summary>
    private NearestFailure? OnTheGround(Statement statement, ValueList<ScaleKind> kinds)
    {
        var here = Ground.StepsOf(search.Here);
        return search
            .Ground.Steps.OrderBy(steps => steps.Zip(here, (a, b) => Math.Abs(a - b)).Sum())
            .Select(steps => Tuned(search.Here, steps))
            .SelectMany(place => search.Kinds.OrderByDescending(kinds.Contains).Select(kind => (place, kind)))
            .Select(each => At(statement, each.place, each.kind))
            .FirstOrDefault(failure => failure is not null);
    }

    private NearestFailure? At(Statement statement, Place place, ScaleKind kind)
    {
        cancellation.ThrowIfCancellationRequested();
        var claim = statement.On(search.Here.Strings.Numbers, place.Strings.Numbers);
        var sentence = new ClaimSentence(new KeyScope.EveryOf(kind), search.Scope.Place, null, claim);
        var row = OutcomeTable.Of(sentence, [place], cancellation).Single();
        if (!row.Fails)
        {
            return null;
        }

        var failing = row.Smallest(sentence);
        var on = new PlaceScope.On(failing.Instrument, failing.Strings);
        var semitones = ElsewhereFinder.Distance(search.Here, place);
        return new NearestFailure(kind, place.Name, semitones, failing, Examples.In(failing.Key, claim, on));
    }

    /// <summary>The place with its strings tuned in other steps, the farthest as it is.</summary>
    private static Place Tuned(Place here, int[] steps)
    {
        var bare = here.Instrument!.WithCapo(0);
        var pitches = bare.OpenPitches.ToArray();
        var numbers = here.Strings.Numbers.Numbers;
        var midi = pitches[numbers[0] - 1].MidiNumber;
        foreach (var (at, step) in steps.Index())
        {
            midi += step;
            pitches[numbers[at + 1] - 1] = Pitch.FromMidiNumber(midi);
        }

        return Place.On(bare.Tuned(pitches).WithCapo(here.Instrument!.Capo), here.Strings.Numbers);
    }
}
