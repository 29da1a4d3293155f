namespace Fretloom.Exercises.Notation;

/// <summary>A bar as it is written: notes, chords and rests in one voice that fill it.</summary>
/// <param name="Number">Counted from 1.</param>
/// <param name="At">Where it begins.</param>
/// <param name="Figures">In order, without gap; their lengths add up to the bar.</param>
public sealed record WrittenBar(int Number, Beats At, ValueList<Figure> Figures)
{
    /// <summary>Whether nothing sounds in it.</summary>
    public bool IsRest => Figures.All(figure => figure.IsRest);
}

/// <summary>A note, a chord or a rest that is written with one sign.</summary>
/// <param name="At">Where it begins, as written.</param>
/// <param name="Value">The sign.</param>
/// <param name="Notes">What sounds, the far string first; empty for a rest.</param>
/// <param name="IsTiedBack">Whether it goes on from the figure before.</param>
/// <param name="IsTiedOn">Whether it goes on in the figure after.</param>
/// <param name="Beams">The beams it hangs on, the outermost first; empty when it has flags or none.</param>
/// <param name="Bracket">Its place in a triplet's bracket.</param>
public sealed record Figure(
    Beats At,
    WrittenValue Value,
    ValueList<ExerciseNote> Notes,
    bool IsTiedBack = false,
    bool IsTiedOn = false,
    ValueList<Beam> Beams = default,
    Bracket Bracket = Bracket.None
)
{
    /// <summary>Whether nothing sounds.</summary>
    public bool IsRest => Notes.Count == 0;

    /// <summary>How long it is.</summary>
    public Beats Length => Value.Length;

    /// <summary>Where it ends.</summary>
    public Beats End => At + Length;
}

/// <summary>What a beam does at a figure; the names are those of MusicXML.</summary>
public enum Beam
{
    /// <summary>It begins here.</summary>
    Begin,

    /// <summary>It goes on.</summary>
    Continue,

    /// <summary>It ends here.</summary>
    End,

    /// <summary>A stub toward the next figure.</summary>
    ForwardHook,

    /// <summary>A stub toward the figure before.</summary>
    BackwardHook,
}

/// <summary>A figure's place in a triplet's bracket.</summary>
public enum Bracket
{
    /// <summary>In none.</summary>
    None,

    /// <summary>It opens one.</summary>
    Start,

    /// <summary>It lies within one.</summary>
    Inside,

    /// <summary>It closes one.</summary>
    Stop,
}
