using System.Text;
using Fretloom.Exercises;
using Fretloom.Neck;
using Fretloom.Theory;
using NAudio.Midi;

namespace Fretloom.Scores.Midi;

/// <summary>Writes an exercise as a Standard MIDI File, type 1, 480 ticks to the quarter note.</summary>
/// <remarks>
/// The first track has tempo, time and key signatures and markers, the second the notes, a third the click: those of the count-in, or
/// of all passes. Text is UTF-8. The standard has no ukulele or mandolin; they take the nylon-strung guitar (General MIDI 1, instrument
/// numbers from memory).
/// </remarks>
public static class MidiWriter
{
    private const int ClickChannel = 10;
    private const int FirstClick = 76;
    private const int OtherClick = 77;
    private const int Plain = 80;
    private const int Accented = 96;

    /// <summary>The bytes of the file.</summary>
    public static byte[] Write(Exercise exercise, MidiOptions options)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(options);
        var performance = Performance.Of(exercise);
        var file = new MidiEventCollection(1, Beats.TicksPerQuarter);
        Add(file, Conductor(performance));
        Add(file, Notes(performance, options));
        var clicks = performance.Clicks.Where(click => options.HasClick || click.At < performance.CountIn).ToList();
        if (clicks.Count > 0)
        {
            Add(file, ClickTrack(clicks));
        }

        file.PrepareForExport();
        var path = Path.GetTempFileName();
        try
        {
            MidiFile.Export(path, file);
            return File.ReadAllBytes(path);
        }
        finally
        {
            File.Delete(path);
        }
    }

    private static void Add(MidiEventCollection file, IEnumerable<MidiEvent> events)
    {
        var track = file.AddTrack();
        foreach (var one in events)
        {
            track.Add(one);
        }
    }

    private static IEnumerable<MidiEvent> Conductor(Performance performance)
    {
        var exercise = performance.Exercise;
        yield return Text(exercise.Name, MetaEventType.SequenceTrackName, 0);
        var power = exercise.Metre.Unit == 8 ? 3 : 2;
        var clocks = exercise.Metre.IsCompound ? 36 : 24;
        yield return new TimeSignatureEvent(0, exercise.Metre.Count, power, clocks, 8);
        foreach (var change in performance.Tempi)
        {
            var micros = (int)Math.Round(60e6 / change.Tempo.QuartersPerMinute(exercise.Metre));
            yield return new TempoEvent(micros, Tick(change.At));
        }

        var pass = exercise.Length.Quarters;
        for (var at = 0; at < exercise.Passes.Count; at++)
        {
            var begin = performance.CountIn + at * pass;
            if (exercise.Passes.Count > 1)
            {
                yield return Text($"{at + 1}: {exercise.Passes[at]}", MetaEventType.Marker, Tick(begin));
            }

            foreach (var section in exercise.Sections)
            {
                var tick = Tick(begin + section.At.Quarters);
                var isMinor = section.Key.Kind.IsMinor ? 1 : 0;
                yield return new KeySignatureEvent(KeySignature.Of(section.Key), isMinor, tick);
                if (section.Heading is { } heading)
                {
                    yield return Text(heading, MetaEventType.Marker, tick);
                }
            }
        }
    }

    private static IEnumerable<MidiEvent> Notes(Performance performance, MidiOptions options)
    {
        var instrument = performance.Exercise.Instrument;
        yield return Text(instrument.Name, MetaEventType.SequenceTrackName, 0);
        var channels = options.HasChannelPerString ? instrument.Strings.Count : 1;
        for (var number = 1; number <= channels; number++)
        {
            yield return new PatchChangeEvent(0, ChannelOf(number), Program(instrument));
        }

        var sounding = performance.Notes.GroupBy(note => (note.Spot.String, note.Midi));
        var events = new List<(long Tick, bool IsOn, MidiEvent Event)>();
        foreach (var same in sounding)
        {
            var channel = options.HasChannelPerString ? ChannelOf(same.Key.String) : 1;
            var notes = same.ToList();
            for (var at = 0; at < notes.Count; at++)
            {
                var start = Tick(notes[at].At);
                var next = at + 1 < notes.Count ? Tick(notes[at + 1].At) : long.MaxValue;
                var end = Math.Max(start + 1, Math.Min(next, Tick(notes[at].At + notes[at].Length)));
                var velocity = notes[at].IsAccented ? Accented : Plain;
                events.Add(
                    (start, true, new NoteEvent(start, channel, MidiCommandCode.NoteOn, same.Key.Midi, velocity))
                );
                events.Add((end, false, new NoteEvent(end, channel, MidiCommandCode.NoteOff, same.Key.Midi, 0)));
            }
        }

        foreach (var one in events.OrderBy(one => one.Tick).ThenBy(one => one.IsOn))
        {
            yield return one.Event;
        }
    }

    private static IEnumerable<MidiEvent> ClickTrack(List<Click> clicks)
    {
        yield return Text("click", MetaEventType.SequenceTrackName, 0);
        foreach (var click in clicks)
        {
            var key = click.IsFirst ? FirstClick : OtherClick;
            yield return new NoteEvent(Tick(click.At), ClickChannel, MidiCommandCode.NoteOn, key, Plain);
            yield return new NoteEvent(Tick(click.At) + 60, ClickChannel, MidiCommandCode.NoteOff, key, 0);
        }
    }

    // Channels are counted from 1; the tenth is for drums.
    private static int ChannelOf(int stringNumber)
    {
        var channel = (stringNumber - 1) % 15 + 1;
        return channel >= ClickChannel ? channel + 1 : channel;
    }

    private static int Program(Instrument instrument) =>
        instrument.Name.Contains("banjo", StringComparison.Ordinal) ? 105
        : instrument.OpenPitches[^1].MidiNumber < 36 ? 32
        : instrument.ScaleLengthMm > 560 ? 25
        : 24;

    private static long Tick(double quarters) => (long)Math.Round(quarters * Beats.TicksPerQuarter);

    private static TextEvent Text(string text, MetaEventType type, long tick) =>
        new(text, type, tick) { Data = Encoding.UTF8.GetBytes(text) };
}
