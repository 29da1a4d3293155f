using System.Text;
using Fretloom.Exercises;
using Fretloom.Neck;
using Fretloom.Theory;
using NAudio.Midi;

namespace Fretloom.Scores.Midi;

/// <summary>Writes an exercise as a Standard MIDI File, type 1, 480 ticks to the quarter note.</summary>
/// <remarks>
/// The first track has the sentence, tempo, time and key signatures and markers, the second the notes; the clicks of the count-in and
/// those of the passes have a track each. Text is UTF-8. General MIDI has no ukulele or mandolin; short necks take the nylon-strung guitar
/// (General MIDI 1, instrument and percussion numbers from memory). Loudness of notes and clicks is ours, without source.
/// </remarks>
public static class MidiWriter
{
    private const int ClickChannel = 10;
    private const int FirstClick = 76;
    private const int OtherClick = 77;
    private const int ClickTicks = 60;
    private const int Clicked = 60;
    private const int Plain = 80;
    private const int Accented = 96;
    private const int NylonGuitar = 24;
    private const int SteelGuitar = 25;
    private const int Bass = 32;
    private const int Banjo = 105;

    /// <summary>The bytes of the file.</summary>
    public static byte[] Write(Exercise exercise, MidiOptions options)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(options);
        var performance = Performance.Of(exercise);
        var file = new MidiEventCollection(1, Beats.TicksPerQuarter);
        var hasClick = options.HasClick || performance.Exercise.HasClick;
        Add(file, Conductor(performance));
        Add(file, Notes(performance, options));
        AddClicks(file, "count-in", performance.Clicks.Where(click => click.At < performance.CountIn));
        AddClicks(file, "click", performance.Clicks.Where(click => hasClick && click.At >= performance.CountIn));
        file.PrepareForExport();
        using var bytes = new MemoryStream();
        MidiFile.Export(bytes, file);
        return bytes.ToArray();
    }

    private static void Add(MidiEventCollection file, IEnumerable<MidiEvent> events)
    {
        var track = file.AddTrack();
        foreach (var one in events)
        {
            track.Add(one);
        }
    }

    private static void AddClicks(MidiEventCollection file, string name, IEnumerable<Click> clicks)
    {
        var events = clicks.SelectMany(Sounded).ToList();
        if (events.Count > 0)
        {
            Add(file, events.Prepend(Text(name, MetaEventType.SequenceTrackName, 0)));
        }
    }

    private static IEnumerable<MidiEvent> Conductor(Performance performance)
    {
        var exercise = performance.Exercise;
        yield return Text(exercise.Name, MetaEventType.SequenceTrackName, 0);
        yield return Text(exercise.Sentence, MetaEventType.TextEvent, 0);
        var power = exercise.Metre.Unit == 8 ? 3 : 2;
        var clocks = exercise.Metre.IsCompound ? 36 : 24;
        yield return new TimeSignatureEvent(0, exercise.Metre.Count, power, clocks, 8);
        foreach (var change in performance.Tempi)
        {
            var micros = (int)Math.Round(60e6 / change.Tempo.QuartersPerMinute(exercise.Metre));
            yield return new TempoEvent(micros, Tick(change.At));
        }

        if (performance.CountIn > 0)
        {
            yield return Signature(exercise.Key, 0);
        }

        var pass = exercise.Length.Quarters;
        for (var at = 0; at < exercise.Passes.Count; at++)
        {
            var begin = performance.CountIn + at * pass;
            if (exercise.Passes.Count > 1)
            {
                yield return Text($"{at + 1}: {exercise.Passes[at]}", MetaEventType.Marker, Tick(begin));
            }

            foreach (var one in exercise.Sections.SelectMany(section => Headed(section, begin)))
            {
                yield return one;
            }
        }
    }

    private static IEnumerable<MidiEvent> Headed(Section section, double begin)
    {
        var tick = Tick(begin + section.At.Quarters);
        yield return Signature(section.Key, tick);
        if (section.Heading is { } heading)
        {
            yield return Text(heading, MetaEventType.Marker, tick);
        }
    }

    // A file knows major and minor only: a mode has the signature of the major key with its notes.
    private static KeySignatureEvent Signature(Key key, long tick) =>
        new(
            KeySignature.Of(key),
            key.Kind == ScaleKind.NaturalMinor
            || key.Kind == ScaleKind.HarmonicMinor
            || key.Kind == ScaleKind.MelodicMinor
                ? 1
                : 0,
            tick
        );

    private static IEnumerable<MidiEvent> Notes(Performance performance, MidiOptions options)
    {
        var instrument = performance.Exercise.Instrument;
        yield return Text(instrument.Name, MetaEventType.SequenceTrackName, 0);
        var channels = options.HasChannelPerString ? instrument.Strings.Count : 1;
        for (var number = 1; number <= channels; number++)
        {
            yield return new PatchChangeEvent(0, ChannelOf(number), Program(instrument));
        }

        // A channel can sound a pitch once at a time: of a unison, or of two strings of one channel, the later goes on, and of two at once the longer.
        var events = new List<MidiEvent>();
        foreach (
            var same in performance.Notes.GroupBy(note =>
                (Channel: options.HasChannelPerString ? ChannelOf(note.Spot.String) : 1, note.Midi)
            )
        )
        {
            var notes = same.GroupBy(note => Tick(note.At)).Select(at => at.MaxBy(note => note.Length)).ToList();
            for (var at = 0; at < notes.Count; at++)
            {
                var start = Tick(notes[at].At);
                var next = at + 1 < notes.Count ? Tick(notes[at + 1].At) : long.MaxValue;
                var end = Math.Min(next, Math.Max(start + 1, Tick(notes[at].At + notes[at].Length)));
                var velocity = notes[at].IsAccented ? Accented : Plain;
                events.Add(new NoteEvent(start, same.Key.Channel, MidiCommandCode.NoteOn, same.Key.Midi, velocity));
                events.Add(new NoteEvent(end, same.Key.Channel, MidiCommandCode.NoteOff, same.Key.Midi, 0));
            }
        }

        foreach (var one in events.OrderBy(one => one.AbsoluteTime).ThenBy(one => MidiEvent.IsNoteOn(one)))
        {
            yield return one;
        }
    }

    private static IEnumerable<MidiEvent> Sounded(Click click)
    {
        var key = click.IsFirst ? FirstClick : OtherClick;
        yield return new NoteEvent(Tick(click.At), ClickChannel, MidiCommandCode.NoteOn, key, Clicked);
        yield return new NoteEvent(Tick(click.At) + ClickTicks, ClickChannel, MidiCommandCode.NoteOff, key, 0);
    }

    // Channels are counted from 1; the tenth is for drums.
    private static int ChannelOf(int stringNumber)
    {
        var channel = (stringNumber - 1) % 15 + 1;
        return channel >= ClickChannel ? channel + 1 : channel;
    }

    private static int Program(Instrument instrument) =>
        Instruments.IsBanjo(instrument) ? Banjo
        : instrument.IsBass ? Bass
        : instrument.ScaleLengthMm > 560 ? SteelGuitar
        : NylonGuitar;

    private static long Tick(double quarters) => (long)Math.Round(quarters * Beats.TicksPerQuarter);

    private static TextEvent Text(string text, MetaEventType type, long tick) =>
        new(text, type, tick) { Data = Encoding.UTF8.GetBytes(text) };
}
