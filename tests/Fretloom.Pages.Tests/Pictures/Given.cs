using Fretloom.Exhibits;
using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Sentences;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Pages.Tests.Pictures;

/// <summary>Exhibits whose fingers are given.</summary>
internal static class Given
{
    /// <summary>Chord boxes from frets and fingers, far string first; x for a string that is not played, T for the thumb.</summary>
    public static Exhibit Boxes(string instrument, params (string Chord, string Frets, string Fingers)[] boxes) =>
        Boxes(instrument, default, boxes);

    /// <summary>The same for a hand.</summary>
    public static Exhibit Boxes(
        string instrument,
        HandSize hand,
        params (string Chord, string Frets, string Fingers)[] boxes
    )
    {
        var map = Shown.Map(instrument, "C major");
        var shapes = boxes.Select(box => ShapeOf(map, box.Chord, box.Frets)).ToList();
        return Fingered(
            Shown.Empty(map) with
            {
                Labels = LabelStyle.Members,
                Shapes = shapes.ToValueList(),
            },
            hand,
            shape =>
            {
                var fingers = boxes[shapes.IndexOf(shape)].Fingers;
                return shape.Notes.Select(note => FingerOf(fingers[^note.Spot.String]));
            }
        );
    }

    /// <summary>The exhibit with one finger a note: the lower the fret, then the farther the string, the lower the finger.</summary>
    public static Exhibit OneFingerEach(Exhibit exhibit, HandSize hand) =>
        Fingered(
            exhibit,
            hand,
            shape =>
            {
                var pressed = shape
                    .Spots.Where(spot => spot.Fret > 0)
                    .OrderBy(spot => spot.Fret)
                    .ThenByDescending(spot => spot.String);
                var order = pressed.ToList();
                return shape.Spots.Select(spot => (Finger)(order.IndexOf(spot) + 1));
            }
        );

    /// <summary>The exhibit with one finger a fret.</summary>
    /// <param name="exhibit">With shapes.</param>
    /// <param name="position">The fret of the index; a fret lower takes the index, too.</param>
    public static Exhibit FingerPerFret(Exhibit exhibit, int position) =>
        Fingered(
            exhibit,
            default,
            shape => shape.Spots.Select(spot => (Finger)Math.Clamp(spot.Fret - position + 1, 1, 4))
        );

    private static Exhibit Fingered(Exhibit exhibit, HandSize hand, Func<Shape, IEnumerable<Finger>> fingers) =>
        exhibit with
        {
            Player = new Player(exhibit.Map.Instrument, hand),
            ShowsFingers = true,
            InHand = (exhibit.Shapes ?? [])
                .Select(shape => new ShapeInHand(
                    shape,
                    FingeringOf(exhibit.Map.Instrument, hand, shape, fingers(shape)),
                    null,
                    []
                ))
                .ToValueList(),
        };

    private static Fingering FingeringOf(Instrument instrument, HandSize hand, Shape shape, IEnumerable<Finger> fingers)
    {
        var notes = shape.Spots.Zip(fingers, (spot, finger) => new FingeredNote(spot, finger)).ToValueList();
        var pressed = notes.Where(note => note.Finger is not (Finger.None or Finger.Thumb)).ToList();
        var stretches =
            from one in pressed
            from other in pressed
            let distance = instrument.LandingMm(other.Spot.Fret) - instrument.LandingMm(one.Spot.Fret)
            where one.Finger < other.Finger && distance >= 0
            select new Stretch(hand, one.Finger, other.Finger, distance);
        var all = stretches.ToList();
        return new Fingering(notes, [], shape.StretchMm, all.Count == 0 ? null : all.MaxBy(stretch => stretch.Effort));
    }

    private static Shape ShapeOf(NeckMap map, string chordName, string frets)
    {
        var chord = Chord.Parse(chordName);
        var names = chord.Notes.ToList();
        var notes =
            from at in Enumerable.Range(0, frets.Length)
            where frets[at] != 'x'
            let course = map.Instrument.String(frets.Length - at)
            let note = map.NoteAt(new Spot(frets.Length - at, course.StartsAtFret + frets[at] - '0'))!.Value
            let spelled = note.Pitch.Name
            let member = names.IndexOf(spelled)
            select new ShapeNote(note.Spot, note.Pitch, note.Degree, member < 0 ? "" : chord.MemberText(member));
        return new Shape(new ShapeSource.OfChord(chord, null), map.Instrument, map.Strings, notes);
    }

    private static Finger FingerOf(char finger) => finger == 'T' ? Finger.Thumb : (Finger)(finger - '0');
}
