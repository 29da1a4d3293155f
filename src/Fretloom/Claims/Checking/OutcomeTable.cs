using Fretloom.Claims.Checking.Blocks;
using Fretloom.Theory;

namespace Fretloom.Claims.Checking;

/// <summary>What a claim comes to on one string set, key by key.</summary>
/// <param name="Place">The string set.</param>
/// <param name="Keys">The keys; one tonic for twelve where it decides.</param>
/// <param name="Outcomes">For each key; null where the claim cannot be asked.</param>
internal sealed record OutcomeRow(Place Place, ValueList<Key> Keys, ValueList<Outcome?> Outcomes)
{
    public bool IsAsked => Outcomes[0] is not null;

    public bool Fails => Outcomes.Contains(Outcome.Fails);

    public bool Holds => !Fails && Outcomes.Contains(Outcome.Holds);

    /// <summary>Tells of the failing key with the fewest accidentals.</summary>
    public ClaimFailure Smallest(ClaimSentence sentence)
    {
        var kinds = Keys.Where((_, at) => Outcomes[at] == Outcome.Fails).ToList();
        var failing = Transposition.Settles(sentence)
            ? sentence.Keys.Keys.Where(key => kinds.Exists(one => one.Kind == key.Kind))
            : kinds;
        return Failures.Of(
            new Case(Place, failing.MinBy(Survey.Accidentals)!, new NeckLine(sentence.Window)),
            sentence.Claim
        );
    }
}

/// <summary>Asks a sentence of string sets given one by one.</summary>
internal static class OutcomeTable
{
    /// <summary>A row for each string set, in their order. The sentence's own places do not matter.</summary>
    public static IEnumerable<OutcomeRow> Of(
        ClaimSentence sentence,
        ValueList<Place> places,
        CancellationToken cancellation
    )
    {
        var keys = sentence.Keys.Keys;
        keys = Transposition.Settles(sentence) ? keys.DistinctBy(key => key.Kind).ToValueList() : keys;
        var list = new PlaceList(places);
        var table = ClaimCompiler.Knows(sentence.Claim)
            ? BlockWorker.For(sentence, list, keys, inVectors: true).Table(cancellation)
            : PlainWorker.Table(sentence, list, keys, cancellation);
        return places.Select(
            (place, at) =>
                new OutcomeRow(place, keys, ValueList.Create<Outcome?>(table.AsSpan(at * keys.Count, keys.Count)))
        );
    }
}
