using System.Globalization;
using Fretloom.Exercises;
using Fretloom.Hand;
using Fretloom.Sentences;
using Fretloom.Theory;

namespace Fretloom.Exhibits.Playing;

/// <summary>Lays out in time what a play sentence is made of.</summary>
internal static class Arranger
{
    // So that there is time to turn a peg; our choice, without source.
    private const int TimesForTuning = 2;

    /// <summary>The exercise.</summary>
    public static Exercise Arrange(PlaySentence complete, Player player, ValueList<Part> parts)
    {
        var metre = complete.Metre!.Value;
        var time = new Timeline(metre);
        foreach (var part in parts)
        {
            time.Begin(part.Key, parts.Count > 1 ? Accidentals.Pretty(part.Key.ToString()) : null);
            Write(complete, part, time, metre);
        }

        time.FillTo(metre.Bar);
        var exercise = new Exercise
        {
            Sentence = complete.ToString(),
            Name = ExerciseName.Of(complete),
            Player = player,
            Metre = metre,
            Passes = complete
                .Tempo!.Rungs.SelectMany(rung => Enumerable.Repeat(rung, complete.Times ?? 1))
                .ToValueList(),
            IsSwung = complete.Value == NoteValue.SwingEighths,
            Touch = complete.Touch ?? Touching.Plain,
            CountInBars = complete.CountInBars ?? 0,
            HasClick = complete.HasClick,
            ShowsFingers = complete.Material.IsWithFingers,
            Notes = time.Notes,
            Length = time.At,
            Sections = time.Sections,
            Chords = time.Chords,
            Directions = time.Directions,
            Widest = parts
                .SelectMany(part => part.Groups)
                .Select(group => group.Widest)
                .OfType<Stretch>()
                .OrderByDescending(stretch => stretch.Effort)
                .Select(stretch => (Stretch?)stretch)
                .FirstOrDefault(),
        };
        return complete.EchoBars is { } bars ? Echo.With(exercise, bars) : exercise;
    }

    private static void Write(PlaySentence complete, Part part, Timeline time, Metre metre)
    {
        if (complete.Strum is { } strum)
        {
            Strummed(InTurn(part.Groups, complete.Direct), strum, time, metre);
        }
        else if (complete.IsBlock == true)
        {
            Blocks(InTurn(part.Groups, complete.Direct), complete, time, metre);
        }
        else if (complete.IsBlock == false)
        {
            Arpeggios(part.Groups, complete, time, metre);
        }
        else
        {
            Line(part.Groups[0], complete, time);
        }
    }

    private static IEnumerable<PlayedGroup> InTurn(ValueList<PlayedGroup> groups, Direct? direct) =>
        Ways.Through(groups.Count, direct ?? Direct.Up, Grouping.Plain).Select(place => groups[place]);

    private static void Strummed(IEnumerable<PlayedGroup> groups, StrumPattern strum, Timeline time, Metre metre)
    {
        var eighth = Beats.Of(1, 8);
        var strokes = strum.In(metre)!.Value;
        foreach (var group in groups)
        {
            time.Mark(group, isHeld: true);
            var isFirst = time.At.Ticks == 0;
            time.Rest(eighth * strokes[0].Eighth);
            for (var at = 0; at < strokes.Count; at++)
            {
                var next = at + 1 < strokes.Count ? eighth * strokes[at + 1].Eighth : metre.Bar;
                if (isFirst)
                {
                    time.Say(Count(strokes[at].Eighth, metre));
                }

                time.Add(group.Notes, next - eighth * strokes[at].Eighth, strokes[at].IsDown ? Picked.Down : Picked.Up);
            }
        }
    }

    // 1 & 2 & where a beat has two eighths, 1 to 6 where it has three.
    private static string Count(int eighth, Metre metre) =>
        !metre.IsCompound && eighth % 2 == 1
            ? "&"
            : (metre.IsCompound ? eighth + 1 : eighth / 2 + 1).ToString(CultureInfo.InvariantCulture);

    private static void Blocks(IEnumerable<PlayedGroup> groups, PlaySentence complete, Timeline time, Metre metre)
    {
        var length = complete.Value is { } value ? Rhythm.LengthOf(value) : metre.Bar;
        foreach (var (group, at) in groups.Select((group, at) => (group, at)))
        {
            time.Mark(group, isHeld: true);
            time.Add(group.Notes, length, PickedAt(complete, at));
        }
    }

    private static void Arpeggios(ValueList<PlayedGroup> groups, PlaySentence complete, Timeline time, Metre metre)
    {
        var length = Rhythm.LengthOf(complete.Value!.Value);
        if (complete.Picking.Any(picked => picked > Picked.Up))
        {
            Picking(groups, complete.Picking, length, time, metre);
            return;
        }

        var played = 0;
        foreach (var group in groups)
        {
            var whole = Rhythm.Rounded(
                length * Ways.Through(group.Notes.Count, complete.Direct!.Value, Grouping.Plain).Count(),
                metre
            );
            time.FillTo(whole <= metre.Bar ? whole : metre.Bar);
            time.Mark(group, isHeld: false);
            var end = time.At + whole;
            foreach (var place in Ways.Through(group.Notes.Count, complete.Direct!.Value, Grouping.Plain))
            {
                time.Add([group.Notes[place]], length, PickedAt(complete, played++));
            }

            time.FillUpTo(end);
        }
    }

    // Each chord is held for whole bars: the picking comes again as often as all of it fits.
    private static void Picking(
        ValueList<PlayedGroup> groups,
        ValueList<Picked> picking,
        Beats length,
        Timeline time,
        Metre metre
    )
    {
        var once = length * picking.Count;
        var bars = metre.Bar * ((once + metre.Bar - Beats.FromTicks(1)) / metre.Bar);
        foreach (var group in groups)
        {
            time.Mark(group, isHeld: true);
            var end = time.At + bars;
            for (var times = bars / once; times > 0; times--)
            {
                foreach (var (note, picked) in PickingOrder.Of(group, picking))
                {
                    time.Add([note], length, picked);
                }
            }

            time.FillUpTo(end);
        }
    }

    private static void Line(PlayedGroup row, PlaySentence complete, Timeline time)
    {
        var length = Rhythm.LengthOf(complete.Value!.Value);
        var order = Ways.Through(row.Notes.Count, complete.Direct ?? Direct.Up, complete.Grouping ?? Grouping.Plain);
        var times = complete.IsForTuning ? TimesForTuning : 1;
        foreach (
            var (place, at) in order
                .SelectMany(place => Enumerable.Repeat(place, times))
                .Select((place, at) => (place, at))
        )
        {
            time.Add([row.Notes[place]], length, PickedAt(complete, at));
        }
    }

    private static Picked PickedAt(PlaySentence complete, int at) =>
        complete.Picking.Count == 0 ? Picked.Unsaid : complete.Picking[at % complete.Picking.Count];
}
