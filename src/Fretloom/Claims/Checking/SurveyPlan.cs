using Fretloom.Claims.Checking.Blocks;
using Fretloom.Theory;

namespace Fretloom.Claims.Checking;

/// <summary>How a sentence is gone through: by whom, and in which keys.</summary>
/// <param name="Sentence">The sentence.</param>
/// <param name="Places">Its string sets.</param>
/// <param name="Worker">Who does the pieces.</param>
/// <param name="Tried">The keys that are tried: each, or one of each kind that decides for its twelve.</param>
/// <param name="Settles">Whether one tonic decides for twelve.</param>
internal sealed record SurveyPlan(
    ClaimSentence Sentence,
    PlaceList Places,
    IWorker Worker,
    ValueList<Key> Tried,
    bool Settles
)
{
    public static SurveyPlan Of(ClaimSentence sentence, CheckOptions options)
    {
        var places = new PlaceList(sentence.Places);
        var keys = sentence.Keys.Keys;
        var settles = options.UsesTransposition && Transposition.Settles(sentence);
        var tried = settles ? keys.DistinctBy(key => key.Kind).ToValueList() : keys;
        IWorker worker =
            options.Engine != CheckEngine.Plain && ClaimCompiler.Knows(sentence.Claim)
                ? BlockWorker.For(sentence, places, tried, options.Engine == CheckEngine.Vectors)
                : PlainWorker.For(sentence, places, tried);
        return new SurveyPlan(sentence, places, worker, tried, settles);
    }

    /// <summary>The sentence gone through.</summary>
    /// <param name="tallies">What was counted in each key that was tried.</param>
    public Survey Done(Tally[] tallies)
    {
        var keys = Sentence.Keys.Keys;
        var columns = keys.Select(key => tallies[Settles ? IndexOfKind(key.Kind) : keys.IndexOf(key)]);
        return new Survey(Sentence, Places, Worker.PlacesThatFit, keys, columns.ToValueList());
    }

    private int IndexOfKind(ScaleKind kind) => Tried.Select(key => key.Kind).ToValueList().IndexOf(kind);
}
