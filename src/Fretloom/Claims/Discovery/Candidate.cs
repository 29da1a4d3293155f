using Fretloom.Claims.Checking;
using Fretloom.Sentences;

namespace Fretloom.Claims.Discovery;

/// <summary>A statement that is true of the target in some kind of key, with its truth everywhere.</summary>
internal sealed class Candidate
{
    private const double MostSurprise = 5;
    private const double CostOfWord = 0.1;
    private const double CostOfSubset = 0.4;
    private const double Trivial = 0.9;

    public Candidate(Statement statement, Truth truth, Ground ground, ValueList<int> kindsHere, bool isTrueHere)
    {
        (Statement, Truth, KindsHere, IsTrueHere) = (statement, truth, kindsHere, isTrueHere);
        Members = [this];
        Text = ClaimPrinter.Print(statement.Here);
        var holds = ground.Weigh(truth.Holds);
        var tested = holds + ground.Weigh(truth.Fails);
        Elsewhere = tested == 0 ? 1 : holds / tested;
        var first = statement.Here is Claim.And and ? and.Parts[0] : statement.Here;
        var words = ClaimPrinter.Print(first).Count(c => c == ' ') + 1;
        var subsets = Parts.Of(first).Count(part => part is OtherStrings);
        Worth = statement.Template.Weight - CostOfWord * words - CostOfSubset * subsets;
    }

    public Statement Statement { get; }

    public Truth Truth { get; }

    /// <summary>Indexes of the kinds of key, of those asked for, in which it is true of the target.</summary>
    public ValueList<int> KindsHere { get; }

    /// <summary>Whether it is true of the target in all kinds of key asked for.</summary>
    public bool IsTrueHere { get; }

    public string Text { get; }

    /// <summary>The share of cases in which it is true, of those where it says anything.</summary>
    public double Elsewhere { get; }

    /// <summary>Whether it is true nearly everywhere, and so tells nothing of the target.</summary>
    public bool IsTrivial => Elsewhere > Trivial;

    /// <summary>Whether it tells anything of a neck: what is true on every tuning alike is theory of keys and chords.</summary>
    public bool TellsOfNeck => Truth.Holds.DependsOnPlace;

    /// <summary>By weight of its kind and length alone.</summary>
    public double Worth { get; }

    /// <summary>Those that it joins; itself where it joins none.</summary>
    public IReadOnlyList<Candidate> Members { get; private init; }

    /// <summary>How rarely it is true, in bits, capped: what is true nowhere else is an accident rather than a wonder.</summary>
    public double Surprise => Math.Min(MostSurprise, -Math.Log2(Math.Max(Elsewhere, double.Epsilon)));

    /// <summary>By which candidates are ranked; of several in one line that of the best.</summary>
    public double Score => Members is [var only] && only == this ? Surprise + Worth : Members.Max(one => one.Score);

    /// <summary>Several candidates said in one claim.</summary>
    /// <param name="several">At least two of one kind.</param>
    /// <param name="ground">What they were tried on.</param>
    public static Candidate Joined(IReadOnlyList<Candidate> several, Ground ground)
    {
        var fails = several.Select(one => one.Truth.Fails).Aggregate((all, one) => all.Or(one));
        var holds = several.Select(one => one.Truth.Holds).Aggregate((all, one) => all.Or(one)).Without(fails);
        return new Candidate(
            Statement.Joined([.. several.Select(one => one.Statement)]),
            new Truth(holds, fails),
            ground,
            several.Select(one => one.KindsHere.AsEnumerable()).Aggregate(Enumerable.Intersect).ToValueList(),
            several.All(one => one.IsTrueHere)
        )
        {
            Members = several,
        };
    }

    /// <summary>The best first; of equals the one that comes first in a dictionary.</summary>
    public static IOrderedEnumerable<Candidate> Ranked(IEnumerable<Candidate> candidates) =>
        candidates
            .OrderByDescending(one => Math.Round(one.Score, 6))
            .ThenBy(one => one.Text.Length)
            .ThenBy(one => one.Text, StringComparer.Ordinal);
}
