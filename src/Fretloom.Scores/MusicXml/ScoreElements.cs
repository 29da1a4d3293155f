using Fretloom.Exercises;
using Fretloom.Exercises.Notation;
using Fretloom.Theory;

namespace Fretloom.Scores.MusicXml;

/// <summary>Writes the score: its head, then bar by bar.</summary>
internal sealed class ScoreElements(Elements xml, Exercise exercise)
{
    private static readonly ScaleKind[] Modes =
    [
        ScaleKind.Major,
        ScaleKind.NaturalMinor,
        ScaleKind.Dorian,
        ScaleKind.Phrygian,
        ScaleKind.Lydian,
        ScaleKind.Mixolydian,
        ScaleKind.Locrian,
    ];

    private readonly HarmonyElements _harmony = new(xml, exercise);
    private readonly ILookup<Beats, ChordMark> _chords = exercise.Chords.ToLookup(chord => chord.At);
    private readonly ILookup<Beats, StaffWords> _words = exercise.Words.ToLookup(words => words.At);

    /// <summary>Writes it.</summary>
    public void Write() =>
        xml.Within(
            "score-partwise",
            () =>
            {
                xml.Leaf("movement-title", exercise.Name);
                xml.Within("identification", () => xml.Within("encoding", () => xml.Leaf("software", "Fretloom")));
                xml.Within(
                    "part-list",
                    () => xml.Within("score-part", () => xml.Leaf("part-name", exercise.Instrument.Name), ("id", "P1"))
                );
                xml.Within("part", Bars, ("id", "P1"));
            },
            ("version", "4.0")
        );

    private void Bars()
    {
        var bars = BarWriter.Write(exercise);
        foreach (var bar in bars)
        {
            xml.Within(
                "measure",
                () =>
                {
                    Opening(bar, isFirst: bar.Number == 1);
                    Staves(bar);
                    Closing(bar, bars.Count);
                },
                ("number", bar.Number)
            );
        }
    }

    private void Opening(WrittenBar bar, bool isFirst)
    {
        var section = exercise.Sections.FirstOrDefault(section => section.At == bar.At);
        if (isFirst && exercise.Passes.Count > 1)
        {
            xml.Within(
                "barline",
                () =>
                {
                    xml.Leaf("bar-style", "heavy-light");
                    xml.Empty("repeat", ("direction", "forward"));
                },
                ("location", "left")
            );
        }

        if (isFirst || section is not null)
        {
            xml.Within("attributes", () => Attributes(section ?? exercise.Sections[0], isFirst));
        }

        if (isFirst)
        {
            Tempo();
        }

        if (section?.Heading is { } heading)
        {
            Direction("above", () => xml.Leaf("rehearsal", heading));
        }
    }

    private void Attributes(Section section, bool isFirst)
    {
        if (isFirst)
        {
            xml.Leaf("divisions", Beats.TicksPerQuarter);
        }

        xml.Within(
            "key",
            () =>
            {
                xml.Leaf("fifths", KeySignature.Of(section.Key));
                if (ModeOf(section.Key.Kind) is { } mode)
                {
                    xml.Leaf("mode", mode);
                }
            }
        );
        if (!isFirst)
        {
            return;
        }

        xml.Within(
            "time",
            () =>
            {
                xml.Leaf("beats", exercise.Metre.Count);
                xml.Leaf("beat-type", exercise.Metre.Unit);
            }
        );
        xml.Leaf("staves", 2);
        Clef();
        TabStaff();
    }

    // The modes that MusicXML 4.0 names (simple type mode); a scale of another name has a signature alone.
    private static string? ModeOf(ScaleKind kind) =>
        kind == ScaleKind.HarmonicMinor || kind == ScaleKind.MelodicMinor ? ScaleKind.NaturalMinor.Name
        : Modes.Contains(kind) ? kind.Name
        : null;

    private void Clef()
    {
        var clef = StaffClef.For(exercise.Instrument);
        xml.Within(
            "clef",
            () =>
            {
                xml.Leaf("sign", clef.Sign);
                xml.Leaf("line", clef.Line);
                if (clef.OctaveChange != 0)
                {
                    xml.Leaf("clef-octave-change", clef.OctaveChange);
                }
            },
            ("number", 1)
        );
    }

    private void TabStaff()
    {
        var strings = exercise.Instrument.WithCapo(0).Strings;
        xml.Within(
            "clef",
            () =>
            {
                xml.Leaf("sign", "TAB");
                xml.Leaf("line", (strings.Count + 1) / 2 + (strings.Count > 4 ? 2 : 1));
            },
            ("number", 2)
        );
        xml.Within(
            "staff-details",
            () =>
            {
                xml.Leaf("staff-lines", strings.Count);
                for (var line = 1; line <= strings.Count; line++)
                {
                    var open = strings[strings.Count - line].Open;
                    xml.Within(
                        "staff-tuning",
                        () =>
                        {
                            xml.Leaf("tuning-step", open.Name.Step);
                            if (open.Name.Alteration != 0)
                            {
                                xml.Leaf("tuning-alter", open.Name.Alteration);
                            }

                            xml.Leaf("tuning-octave", open.Octave);
                        },
                        ("line", line)
                    );
                }

                if (exercise.Instrument.Capo > 0)
                {
                    xml.Leaf("capo", exercise.Instrument.Capo);
                }
            },
            ("number", 2)
        );
    }

    private void Tempo()
    {
        var (first, last) = (exercise.Passes[0], exercise.Passes[^1]);
        xml.Within(
            "direction",
            () =>
            {
                xml.Within(
                    "direction-type",
                    () =>
                        xml.Within(
                            "metronome",
                            () =>
                            {
                                xml.Leaf("beat-unit", "quarter");
                                if (exercise.Metre.IsCompound)
                                {
                                    xml.Empty("beat-unit-dot");
                                }

                                xml.Leaf("per-minute", first);
                            }
                        )
                );
                xml.Leaf("staff", 1);
                Sound(first);
            },
            ("placement", "above")
        );
        var toLast = first == last ? [] : new[] { $"to {last}" };
        var text = string.Join(", ", toLast.Concat(TempoWords.Words(exercise)));
        if (text.Length > 0)
        {
            Direction("above", () => xml.Leaf("words", text));
        }
    }

    private void Sound(Tempo tempo)
    {
        var quarters = ("tempo", (object)tempo.QuartersPerMinute(exercise.Metre));
        if (!exercise.IsSwung)
        {
            xml.Empty("sound", quarters);
            return;
        }

        xml.Within(
            "sound",
            () =>
                xml.Within(
                    "swing",
                    () =>
                    {
                        xml.Leaf("first", 2);
                        xml.Leaf("second", 1);
                        xml.Leaf("swing-type", "eighth");
                    }
                ),
            quarters
        );
    }

    private void Direction(string placement, Action type) =>
        xml.Within(
            "direction",
            () =>
            {
                xml.Within("direction-type", type);
                xml.Leaf("staff", 1);
            },
            ("placement", placement)
        );

    private void Staves(WrittenBar bar)
    {
        var notes = new NoteElements(xml, exercise, exercise.SectionAt(bar.At).Key);
        foreach (var figure in bar.Figures)
        {
            foreach (var chord in figure.IsTiedBack ? [] : _chords[figure.At])
            {
                _harmony.Write(chord);
            }

            foreach (var words in _words[figure.At])
            {
                Direction("below", () => xml.Leaf("words", words.Text));
            }

            notes.Notation(figure, bar);
        }

        xml.Within("backup", () => xml.Leaf("duration", exercise.Metre.Bar.Ticks));
        foreach (var figure in bar.Figures)
        {
            notes.Tablature(figure, bar);
        }
    }

    private void Closing(WrittenBar bar, int bars)
    {
        var isLast = bar.Number == bars;
        var changes = exercise.Sections.Any(section => section.At == bar.At + exercise.Metre.Bar);
        if (!isLast && !changes)
        {
            return;
        }

        xml.Within(
            "barline",
            () =>
            {
                xml.Leaf("bar-style", isLast ? "light-heavy" : "light-light");
                if (isLast && exercise.Passes.Count > 1)
                {
                    xml.Empty("repeat", ("direction", "backward"), ("times", exercise.Passes.Count));
                }
            },
            ("location", "right")
        );
    }
}
