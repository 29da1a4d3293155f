using Fretloom.Exercises;
using Fretloom.Exercises.Notation;
using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Scores.MusicXml;

/// <summary>Writes the notes of a bar: first on the notation staff, then on the tablature.</summary>
internal sealed class NoteElements(Elements xml, Exercise exercise, Key key)
{
    private readonly BarAccidentals _accidentals = new(key);

    /// <summary>A figure on the notation staff.</summary>
    public void Notation(Figure figure, WrittenBar bar) =>
        Each(figure, bar, (note, isFirst) => Note(figure, note, isFirst, isTab: false));

    /// <summary>A figure on the tablature.</summary>
    public void Tablature(Figure figure, WrittenBar bar) =>
        Each(figure, bar, (note, isFirst) => Note(figure, note, isFirst, isTab: true), isTab: true);

    private void Each(Figure figure, WrittenBar bar, Action<ExerciseNote, bool> write, bool isTab = false)
    {
        if (figure.IsRest)
        {
            Rest(figure, bar, isTab);
            return;
        }

        for (var at = 0; at < figure.Notes.Count; at++)
        {
            write(figure.Notes[at], at == 0);
        }
    }

    private void Rest(Figure figure, WrittenBar bar, bool isTab)
    {
        if (bar.IsRest && figure != bar.Figures[0])
        {
            return;
        }

        xml.Within(
            "note",
            () =>
            {
                xml.Empty("rest", ("measure", bar.IsRest ? "yes" : null));
                var ticks = bar.IsRest ? bar.Figures.Sum(one => one.Length.Ticks) : figure.Length.Ticks;
                xml.Leaf("duration", ticks);
                xml.Leaf("voice", isTab ? 5 : 1);
                if (!bar.IsRest)
                {
                    Value(figure);
                }

                xml.Leaf("staff", isTab ? 2 : 1);
                if (!bar.IsRest && !isTab && figure.Bracket is Bracket.Start or Bracket.Stop)
                {
                    xml.Within("notations", () => Tuplet(figure));
                }
            }
        );
    }

    private void Note(Figure figure, ExerciseNote note, bool isFirst, bool isTab) =>
        xml.Within(
            "note",
            () =>
            {
                if (!isFirst)
                {
                    xml.Empty("chord");
                }

                Pitch(note.Note.Pitch);
                xml.Leaf("duration", figure.Length.Ticks);
                Ties(figure, "tie");
                xml.Leaf("voice", isTab ? 5 : 1);
                Value(figure, isTab ? null : Accidental(figure, note));
                xml.Leaf("staff", isTab ? 2 : 1);
                if (isFirst && !isTab)
                {
                    Beams(figure);
                }

                xml.Within("notations", () => Notations(figure, note, isFirst, isTab));
            },
            ("print-object", isTab && figure.IsTiedBack ? "no" : null)
        );

    private void Pitch(Pitch pitch) =>
        xml.Within(
            "pitch",
            () =>
            {
                xml.Leaf("step", pitch.Name.Step);
                if (pitch.Name.Alteration != 0)
                {
                    xml.Leaf("alter", pitch.Name.Alteration);
                }

                xml.Leaf("octave", pitch.Octave);
            }
        );

    private void Ties(Figure figure, string name)
    {
        if (figure.IsTiedBack)
        {
            xml.Empty(name, ("type", "stop"));
        }

        if (figure.IsTiedOn)
        {
            xml.Empty(name, ("type", "start"));
        }
    }

    private string? Accidental(Figure figure, ExerciseNote note) =>
        figure.IsTiedBack || !_accidentals.IsWritten(note.Note.Pitch)
            ? null
            : note.Note.Pitch.Name.Alteration switch
            {
                0 => "natural",
                1 => "sharp",
                -1 => "flat",
                2 => "double-sharp",
                -2 => "flat-flat",
                3 => "triple-sharp",
                -3 => "triple-flat",
                _ => null,
            };

    private void Value(Figure figure, string? accidental = null)
    {
        xml.Leaf(
            "type",
            figure.Value.Type switch
            {
                NoteType.Whole => "whole",
                NoteType.Half => "half",
                NoteType.Quarter => "quarter",
                NoteType.Eighth => "eighth",
                NoteType.Sixteenth => "16th",
                _ => "32nd",
            }
        );
        if (figure.Value.IsDotted)
        {
            xml.Empty("dot");
        }

        if (accidental is not null)
        {
            xml.Leaf("accidental", accidental);
        }

        if (figure.Value.IsTriplet)
        {
            xml.Within(
                "time-modification",
                () =>
                {
                    xml.Leaf("actual-notes", 3);
                    xml.Leaf("normal-notes", 2);
                }
            );
        }
    }

    private void Beams(Figure figure)
    {
        for (var level = 0; level < figure.Beams.Count; level++)
        {
            xml.Leaf(
                "beam",
                figure.Beams[level] switch
                {
                    Beam.Begin => "begin",
                    Beam.Continue => "continue",
                    Beam.End => "end",
                    Beam.ForwardHook => "forward hook",
                    _ => "backward hook",
                },
                ("number", level + 1)
            );
        }
    }

    private void Notations(Figure figure, ExerciseNote note, bool isFirst, bool isTab)
    {
        Ties(figure, "tied");
        if (isFirst && !isTab && figure.Bracket is Bracket.Start or Bracket.Stop)
        {
            Tuplet(figure);
        }

        if (isFirst && !isTab && !figure.IsTiedBack && exercise.Touch == Touching.Short)
        {
            xml.Within("articulations", () => xml.Empty("staccato"));
        }

        if (isTab || !figure.IsTiedBack)
        {
            xml.Within("technical", () => Technical(note, isFirst, isTab));
        }
    }

    private void Tuplet(Figure figure) =>
        xml.Empty("tuplet", ("type", figure.Bracket == Bracket.Start ? "start" : "stop"), ("bracket", "yes"));

    private void Technical(ExerciseNote note, bool isFirst, bool isTab)
    {
        if (isTab)
        {
            xml.Leaf("string", note.Note.Spot.String);
            xml.Leaf("fret", note.Note.Spot.Fret - exercise.Instrument.String(note.Note.Spot.String).StartsAtFret);
            return;
        }

        if (isFirst && note.Picked is Picked.Down or Picked.Up)
        {
            xml.Empty(note.Picked == Picked.Down ? "down-bow" : "up-bow");
        }

        if (note.Finger == Finger.None)
        {
            xml.Empty("open-string");
        }
        else
        {
            xml.Leaf("fingering", note.Finger.ToLabel());
        }

        if (note.Picked > Picked.Up)
        {
            xml.Leaf("pluck", "pima"[note.Picked - Picked.Thumb]);
        }
    }
}
