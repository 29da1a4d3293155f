using Fretloom.Exercises;
using Fretloom.Scores.Tab;

namespace Fretloom.Scores.Engraving;

/// <summary>An exercise as it is printed: its systems one below the other or, without the engraver or until it is done, plain text.</summary>
public sealed record EngravedExercise
{
    private EngravedExercise() { }

    /// <summary>The systems from the top; empty when there is <see cref="PlainText"/>.</summary>
    public ValueList<EngravedSystem> Systems { get; private init; }

    /// <summary>Tablature in plain text, when it could not be engraved; else null.</summary>
    public string? PlainText { get; private init; }

    /// <summary>Why it stays plain text; else null.</summary>
    public string? Warning { get; private init; }

    /// <summary>Whether it is still being engraved: asked for again later, it may have systems.</summary>
    public bool IsAwaited { get; private init; }

    /// <summary>Plain-text tablature until the exercise is engraved.</summary>
    public static EngravedExercise Awaited(Exercise exercise) =>
        new() { PlainText = TabText.Write(exercise, hasFingers: true), IsAwaited = true };

    internal static EngravedExercise OfSystems(IEnumerable<EngravedSystem> systems) =>
        new() { Systems = systems.ToValueList() };

    internal static EngravedExercise WithoutEngraver(string tablature) =>
        InWords(
            tablature,
            "The engraver's file assets/verovio/verovio-toolkit-wasm.js is missing beside the program, so this exercise is written as plain-text tablature; install the program again to have it engraved"
        );

    internal static EngravedExercise Failed(string tablature, string exercise, string reason) =>
        InWords(
            tablature,
            $"The engraver could not set '{exercise}', so it is written as plain-text tablature: {reason}"
        );

    private static EngravedExercise InWords(string tablature, string warning) =>
        new() { PlainText = tablature, Warning = warning };
}

/// <summary>One line of music over the whole width: the notation staff and the tablature.</summary>
/// <remarks>
/// In the picture each notehead and each figure of the tablature is a group with <c>data-note</c>, the place of its note in the exercise counted from
/// 0, and each bar a group with <c>data-bar</c>, counted from 1. Letters are those of Source Sans 3. It has no ids but those of its own signs.
/// </remarks>
/// <param name="Svg">The picture, an <c>svg</c> element whose size is given in millimetres.</param>
/// <param name="WidthMm">Its width.</param>
/// <param name="HeightMm">Its height with everything in it.</param>
/// <param name="FirstBar">Its first bar, counted from 1.</param>
/// <param name="LastBar">Its last bar.</param>
public sealed record EngravedSystem(string Svg, double WidthMm, double HeightMm, int FirstBar, int LastBar)
{
    /// <summary>The picture with other ids, for a page that shows the same one more than once.</summary>
    /// <param name="name">What they begin with; letters, figures and hyphens.</param>
    public string SvgNamed(string name) => SystemPicture.Renamed(Svg, name);
}
