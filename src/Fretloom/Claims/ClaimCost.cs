using System.Globalization;
using Fretloom.Claims.Checking;
using Fretloom.Claims.Checking.Blocks;
using Fretloom.Theory;

namespace Fretloom.Claims;

/// <summary>What checking a sentence takes, known before it is begun.</summary>
/// <param name="Cases">Keys times string sets.</param>
/// <param name="Tried">Cases that are gone through when one tonic decides for twelve.</param>
/// <param name="Nanoseconds">About how long that takes on one thread.</param>
public sealed record ClaimCost(long Cases, long Tried, long Nanoseconds)
{
    /// <summary>Nanoseconds, measured, in round numbers: a string set put down for a program; one of its instructions, for one case; a thing named, word by word; a shape fingered.</summary>
    private const double StringSet = 20;
    private const double Instruction = 0.15;
    private const double Word = 5_000;
    private const double Fingering = 150_000;

    /// <summary>Works the cost out.</summary>
    public static ClaimCost Of(ClaimSentence sentence)
    {
        ArgumentNullException.ThrowIfNull(sentence);
        var keys = sentence.Keys.Keys.Count;
        var places = new PlaceList(sentence.Places);
        var tried = (long)places.Count * (Transposition.Settles(sentence) ? keys / Transposition.Tonics : keys);
        var time = ClaimCompiler.Knows(sentence.Claim)
            ? StringSet * places.Count + tried * OfProgram(sentence, places)
            : tried * WordByWord(sentence);
        return new ClaimCost((long)keys * places.Count, tried, (long)time);
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

    /// <summary>A case costs as much as its program is long; the string sets of a sentence have programs much alike.</summary>
    private static double OfProgram(ClaimSentence sentence, PlaceList places)
    {
        if (places.FirstFitting(sentence) is not { } fitting)
        {
            return 0;
        }

        ValueList<Key> key = [sentence.Keys.Keys[0]];
        var program = ClaimCompiler.Compile(sentence.Claim, key, StringLayout.Of(fitting), sentence.Window);
        return Instruction * program.Code.Instructions.Count;
    }

    private static double WordByWord(ClaimSentence sentence) =>
        Parts
            .Of(sentence.Claim)
            .Sum(part =>
                part switch
                {
                    ShapeSet set => Word * Shapes(set),
                    Claim.OfShapes { Says: ShapePredicate.CanBePlayed } of => Fingering
                        * Placements(of.Shapes, sentence),
                    Claim.OfShapes { Says: ShapePredicate.IsFingeredAs like } of => Fingering
                        * Shapes(like.Shapes)
                        * (Placements(of.Shapes, sentence) + Shapes(of.Shapes)),
                    _ => Word,
                }
            );

    private static int Shapes(ShapeSet set) => set is ShapeSet.Several ? 7 : 1;

    /// <summary>At how many places shapes lie at most: a form of any root begins on every fret.</summary>
    private static int Placements(ShapeSet set, ClaimSentence sentence)
    {
        var frets = sentence.Window?.Count ?? 12;
        return set is ShapeSet.OfQuality ? frets : Shapes(set) * ((frets + 11) / 12);
    }

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
