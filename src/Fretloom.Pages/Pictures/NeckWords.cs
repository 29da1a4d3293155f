using Fretloom.Neck;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Pages.Pictures;

/// <summary>A neck in words and as a table.</summary>
internal static class NeckWords
{
    /// <summary>The title and the description.</summary>
    public static (string Title, string Description) Of(NeckContent content)
    {
        var key = Accidentals.Pretty(content.Map.Key.ToString());
        var title = $"{key} on {Wording.Name(content.Map.Instrument)} {Wording.Strings(content.Map.Strings)}";
        return (title, string.Join(" ", Sentences(content, key)));
    }

    /// <summary>A row for each string, the one nearest the floor first; a column for each fret.</summary>
    public static TextTable Table(NeckContent content)
    {
        var bySpot = content.Notes.ToDictionary(note => note.Spot);
        var frets = content.Map.Frets.Frets.ToList();
        return new TextTable(
            frets.Select(fret => $"fret {Wording.Number(fret)}").Prepend("string").ToValueList(),
            content.Map.Strings.Numbers.Reverse().Select(Row).ToValueList()
        );

        ValueList<string> Row(int number)
        {
            var open = content.NameOfString(number);
            return frets
                .Select(fret => bySpot.TryGetValue(new Spot(number, fret), out var note) ? Cell(content, note) : "")
                .Prepend($"{Wording.Number(number)} ({open})")
                .ToValueList();
        }
    }

    /// <summary>The landmarks as a table.</summary>
    public static TextTable LandmarkTable(Landmarks landmarks) =>
        new(
            ["landmark", "frets"],
            [
                ["full frets", Wording.List(landmarks.FullFrets)],
                ["empty frets", Wording.List(landmarks.EmptyFrets)],
            ]
        );

    private static string Cell(NeckContent content, NeckNote note)
    {
        var mark = content.MarkOf(note);
        var roles = new List<string>();
        if (mark.IsTonic)
        {
            roles.Add("tonic");
        }

        if (mark.IsRoot)
        {
            roles.Add("root");
        }

        if (mark.Kind == MarkKind.Chosen)
        {
            roles.Add("in the shape");
        }
        else if (mark.Kind == MarkKind.OfChord)
        {
            roles.Add("in the chord");
        }

        if (content.Culprits?.Spots.Contains(note.Spot) == true)
        {
            roles.Add(CulpritRings.Words);
        }

        var finger = content.FingerAt(note.Spot);
        if (finger.Length > 0 && !content.HasFingersInside)
        {
            roles.Add(Fingers.Words(finger));
        }

        var label =
            !content.HasFingersInside ? mark.Label
            : finger.Length > 0 ? Fingers.Words(finger)
            : content.IsOpen(note) ? "open"
            : "note";
        return roles.Count == 0 ? label : $"{label} ({string.Join(", ", roles)})";
    }

    private static IEnumerable<string> Sentences(NeckContent content, string key)
    {
        yield return $"{key} on {Wording.Place(content.Map)}{content.Handedness}.";
        foreach (var (far, near) in Reentrant(content.Map))
        {
            yield return $"Re-entrant: string {Wording.Number(far)} sounds above string {Wording.Number(near)}.";
        }

        if (content.Landmarks is { } landmarks)
        {
            yield return Landmarks(landmarks);
        }

        foreach (var shape in content.Chosen)
        {
            yield return Shape(content, shape);
        }

        if (content.Culprits is { } culprits)
        {
            var places = culprits.Frets.Select(Place).Concat(culprits.Spots.Select(Spot));
            yield return $"Ringed, {CulpritRings.Words}: {Wording.List(places)}.";
        }

        if (content.CountingNote is { } note)
        {
            yield return note;
        }

        var centres = content.HalfTurnCentres.Select(Place).ToList();
        if (centres.Count > 0)
        {
            yield return $"Turned upside down about {Wording.List(centres)}, the key lies on itself.";
        }
    }

    /// <summary>Neighbours of the set of which the far one is tuned higher, as no ordinary tuning has them.</summary>
    private static IEnumerable<(int Far, int Near)> Reentrant(NeckMap map) =>
        map
            .Strings.Numbers.Zip(map.Strings.Numbers.Skip(1))
            .Where(pair =>
                map.Instrument.String(pair.First).Open.MidiNumber > map.Instrument.String(pair.Second).Open.MidiNumber
            );

    private static string Landmarks(Landmarks landmarks)
    {
        var full = Named("Full", landmarks.FullFrets);
        var empty = Named("Empty", landmarks.EmptyFrets);
        var hinge = landmarks.Hinge is { } pair
            ? $" The hinge is between strings {Wording.Number(pair.Far)} and {Wording.Number(pair.Near)}."
            : "";
        return $"{full} {empty}{hinge}";
    }

    private static string Named(string kind, ValueList<int> frets) =>
        frets.Count switch
        {
            0 => $"No {(kind == "Full" ? "full" : "empty")} frets.",
            1 => $"{kind} fret: {Wording.Number(frets[0])}.",
            _ => $"{kind} frets: {Wording.List(frets)}.",
        };

    private static string Spot(Spot spot) =>
        $"string {Wording.Number(spot.String)} {(spot.Fret == 0 ? "open" : $"fret {Wording.Number(spot.Fret)}")}";

    private static string Shape(NeckContent content, Shape shape)
    {
        var spots = shape.Spots.Select(spot => Spot(spot) + Fingers.After(content.FingerAt(spot)));
        return $"{Accidentals.Pretty(shape.Source.Name)}: {Wording.List(spots)}.";
    }

    private static string Place(double centre)
    {
        var below = (int)Math.Floor(centre);
        return centre == below
            ? $"fret {Wording.Number(below)}"
            : $"the wire between frets {Wording.Number(below)} and {Wording.Number(below + 1)}";
    }
}
