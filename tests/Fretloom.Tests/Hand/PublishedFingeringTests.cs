using Fretloom.Testing;

namespace Fretloom.Tests.Hand;

/// <summary>
/// Published chord fingerings as an outside check. Source: @tombatossals/chords-db 0.5.1, open data (MIT). The weights are fitted
/// to the tuning half; <c>docs/hand.md</c> says how often the other half was looked at.
/// </summary>
public class PublishedFingeringTests(ITestOutputHelper output)
{
    /// <summary>What was reached stands in the last two columns: pins.</summary>
    [Theory]
    [InlineData("guitar", "tuning", 997, 909, 988)]
    [InlineData("guitar", "held out", 960, 871, 942)]
    [InlineData("guitar", "new", 310, 264, 298)]
    [InlineData("ukulele", "tuning", 706, 654, 704)]
    [InlineData("ukulele", "held out", 338, 315, 336)]
    [InlineData("ukulele", "new", 27, 21, 26)]
    public void The_model_agrees_as_often_as_it_did(string instrument, string part, int shapes, int first, int third)
    {
        Assert.SkipWhen(Oracle.WhyNot is not null, Oracle.WhyNot ?? "");

        var reached = Agreement.OfModel(instrument, shape => IsIn(part, shape.Part));

        output.WriteLine($"{instrument}, {part}: {reached}");
        Assert.Equal(new Agreement(shapes, first, third), reached);
    }

    /// <summary>The goals set before the model was made.</summary>
    [Theory]
    [InlineData("guitar", "held out", 88, 98)]
    [InlineData("guitar", "new", 84, 96)]
    [InlineData("ukulele", "held out", 90, 99)]
    public void The_goals_are_met(string instrument, string part, double first, double third)
    {
        Assert.SkipWhen(Oracle.WhyNot is not null, Oracle.WhyNot ?? "");

        var reached = Agreement.OfModel(instrument, shape => IsIn(part, shape.Part));

        Assert.True(100.0 * reached.First / reached.Count >= first);
        Assert.True(100.0 * reached.Third / reached.Count >= third);
    }

    [Theory]
    [InlineData("guitar")]
    [InlineData("ukulele")]
    public void The_model_beats_a_fret_for_a_finger(string instrument)
    {
        Assert.SkipWhen(Oracle.WhyNot is not null, Oracle.WhyNot ?? "");

        var naive = Agreement.Of(instrument, shape => IsIn("held out", shape.Part), NaiveFingering.Best);
        var model = Agreement.OfModel(instrument, shape => IsIn("held out", shape.Part));

        output.WriteLine($"{instrument}: {naive} against {model}");
        Assert.True(model.First > naive.First && model.Third > naive.Third);
    }

    private static bool IsIn(string name, FingeringPart part) =>
        name switch
        {
            "tuning" => part == FingeringPart.Tuning,
            "held out" => part != FingeringPart.Tuning,
            _ => part == FingeringPart.New,
        };
}
