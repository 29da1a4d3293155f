using Fretloom.Exercises;
using Fretloom.Exhibits;
using Fretloom.Neck;
using Fretloom.Pages.Scene;
using Fretloom.Sentences;
using Fretloom.Theory;

namespace Fretloom.Pages.Pictures;

/// <summary>The neck with the spots of an exercise and the threads between notes that follow each other or sound together.</summary>
/// <remarks>
/// Above the marks lie rings, one a spot, and below them a line for each thread, which a page lets be seen only while they sound:
/// the parts <c>light 4-7</c> (string and fret) and <c>light 4-7 3-5</c>.
/// </remarks>
internal static class ExerciseNeck
{
    private const int NearNut = 2;

    /// <summary>Draws it.</summary>
    /// <param name="exercise">What is played.</param>
    /// <param name="width">Points there are.</param>
    public static Picture Of(Exercise exercise, double width)
    {
        var content = NeckContent.Of(Exhibit(exercise));
        var (title, _) = NeckWords.Of(content);
        var threads = Threads(exercise);
        var words = ($"{title}: where the exercise lies", "The spots of the exercise, with the degrees of the key.");
        var drawing = NeckPicture.Draw(content, width, words, new(), layers => Lit(layers, content, threads));
        return new Picture(drawing, NeckWords.Table(content));
    }

    private static Exhibit Exhibit(Exercise exercise)
    {
        var notes = exercise
            .Notes.Select(note => note.Note)
            .DistinctBy(note => note.Spot)
            .OrderByDescending(note => note.Spot.String)
            .ThenBy(note => note.Spot.Fret)
            .ToValueList();
        var lowest = notes.Min(note => note.Spot.Fret);
        var frets = new FretRange(
            lowest <= NearNut ? 0 : lowest - 1,
            Math.Min(notes.Max(note => note.Spot.Fret) + 1, exercise.Instrument.LastFret)
        );
        return new Exhibit
        {
            Sentence = exercise.Sentence,
            Map = new NeckMap(exercise.Instrument, exercise.Key, exercise.Instrument.AllStrings, frets),
            Labels = LabelStyle.Degrees,
            NoteNames = exercise.NoteNames,
            IsLeftHanded = exercise.IsLeftHanded,
            Player = exercise.Player,
            Notes = notes,
        };
    }

    private static IEnumerable<Node> Lit(
        NeckLayers layers,
        NeckContent content,
        List<(NeckNote One, NeckNote Other)> threads
    )
    {
        var (frame, measures) = (layers.Frame, layers.Frame.Measures);
        foreach (var layer in layers.All)
        {
            if (layer is Node.Group { Name: "marks" })
            {
                var drawn = threads
                    .Where(pair => frame.Contains(pair.One.Spot) && frame.Contains(pair.Other.Spot))
                    .ToList();
                yield return new Node.Group(
                    "threads",
                    drawn.Select(pair => Thread(pair, MarkKind.OfKey)).ToValueList<Node>()
                );
                foreach (var pair in drawn)
                {
                    yield return new Node.Group(
                        $"light {Name(pair.One.Spot)} {Name(pair.Other.Spot)}",
                        [Thread(pair, MarkKind.Chosen)]
                    );
                }
            }

            yield return layer;
        }

        foreach (var note in content.Notes.Where(note => frame.Contains(note.Spot)))
        {
            var (x, y) = frame.PointOf(note.Spot);
            var ring = new Node.Circle(
                x,
                y,
                measures.CulpritRadius,
                Tone.None,
                new Stroke(Tone.Focus, 2 * measures.CulpritLine)
            );
            yield return new Node.Group($"light {Name(note.Spot)}", [ring]);
        }

        Node.Group Thread((NeckNote One, NeckNote Other) pair, MarkKind kind)
        {
            var (x1, y1) = frame.PointOf(pair.One.Spot);
            var (x2, y2) = frame.PointOf(pair.Other.Spot);
            return ThreadLine.Between(pair.One.Pitch, pair.Other.Pitch, kind)!.Value.Drawn(x1, y1, x2, y2, measures);
        }
    }

    private static string Name(Spot spot) => $"{Wording.Number(spot.String)}-{Wording.Number(spot.Fret)}";

    /// <summary>The thirds on neighbouring strings between notes that sound together or one after the other.</summary>
    private static List<(NeckNote One, NeckNote Other)> Threads(Exercise exercise)
    {
        var chords = exercise
            .Notes.GroupBy(note => note.At)
            .Select(chord => chord.Select(note => note.Note).ToList())
            .ToList();
        var pairs = chords.SelectMany(
            (chord, at) =>
                from other in chord
                from one in at == 0 ? chord : chord.Concat(chords[at - 1])
                select (One: one, Other: other)
        );
        return
        [
            .. pairs
                .Where(pair =>
                    Math.Abs(pair.One.Spot.String - pair.Other.Spot.String) == 1
                    && ThreadLine.Between(pair.One.Pitch, pair.Other.Pitch, MarkKind.OfKey) is not null
                )
                .Select(pair => pair.One.Spot.String > pair.Other.Spot.String ? pair : (pair.Other, pair.One))
                .DistinctBy(pair => (pair.Item1.Spot, pair.Item2.Spot)),
        ];
    }
}
