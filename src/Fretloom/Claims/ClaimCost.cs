using System.Globalization;
using Fretloom.Claims.Checking;
using Fretloom.Claims.Checking.Blocks;

namespace Fretloom.Claims;

/// <summary>What checking a sentence takes, known before it is begun.</summary>
/// <param name="Cases">Keys times string sets.</param>
/// <param name="Tried">Cases that are gone through when one tonic decides for twelve.</param>
/// <param name="Nanoseconds">About how long that takes on one thread.</param>
public sealed record ClaimCost(long Cases, long Tried, long Nanoseconds)
{
    /// <summary>Nanoseconds for each thing named, case by case; and in blocks. Measured, in round numbers.</summary>
    private const long Plain = 2_000;
    private const long InBlocks = 20;
    private const long InHand = 2_000_000;

    /// <summary>Works the cost out.</summary>
    public static ClaimCost Of(ClaimSentence sentence)
    {
        ArgumentNullException.ThrowIfNull(sentence);
        var keys = sentence.Keys.Keys.Count;
        long places = new PlaceList(sentence.Places).Count;
        var tried = Transposition.Settles(sentence) ? keys / Transposition.Tonics : keys;
        var each = Parts.Of(sentence.Claim).Sum(part => Weight(part));
        return new ClaimCost(
            keys * places,
            tried * places,
            tried * places * each * (ClaimCompiler.Knows(sentence) ? InBlocks : Plain)
        );
    }

    /// <summary>Why a sentence is not checked within a budget, and what would help; null when it is.</summary>
    /// <param name="budget">Nanoseconds on one thread.</param>
    public string? WhyNot(long budget) =>
        Nanoseconds <= budget
            ? null
            : string.Create(
                CultureInfo.InvariantCulture,
                $"This sentence has {Cases:N0} cases, which would take about {Time(Nanoseconds)}, more than the {Time(budget)} allowed. Say fewer strings, smaller steps such as 'with steps 4 to 7', or 'that is palindromic'."
            );

    private static long Weight(object part) =>
        part switch
        {
            ShapeSet.Several => 8,
            ShapePredicate.CanBePlayed or ShapePredicate.IsFingeredAs => 7 * InHand / Plain,
            _ => 1,
        };

    private static string Time(long nanoseconds)
    {
        var seconds = nanoseconds / 1e9;
        return seconds < 100
            ? string.Create(CultureInfo.InvariantCulture, $"{seconds:0.#} seconds")
            : string.Create(CultureInfo.InvariantCulture, $"{seconds / 60:0} minutes");
    }
}

/// <summary>A sentence would take longer to check than is allowed.</summary>
public sealed class ClaimTooCostlyException : Exception
{
    /// <summary>Says nothing.</summary>
    public ClaimTooCostlyException() { }

    /// <summary>Says why and what would help.</summary>
    public ClaimTooCostlyException(string message)
        : base(message) { }

    /// <summary>Says why, and what caused it.</summary>
    public ClaimTooCostlyException(string message, Exception innerException)
        : base(message, innerException) { }
}
