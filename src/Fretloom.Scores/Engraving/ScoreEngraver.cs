using System.Collections.Concurrent;
using System.Security.Cryptography;
using System.Text;
using Fretloom.Exercises;
using Fretloom.Scores.Tab;
using Fretloom.Theory;

namespace Fretloom.Scores.Engraving;

/// <summary>Engraves exercises with an engine that somebody else runs, such as a browser: writes the score, chooses the systems, makes the pictures.</summary>
/// <remarks>The same input gives the same pictures. As safe to use from several threads as its engine is; where that answers at once, so does this.</remarks>
/// <param name="engine">Sets the scores.</param>
public sealed class ScoreEngraver(IEngravingEngine engine)
{
    // A single system that is nearly full is spread over the whole width. Ours, without source.
    private const double FilledFrom = 0.75;

    // Of how many exercises the widths of the bars are remembered.
    private const int MostMeasured = 1000;

    private readonly ConcurrentDictionary<string, ValueList<MeasuredBar>> measured = [];

    /// <summary>Engraves one pass of an exercise.</summary>
    /// <param name="exercise">What is engraved.</param>
    /// <param name="widthMm">The width of a system; at least <see cref="EngravedPage.LeastWidthMm"/>.</param>
    /// <returns>The systems or, where it cannot be engraved, plain-text tablature with a warning.</returns>
    public async Task<EngravedExercise> EngraveAsync(Exercise exercise, double widthMm)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentOutOfRangeException.ThrowIfLessThan(widthMm, EngravedPage.LeastWidthMm);
        try
        {
            var score = MeiWriter.Write(exercise);
            return EngravedExercise.OfSystems(await SystemsAsync(exercise, widthMm, score, new SystemHeads(exercise)));
        }
        catch (EngravingException failure)
        {
            return EngravedExercise.Failed(TabText.Write(exercise, hasFingers: true), exercise.Name, failure.Message);
        }
    }

    /// <summary>The systems of an exercise whose score is written.</summary>
    internal async Task<EngravedSystem[]> SystemsAsync(
        Exercise exercise,
        double widthMm,
        string score,
        SystemHeads heads
    )
    {
        var bars = await MeasuredAsync(score);
        var room = EngravedPage.Room(widthMm);
        var firsts = Breaks(exercise, bars, room);
        var isFilled = firsts.Count > 1 || bars[^1].Right > FilledFrom * room;
        var options = EngravedPage.Options(widthMm, isFilled);
        var name = "f" + Hash($"{options}\n{score}")[..10];
        var pages = await engine.EngraveAsync(MeiWriter.Write(exercise, firsts), options);
        return [.. pages.Select((page, at) => SystemPicture.Of(page, $"{name}-{at}", heads))];
    }

    // How wide bars are by nature is the same for every width of a system, and a document may ask for several.
    private async Task<ValueList<MeasuredBar>> MeasuredAsync(string score)
    {
        if (!measured.TryGetValue(score, out var bars))
        {
            if (measured.Count >= MostMeasured)
            {
                measured.Clear();
            }

            var pages = await engine.EngraveAsync(score, EngravedPage.UnbrokenOptions);
            bars = pages.SelectMany(SystemPicture.Bars).ToValueList();
            measured[score] = bars;
        }

        return bars;
    }

    private static IReadOnlyList<int> Breaks(Exercise exercise, ValueList<MeasuredBar> measured, double room)
    {
        var firsts = exercise.Sections.Select(section => section.At / exercise.Metre.Bar + 1).ToHashSet();
        var bars = measured
            .Select(
                (bar, at) =>
                {
                    var key = exercise.SectionAt(exercise.Metre.Bar * at).Key;
                    var signature = Math.Abs(KeySignature.Of(key)) * EngravedPage.AccidentalWidth;
                    var lead = bar.Start - bar.Left;
                    return at == 0
                        ? new SystemBreaks.Bar(lead, EngravedPage.Lead, bar.Right - bar.Start)
                        : new SystemBreaks.Bar(EngravedPage.ClefLead + signature, lead, bar.Right - bar.Start);
                }
            )
            .ToList();
        return SystemBreaks.Choose(bars, room, firsts);
    }

    private static string Hash(string text) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));
}
