using System.Globalization;
using Fretloom.Exercises;
using Fretloom.Exercises.Notation;
using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Scores.Tab;
using Fretloom.Theory;

namespace Fretloom.Scores.Engraving;

/// <summary>Writes one bar: both staves, then what stands above and below them.</summary>
internal sealed class MeiBar(
    Elements xml,
    Exercise exercise,
    WrittenBar bar,
    Dictionary<(Beats At, Spot Spot), int> places,
    bool beginsSystem
)
{
    /// <summary>What the ids of numerals begin with.</summary>
    public const string Roman = "roman-";

    private readonly BarAccidentals _accidentals = new(exercise.SectionAt(bar.At).Key);

    /// <summary>Writes it.</summary>
    public void Write()
    {
        Staff(1, () => Tuplets(bar.Figures, figures => Beams(figures), isShown: true));
        Staff(2, () => Tuplets(bar.Figures, figures => Each(figures, Frets), isShown: false));
        foreach (var chord in exercise.Chords.Where(chord => IsHere(chord.At)))
        {
            Mark("harm", chord.At, 1, "above", ChordNames.Of(exercise, chord.Chord));
            if (chord.Roman is { } roman)
            {
                Mark("harm", chord.At, 1, "below", Numeral(roman), group: 1, id: $"{Roman}{chord.At.Ticks}");
            }
        }

        foreach (var figure in bar.Figures.Where(figure => !figure.IsRest && !figure.IsTiedBack))
        {
            Fingers(figure);
            Picking(figure);
        }

        foreach (var words in Counts())
        {
            Mark("dir", words.At, 2, "below", words.Text, group: 3);
        }
    }

    // The counts of the first bar stand again where a system begins, if its first bar is played in the same rhythm.
    private IEnumerable<StaffWords> Counts()
    {
        var here = exercise.Words.Where(words => IsHere(words.At)).ToList();
        return here.Count > 0 || !beginsSystem || !Places(bar.At).SequenceEqual(Places(default))
            ? here
            : exercise
                .Words.Where(words => words.At < exercise.Metre.Bar)
                .Select(words => words with { At = words.At + bar.At });
    }

    // When notes begin in a bar, from its beginning.
    private IEnumerable<Beats> Places(Beats at) =>
        exercise
            .Notes.Where(note => note.At >= at && note.At < at + exercise.Metre.Bar)
            .Select(note => note.At - at)
            .Distinct();

    private bool IsHere(Beats at) => at >= bar.At && at < bar.At + exercise.Metre.Bar;

    private void Staff(int number, Action layer) =>
        xml.Within(
            "staff",
            () =>
                xml.Within(
                    "layer",
                    () =>
                    {
                        if (bar.IsRest)
                        {
                            xml.Empty(number == 1 ? "mRest" : "mSpace");
                        }
                        else
                        {
                            layer();
                        }
                    },
                    ("n", 1)
                ),
            ("n", number)
        );

    // Runs of triplets in their brackets, the rest as it is.
    private void Tuplets(ValueList<Figure> figures, Action<List<Figure>> write, bool isShown)
    {
        for (var at = 0; at < figures.Count; )
        {
            var isTriplet = figures[at].Bracket == Bracket.Start;
            var run = figures
                .Skip(at)
                .TakeWhile(
                    (figure, place) =>
                        place == 0
                        || (
                            isTriplet
                                ? figure.Bracket is Bracket.Inside or Bracket.Stop
                                : figure.Bracket == Bracket.None
                        )
                )
                .ToList();
            if (isTriplet)
            {
                var isBeamed = run.TrueForAll(figure => figure.Beams.Count > 0);
                xml.Within(
                    "tuplet",
                    () => write(run),
                    ("num", 3),
                    ("numbase", 2),
                    // Fingers stand above; where stems point up, the figure would lie among them.
                    ("num.place", isShown ? "below" : null),
                    ("num.visible", isShown ? "true" : "false"),
                    ("bracket.place", isShown ? "below" : null),
                    ("bracket.visible", isShown && !isBeamed ? "true" : "false")
                );
            }
            else
            {
                write(run);
            }

            at += run.Count;
        }
    }

    private void Beams(List<Figure> figures)
    {
        for (var at = 0; at < figures.Count; )
        {
            if (figures[at].Beams.Count == 0)
            {
                Notes(figures[at++]);
                continue;
            }

            var end = figures.FindIndex(at, figure => figure.Beams[0] == Beam.End);
            var run = figures[at..(end + 1)];
            xml.Within("beam", () => Each(run, Notes));
            at = end + 1;
        }
    }

    private static void Each(List<Figure> figures, Action<Figure> write) => figures.ForEach(write);

    private void Notes(Figure figure)
    {
        if (figure.IsRest)
        {
            xml.Empty("rest", ("dur", Duration(figure)), ("dots", Dots(figure)));
        }
        else if (figure.Notes.Count == 1)
        {
            Note(figure, figure.Notes[0], hasLength: true);
        }
        else
        {
            xml.Within(
                "chord",
                () =>
                {
                    foreach (var note in figure.Notes)
                    {
                        Note(figure, note, hasLength: false);
                    }
                },
                ("dur", Duration(figure)),
                ("dots", Dots(figure)),
                ("stem.dir", "down")
            );
        }
    }

    private void Note(Figure figure, ExerciseNote note, bool hasLength)
    {
        var pitch = note.Note.Pitch;
        var sign = MeiWriter.Sign(pitch);
        var isWritten = !figure.IsTiedBack && _accidentals.IsWritten(pitch);
        var number = places[(note.At, note.Note.Spot)];
        xml.Empty(
            "note",
            ("xml:id", figure.IsTiedBack ? $"n{number}-{figure.At.Ticks}" : $"n{number}"),
            ("dur", hasLength ? Duration(figure) : null),
            ("dots", hasLength ? Dots(figure) : null),
            ("pname", MeiWriter.PitchName(pitch)),
            ("oct", pitch.Octave),
            ("accid", isWritten ? sign ?? "n" : null),
            ("accid.ges", isWritten ? null : sign),
            (
                "tie",
                (figure.IsTiedBack, figure.IsTiedOn) switch
                {
                    (true, true) => "m",
                    (true, false) => "t",
                    (false, true) => "i",
                    _ => null,
                }
            ),
            ("artic", figure.Notes.Count == 1 && !figure.IsTiedBack ? Bow(note.Picked) : null)
        );
    }

    private void Frets(Figure figure)
    {
        if (figure.IsRest || figure.IsTiedBack)
        {
            xml.Empty("space", ("dur", Duration(figure)), ("dots", Dots(figure)));
            return;
        }

        xml.Within(
            "tabGrp",
            () =>
            {
                foreach (var note in figure.Notes)
                {
                    xml.Empty(
                        "note",
                        ("xml:id", $"t{places[(note.At, note.Note.Spot)]}"),
                        ("tab.course", note.Note.Spot.String),
                        ("tab.fret", TabFigure.Of(exercise.Instrument, note.Note.Spot))
                    );
                }
            },
            ("dur", Duration(figure)),
            ("dots", Dots(figure))
        );
    }

    // One above the other by string, all over the first note: beside each other, as the heads of a second are, they would be anybody's.
    private void Fingers(Figure figure)
    {
        if (HandSigns.IsStruckAgain(exercise, figure.Notes))
        {
            return;
        }

        foreach (var note in figure.Notes.Where(note => note.Finger != Finger.None))
        {
            xml.Leaf(
                "fing",
                note.Finger.ToLabel(),
                ("startid", $"#n{places[(figure.Notes[0].At, figure.Notes[0].Note.Spot)]}"),
                ("place", "above")
            );
        }
    }

    // A single note has the sign for a bow or pick above it.
    private void Picking(Figure figure)
    {
        var isBowed = figure.Notes is [{ Picked: Picked.Down or Picked.Up }];
        if (!isBowed && HandSigns.Picking(figure.Notes) is { Length: > 0 } words)
        {
            Mark("dir", figure.At, 2, "below", words, group: 2);
        }
    }

    private void Mark(
        string element,
        Beats at,
        int staff,
        string place,
        string words,
        int? group = null,
        string? id = null
    )
    {
        var unit = Beats.Of(1, exercise.Metre.Unit);
        xml.Within(
            element,
            () => xml.Leaf("rend", words, ("fontstyle", "normal"), ("fontsize", element == "dir" ? "70%" : null)),
            ("xml:id", id),
            ("staff", staff),
            (
                "tstamp",
                (1 + (double)(at - bar.At).Ticks / unit.Ticks).ToString("0.#####", CultureInfo.InvariantCulture)
            ),
            ("place", place),
            ("vgrp", group)
        );
    }

    // No letter of a numeral is an o but the sign of the diminished chord.
    private static string Numeral(RomanNumeral roman) => Accidentals.Pretty(roman.ToString()).Replace('o', '°');

    private static string? Bow(Picked picked) =>
        picked switch
        {
            Picked.Down => "dnbow",
            Picked.Up => "upbow",
            _ => null,
        };

    private static int Duration(Figure figure) => 1 << (int)figure.Value.Type;

    private static int? Dots(Figure figure) => figure.Value.IsDotted ? 1 : null;
}
