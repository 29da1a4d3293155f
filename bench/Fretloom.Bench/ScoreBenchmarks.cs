using BenchmarkDotNet.Attributes;
using Fretloom.Exercises;
using Fretloom.Exhibits;
using Fretloom.Scores.Engraving;
using Fretloom.Scores.MusicXml;

namespace Fretloom.Bench;

/// <summary>Writing scores: MusicXML of 64 bars (aim: under 5 ms), four bars engraved with a warm engraver and no cache (aim: under 60 ms).</summary>
[ShortRunJob]
public class ScoreBenchmarks : IDisposable
{
    private const double A4 = 170;

    private readonly Engraver _engraver = new();
    private Exercise _four = null!;
    private Exercise _long = null!;

    /// <summary>Four bars of arpeggios, and the same sixteen times over.</summary>
    [GlobalSetup]
    public void Prepare()
    {
        _four = PlayQuestion
            .Answer("play the seventh chords from I to IV, up and down, in eighths, at 72", ShowDefaults.Standard)
            .Value!;
        var times = Enumerable.Range(0, 16).Select(time => _four.Length * time).ToList();
        _long = _four with
        {
            Length = _four.Length * times.Count,
            Notes = times.SelectMany(at => _four.Notes.Select(note => note with { At = note.At + at })).ToValueList(),
            Chords = times
                .SelectMany(at => _four.Chords.Select(chord => chord with { At = chord.At + at }))
                .ToValueList(),
        };
        _engraver.Engrave(_four, A4);
    }

    /// <summary>Ends the engraver, which would bring the process down.</summary>
    [GlobalCleanup]
    public void Dispose()
    {
        _engraver.Dispose();
        GC.SuppressFinalize(this);
    }

    /// <summary>64 bars as MusicXML.</summary>
    [Benchmark]
    public string MusicXml() => MusicXmlWriter.Write(_long);

    /// <summary>Four bars engraved.</summary>
    [Benchmark]
    public EngravedExercise Engraving() => _engraver.Engrave(_four, A4);
}
