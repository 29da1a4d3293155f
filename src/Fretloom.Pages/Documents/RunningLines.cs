using System.Globalization;
using Fretloom.Exercises;
using Fretloom.Exhibits;
using Fretloom.Lessons;
using Fretloom.Neck;
using Fretloom.Pages.Pictures;
using Fretloom.Theory;

namespace Fretloom.Pages.Documents;

/// <summary>What stands above every page of a lesson.</summary>
/// <param name="Left">Instrument with capo and hand, course, sheet.</param>
/// <param name="Right">The key.</param>
/// <param name="Byline">Teacher and date, below the title; empty for none.</param>
internal sealed record RunningLines(string Left, string Right, string Byline)
{
    /// <summary>The lines of a lesson.</summary>
    public static RunningLines Of(Lesson lesson) => Of(lesson.Front, Accidentals.Pretty(lesson.Key.ToString()));

    /// <summary>The lines of a page that has no lesson.</summary>
    /// <param name="front">Who it is for.</param>
    /// <param name="keys">What stands at the right.</param>
    public static RunningLines Of(FrontMatter front, string keys) =>
        new(Joined(Player(front), front.Course, front.Sheet), keys, Joined(front.Teacher, front.Date));

    /// <summary>For whom a picture is, where that is not what stands above the page; else empty.</summary>
    public static string NoteOn(Exhibit exhibit, FrontMatter front)
    {
        var player = Player(exhibit.Map.Instrument, exhibit.Map.Instrument.Capo, exhibit.Handedness());
        return player == Player(front) ? "" : player;
    }

    /// <summary>For whom an exercise is, where that is not what stands above the page; else empty.</summary>
    public static string NoteOn(Exercise exercise, FrontMatter front)
    {
        var handedness = Wording.Handedness(exercise.Player.IsTurnedOver, exercise.IsLeftHanded);
        var player = Player(exercise.Instrument, exercise.Instrument.Capo, handedness);
        return player == Player(front) ? "" : player;
    }

    private static string Player(FrontMatter front) =>
        Player(front.Defaults.Instrument, front.Capo, HandednessOf(front.Defaults));

    private static string HandednessOf(ShowDefaults defaults) =>
        Wording.Handedness(defaults.IsTurnedOver, defaults.IsLeftHanded);

    private static string Player(Instrument instrument, int capo, string handedness)
    {
        var name = Accidentals.Pretty(instrument.Name);
        return char.ToUpperInvariant(name[0])
            + name[1..]
            + (capo > 0 ? string.Create(CultureInfo.InvariantCulture, $", capo at {capo}") : "")
            + (handedness.Length > 0 ? ", " + handedness : "");
    }

    private static string Joined(params IEnumerable<string?> parts) =>
        string.Join(" · ", parts.Where(part => !string.IsNullOrWhiteSpace(part)));
}
