using Fretloom.Lessons;
using Fretloom.Theory;

namespace Fretloom.Pages.Documents;

/// <summary>What stands above every page of a lesson.</summary>
/// <param name="Left">Instrument, course, sheet.</param>
/// <param name="Right">The key.</param>
/// <param name="Byline">Teacher and date, below the title; empty for none.</param>
internal sealed record RunningLines(string Left, string Right, string Byline)
{
    /// <summary>The lines of a lesson.</summary>
    public static RunningLines Of(Lesson lesson)
    {
        var instrument = lesson.Front.Defaults.Instrument.Name;
        return new RunningLines(
            Joined(char.ToUpperInvariant(instrument[0]) + instrument[1..], lesson.Front.Course, lesson.Front.Sheet),
            Accidentals.Pretty(lesson.Key.ToString()),
            Joined(lesson.Front.Teacher, lesson.Front.Date)
        );
    }

    private static string Joined(params IEnumerable<string?> parts) =>
        string.Join(" · ", parts.Where(part => !string.IsNullOrWhiteSpace(part)));
}
