using System.Globalization;

namespace Fretloom.Bench;

/// <summary>What <see cref="ScoreBenchmarks"/> take of the processors.</summary>
internal static class ScoreTimes
{
    private const int WarmUps = 50;

    public static void Print()
    {
        using var scores = new ScoreBenchmarks();
        scores.Prepare();
        for (var time = 0; time < WarmUps; time++)
        {
            scores.MusicXml();
            scores.Engraving();
        }

        Print("64 bars as MusicXML", ProcessorTime.Median(() => scores.MusicXml()));
        Print("four bars engraved", ProcessorTime.Median(() => scores.Engraving()));
    }

    private static void Print(string name, double milliseconds) =>
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name}: {milliseconds:0.0} ms"));
}
