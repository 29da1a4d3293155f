using Fretloom.Theory;

namespace Fretloom.Claims.Checking;

/// <summary>Asks the evaluator case by case: for anything a claim can say.</summary>
internal sealed class PlainWorker : IWorker
{
    // Of few string sets each is a piece, so that whoever waits between pieces need not wait long.
    private const int Few = 64;
    private const int ManyInPiece = 16;

    private readonly ClaimSentence _sentence;
    private readonly PlaceList _places;
    private readonly ValueList<Key> _keys;
    private readonly NeckLine _neck;

    private PlainWorker(ClaimSentence sentence, PlaceList places, ValueList<Key> keys)
    {
        (_sentence, _places, _keys) = (sentence, places, keys);
        _neck = new NeckLine(sentence.Window);
        PlacesThatFit = places.CountOfFitting(sentence);
    }

    private int PlacesInPiece => _places.Count <= Few ? 1 : ManyInPiece;

    public int Pieces => (_places.Count + PlacesInPiece - 1) / PlacesInPiece;

    public int PlacesThatFit { get; }

    public static PlainWorker For(ClaimSentence sentence, PlaceList places, ValueList<Key> keys) =>
        new(sentence, places, keys);

    /// <summary>As <see cref="Blocks.BlockWorker.Table"/>.</summary>
    public static Outcome?[] Table(
        ClaimSentence sentence,
        PlaceList places,
        ValueList<Key> keys,
        CancellationToken cancellation
    )
    {
        var table = new Outcome?[places.Count * keys.Count];
        var neck = new NeckLine(sentence.Window);
        for (var at = 0; at < table.Length; at++)
        {
            cancellation.ThrowIfCancellationRequested();
            var place = places[at / keys.Count];
            table[at] = Applicability.Applies(place, sentence)
                ? Evaluator.Of(new Case(place, keys[at % keys.Count], neck), sentence.Claim)
                : null;
        }

        return table;
    }

    public IWorker Another() => this;

    public void Do(int piece, Tally[] tallies, CancellationToken cancellation)
    {
        var last = Math.Min(_places.Count, (piece + 1) * PlacesInPiece);
        for (var index = piece * PlacesInPiece; index < last; index++)
        {
            var place = _places[index];
            if (!Applicability.Applies(place, _sentence))
            {
                continue;
            }

            var hands = new HandsTried();
            for (var key = 0; key < _keys.Count; key++)
            {
                cancellation.ThrowIfCancellationRequested();
                tallies[key].Add(index, Evaluator.Of(new Case(place, _keys[key], _neck, hands), _sentence.Claim));
            }
        }
    }
}
