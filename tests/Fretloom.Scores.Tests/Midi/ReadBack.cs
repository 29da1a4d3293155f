using System.Text.Json;
using Fretloom.Exercises;
using Fretloom.Scores.Midi;
using Fretloom.Testing;

namespace Fretloom.Scores.Tests.Midi;

/// <summary>A MIDI file of ours as an independent program reads it.</summary>
internal sealed class ReadBack
{
    private ReadBack(JsonElement file)
    {
        Type = file.GetProperty("header").GetProperty("format").GetInt32();
        TicksPerQuarter = file.GetProperty("header").GetProperty("ticksPerBeat").GetInt32();
        Tracks = [.. file.GetProperty("tracks").EnumerateArray().Select(track => Events(track).ToList())];
    }

    public int Type { get; }

    public int TicksPerQuarter { get; }

    /// <summary>The events of each track with their ticks from the beginning.</summary>
    public List<List<(int Tick, JsonElement Event)>> Tracks { get; }

    public static async Task<ReadBack> OfAsync(Exercise exercise, MidiOptions? options = null) =>
        new(await Oracle.ReadMidiAsync(MidiWriter.Write(exercise, options ?? new MidiOptions())));

    /// <summary>The events of one type in a track.</summary>
    public IEnumerable<(int Tick, JsonElement Event)> All(int track, string type) =>
        Tracks[track].Where(one => Text(one.Event, "type") == type);

    /// <summary>The text of the events of one type in a track.</summary>
    public List<string> Texts(int track, string type) => [.. All(track, type).Select(one => Text(one.Event, "text"))];

    /// <summary>Every note of a track by time: each beginning with the next end of the same pitch on the same channel.</summary>
    public List<(int Tick, int End, int Channel, int Midi, int Velocity)> Notes(int track)
    {
        var ends = All(track, "noteOff").ToList();
        return
        [
            .. All(track, "noteOn")
                .Select(on =>
                {
                    var (channel, midi) = (Number(on.Event, "channel"), Number(on.Event, "noteNumber"));
                    var end = ends.First(off =>
                        off.Tick > on.Tick
                        && Number(off.Event, "channel") == channel
                        && Number(off.Event, "noteNumber") == midi
                    );
                    return (on.Tick, end.Tick, channel, midi, Number(on.Event, "velocity"));
                }),
        ];
    }

    /// <summary>A line for each event: track, tick, type and what it says.</summary>
    public override string ToString() =>
        string.Join(
            '\n',
            Tracks.SelectMany((events, track) => events.Select(one => $"{track} {one.Tick, 6} {Said(one.Event)}"))
        );

    public static int Number(JsonElement element, string name) => element.GetProperty(name).GetInt32();

    private static string Text(JsonElement element, string name) => element.GetProperty(name).GetString()!;

    private static string Said(JsonElement one) =>
        string.Join(
            ' ',
            one.EnumerateObject()
                .Where(part => part.Name is not ("deltaTime" or "meta" or "running" or "type" or "byte9"))
                .Select(part => $"{part.Name}={part.Value}")
                .Prepend(Text(one, "type"))
        );

    private static IEnumerable<(int Tick, JsonElement Event)> Events(JsonElement track)
    {
        var tick = 0;
        foreach (var one in track.EnumerateArray())
        {
            tick += Number(one, "deltaTime");
            yield return (tick, one);
        }
    }
}
