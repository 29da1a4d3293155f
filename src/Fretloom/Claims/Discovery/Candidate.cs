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

    public Candidate(Statement statement, Truth truth, Ground ground, bool isTrueHere)
    {
        (Statement, Truth, IsTrueHere) = (statement, truth, isTrueHere);
        Text = ClaimPrinter.Print(statement.Here);
        var holds = ground.Weigh(truth.Holds);
        var tested = holds + ground.Weigh(truth.Fails);
        Elsewhere = tested == 0 ? 1 : holds / tested;
        var words =
            (statement.Here is Claim.And and ? ClaimPrinter.Print(and.Parts[0]) : Text).Count(c => c == ' ') + 1;
        var subsets = Parts.Of(statement.Here).Count(part => part is OtherStrings);
        Worth = statement.Template.Weight - CostOfWord * words - CostOfSubset * subsets;
    }

    public Statement Statement { get; }

    public Truth Truth { get; }

    /// <summary>Whether it is true of the target in all kinds of key asked for.</summary>
    public bool IsTrueHere { get; }

    public string Text { get; }

    /// <summary>The share of cases in which it is true, of those where it says anything.</summary>
    public double Elsewhere { get; }

    /// <summary>Whether it is true nearly everywhere, and so tells nothing of the target.</summary>
    public bool IsTrivial => Elsewhere > Trivial;

    /// <summary>By weight of its kind and length alone.</summary>
    public double Worth { get; }

    /// <summary>How rarely it is true, in bits, capped: what is true nowhere else is an accident rather than a wonder.</summary>
    public double Surprise => Math.Min(MostSurprise, -Math.Log2(Math.Max(Elsewhere, double.Epsilon)));

    public double Score => Surprise + Worth;

    /// <summary>The best first; of equals the one that comes first in a dictionary.</summary>
    public static IOrderedEnumerable<Candidate> Ranked(IEnumerable<Candidate> candidates) =>
        candidates
            .OrderByDescending(one => Math.Round(one.Score, 6))
            .ThenBy(one => one.Text.Length)
            .ThenBy(one => one.Text, StringComparer.Ordinal);
}
