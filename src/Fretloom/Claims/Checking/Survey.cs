using Fretloom.Theory;

namespace Fretloom.Claims.Checking;

/// <summary>A sentence gone through: every key on every string set.</summary>
/// <param name="Sentence">The sentence.</param>
/// <param name="Places">Its string sets.</param>
/// <param name="PlacesThatFit">How many of them the claim can be asked of.</param>
/// <param name="Keys">Its keys.</param>
/// <param name="Columns">For each key, in that order, what became of the string sets; keys that decide each other share one.</param>
internal sealed record Survey(
    ClaimSentence Sentence,
    PlaceList Places,
    int PlacesThatFit,
    ValueList<Key> Keys,
    ValueList<Tally> Columns
)
{
    public long Cases => (long)PlacesThatFit * Keys.Count;

    public long DistinctCases =>
        (long)PlacesThatFit * (Transposition.Settles(Sentence) ? Keys.Count / Transposition.Tonics : Keys.Count);

    public long NotApplicable => (long)(Places.Count - PlacesThatFit) * Keys.Count;

    public long Failing => Columns.Sum(column => column.Failing);

    public long Untested => Columns.Sum(column => column.Untested);

    public Verdict Verdict =>
        Cases == 0 ? Verdict.DoesNotApply
        : Failing > 0 ? Verdict.Fails
        : Untested == Cases ? Verdict.NothingToTest
        : Verdict.Holds;

    /// <summary>The counts of each key.</summary>
    public ValueList<ClaimKeyResult> ByKey =>
        Keys.Select((key, at) => new ClaimKeyResult(key, PlacesThatFit, Columns[at].Failing, Columns[at].Untested))
            .ToValueList();

    /// <summary>Its kinds of key, each once.</summary>
    public ValueList<ScaleKind> Kinds => Keys.Select(key => key.Kind).Distinct().ToValueList();

    public long FailingIn(ScaleKind kind) => ColumnsOf(kind).Sum(column => column.Failing);

    /// <summary>Whether the sentence holds for a kind of key.</summary>
    public bool HoldsIn(ScaleKind kind) =>
        FailingIn(kind) == 0 && ColumnsOf(kind).Sum(column => PlacesThatFit - column.Untested) > 0;

    /// <summary>Failing cases, in the order of their keys' accidentals, then of the string sets; as many as are remembered.</summary>
    public IEnumerable<(Key Key, int Place)> FirstFailing =>
        Keys.Index()
            .OrderBy(key => Accidentals(key.Item))
            .ThenBy(key => key.Index)
            .SelectMany(key => Columns[key.Index].FirstFailing, (key, place) => (key.Item, place));

    public static int Accidentals(Key key) => key.Notes.Sum(note => Math.Abs(note.Alteration));

    /// <summary>Goes through a sentence.</summary>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static Survey Of(
        ClaimSentence sentence,
        CheckOptions options,
        IProgress<double>? progress = null,
        CancellationToken cancellation = default
    )
    {
        var plan = SurveyPlan.Of(sentence, options);
        return plan.Done(Crew.Run(plan.Worker, plan.Tried.Count, options.Threads, progress, cancellation));
    }

    private IEnumerable<Tally> ColumnsOf(ScaleKind kind) => Columns.Where((_, index) => Keys[index].Kind == kind);
}
