using Fretloom.Exhibits;
using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Pages.Pictures;

/// <summary>What one picture of a neck shows.</summary>
internal sealed class NeckContent
{
    private const int NearNut = 2;

    private readonly Exhibit _exhibit;
    private readonly Dictionary<NoteName, string> _members = [];
    private readonly HashSet<Spot> _chosenSpots;
    private readonly Dictionary<Spot, Finger> _fingers = [];

    private NeckContent(Exhibit exhibit, ValueList<Shape> chosen, Chord? chord)
    {
        _exhibit = exhibit;
        Map = MapOf(exhibit, chosen);
        Chosen = chosen;
        _chosenSpots = [.. chosen.SelectMany(shape => shape.Spots)];
        Chord = chord;
        if (chord is not null)
        {
            for (var at = 0; at < chord.Notes.Count; at++)
            {
                _members[chord.Notes[at]] = chord.MemberText(at);
            }
        }

        var fingerings = exhibit
            .InHand.Where(one => chosen.Contains(one.Shape))
            .Select(one => one.Fingering?.Notes ?? []);
        foreach (var note in fingerings.Append(exhibit.NoteFingers).SelectMany(notes => notes))
        {
            _fingers.TryAdd(note.Spot, note.Finger);
        }

        Notes = NotesOf(exhibit, chosen).ToValueList();
    }

    /// <summary>The neck; cropped to the shapes, with a fret on either side, where nothing else is shown.</summary>
    public NeckMap Map { get; }

    public bool IsLeftHanded => _exhibit.IsLeftHanded;

    /// <summary>How the instrument is held, in words; empty for the usual way.</summary>
    public string Handedness =>
        IsLeftHanded ? ", for a left-handed player"
        : _exhibit.Player.IsTurnedOver ? ", turned over"
        : "";

    public Landmarks? Landmarks => _exhibit.Landmarks;

    /// <summary>Whether the columns of full and empty frets are tinted: not below threads alone, which they would drown.</summary>
    public bool HasColumns => !(_exhibit is { ShowsThirds: true, Notes: null });

    public IEnumerable<double> HalfTurnCentres => _exhibit.Symmetries?.HalfTurnCentres ?? [];

    /// <summary>What shows that a claim is false; null where no claim is spoken of.</summary>
    public Culprits? Culprits => _exhibit.Culprits;

    /// <summary>Whether landmarks, centres and culprits count a short string from its own nut.</summary>
    public bool CountsFromOwnNut => _exhibit.CountsFromOwnNut;

    /// <summary>How frets are counted, in sentences; null where that goes without saying.</summary>
    public string? CountingNote => _exhibit.CountingNote;

    /// <summary>The notes with a mark, string by string from the far side, frets ascending.</summary>
    public ValueList<NeckNote> Notes { get; }

    /// <summary>The shapes with a band.</summary>
    public ValueList<Shape> Chosen { get; }

    /// <summary>The chord whose members are solid, if the exhibit has just one.</summary>
    public Chord? Chord { get; }

    /// <summary>The chord as it is printed; empty without one.</summary>
    public string ChordName => Accidentals.Pretty(Chord?.ToString() ?? "");

    /// <summary>Whether the marks stand for all notes of the key, rather than for a choice of them.</summary>
    public bool IsWholeKey => Notes.Select(note => note.Spot).SequenceEqual(Map.NotesOfKey.Select(note => note.Spot));

    /// <summary>
    /// The neck of an exhibit. Its shapes stand out on it when they are few enough to be told apart: all of one chord
    /// or scale, and no two sharing a spot.
    /// </summary>
    /// <param name="exhibit">What to show.</param>
    /// <param name="focus">A shape to stand out alone, with its chord; null to leave it to the rule.</param>
    public static NeckContent Of(Exhibit exhibit, Shape? focus = null)
    {
        if (focus is not null)
        {
            return new NeckContent(exhibit, [focus], (focus.Source as ShapeSource.OfChord)?.Chord);
        }

        var shapes = exhibit.Shapes ?? [];
        var areApart = shapes.SelectMany(shape => shape.Spots).GroupBy(spot => spot).All(group => group.Count() == 1);
        var areOne = shapes.Select(shape => shape.Source.Name).Distinct().Count() == 1;
        return new NeckContent(exhibit, areApart && areOne ? shapes : [], OnlyChord(exhibit));
    }

    public Mark MarkOf(NeckNote note)
    {
        var mark = new Mark(LabelOf(note), KindOf(note), note.IsTonic, note.Pitch.Name == Chord?.Root);
        return _exhibit.HasFingersInside()
            ? mark with
            {
                IsSolid = !IsOpen(note) && (mark.IsSolid || mark.Label.Length > 0),
            }
            : mark;
    }

    /// <summary>What stands on a mark: its finger where fingers stand inside, with nothing on open strings.</summary>
    public string LabelOf(NeckNote note) =>
        _exhibit.LabelOf(
            note.Pitch,
            note.Degree,
            _members.GetValueOrDefault(note.Pitch.Name),
            _fingers.GetValueOrDefault(note.Spot)
        );

    /// <summary>The finger beside a mark; empty for none.</summary>
    public string FingerBeside(NeckNote note) => HasFingersBeside ? FingerAt(note.Spot) : "";

    /// <summary>The finger at a spot, wherever it stands; empty for none.</summary>
    public string FingerAt(Spot spot) => _exhibit.ShowsFingers ? _fingers.GetValueOrDefault(spot).ToLabel() : "";

    public bool HasFingersBeside => _exhibit.HasFingersBeside();

    public bool HasFingersInside => _exhibit.HasFingersInside();

    public bool IsOpen(NeckNote note) => Map.Instrument.IsOpen(note.Spot);

    /// <summary>The legend of the fingers.</summary>
    public IEnumerable<LegendItem> FingerLegendItems =>
        FingerLegend.For(
            _exhibit,
            Chosen.Count > 0 ? MarkKind.Chosen : MarkKind.OfKey,
            Notes.Select(note => (_fingers.GetValueOrDefault(note.Spot), IsOpen(note)))
        );

    /// <summary>What an open string is called beside its number.</summary>
    public string NameOfString(int number) => _exhibit.NameOf(Map.Instrument.String(number).Open.Name);

    public MarkKind KindOf(NeckNote note) =>
        _chosenSpots.Contains(note.Spot) ? MarkKind.Chosen
        : _members.ContainsKey(note.Pitch.Name) ? MarkKind.OfChord
        : MarkKind.OfKey;

    /// <summary>A third is chosen when one shape plays both its notes, of the chord when both are members.</summary>
    public MarkKind KindOf(Third third)
    {
        var isChosen = Chosen.Any(shape =>
            shape.Spots.Contains(third.Lower.Spot) && shape.Spots.Contains(third.Upper.Spot)
        );
        var isOfChord = KindOf(third.Lower) != MarkKind.OfKey && KindOf(third.Upper) != MarkKind.OfKey;
        return isChosen ? MarkKind.Chosen
            : isOfChord && Chord is not null ? MarkKind.OfChord
            : MarkKind.OfKey;
    }

    /// <summary>From the nut when it is near.</summary>
    private static NeckMap MapOf(Exhibit exhibit, ValueList<Shape> chosen)
    {
        var map = exhibit.Map;
        if (chosen.Count == 0 || exhibit is not { Notes: null, Landmarks: null, Symmetries: null })
        {
            return map;
        }

        var frets = chosen.SelectMany(shape => shape.Spots).Select(spot => spot.Fret).ToList();
        var first = frets.Min() <= NearNut ? 0 : frets.Min() - 1;
        var last = Math.Min(frets.Max() + 1, map.Instrument.LastFret);
        return new NeckMap(map.Instrument, map.Key, map.Strings, new FretRange(first, last));
    }

    private static Chord? OnlyChord(Exhibit exhibit)
    {
        var chords = (exhibit.Shapes ?? [])
            .Select(shape => (shape.Source as ShapeSource.OfChord)?.Chord)
            .Distinct()
            .ToList();
        return chords is [{ } chord] ? chord : null;
    }

    private static IEnumerable<NeckNote> NotesOf(Exhibit exhibit, ValueList<Shape> chosen)
    {
        if (chosen.Count == 0)
        {
            return exhibit.Notes ?? exhibit.Map.NotesOfKey;
        }

        IEnumerable<NeckNote> asked = exhibit.Notes ?? [];
        var played = chosen
            .SelectMany(shape => shape.Notes)
            .Select(note => new NeckNote(note.Spot, note.Pitch, note.Degree));
        return asked
            .Concat(played)
            .DistinctBy(note => note.Spot)
            .OrderByDescending(note => note.Spot.String)
            .ThenBy(note => note.Spot.Fret);
    }
}
