using Fretloom.Exercises;
using Fretloom.Theory;

namespace Fretloom.Sentences;

/// <summary>A parsed play sentence. What was left unsaid is null or false.</summary>
/// <remarks>Two sentences are equal when they say the same. <see cref="ToString"/> prints canonically and parses back to an equal value.</remarks>
public sealed record PlaySentence
{
    /// <summary>The most times that a tempo is played through. Ours, without source.</summary>
    public const int MostTimes = 99;

    /// <summary>The most bars between two answers; ours, without source.</summary>
    public const int MostEchoBars = 16;

    /// <summary>The most octaves of a scale; an instrument of seven strings has five.</summary>
    public const int MostOctaves = 5;

    /// <summary>What is played, where, in which voicing and by which hand: these phrases are those of show sentences.</summary>
    public ShowSentence Material { get; init; } = new();

    /// <summary><c>two octaves</c>: how far a scale goes from its lowest tonic, 1 to 5.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public int? Octaves
    {
        get;
        init
        {
            ArgumentOutOfRangeException.ThrowIfLessThan(value ?? 1, 1, nameof(value));
            ArgumentOutOfRangeException.ThrowIfGreaterThan(value ?? 1, MostOctaves, nameof(value));
            field = value;
        }
    }

    /// <summary><c>up</c>, <c>down</c>, <c>up and down</c>, <c>from low to high</c>.</summary>
    public Direction? Direction { get; init; }

    /// <summary><c>in broken thirds</c>, <c>in groups of three</c>.</summary>
    public Grouping? Grouping { get; init; }

    /// <summary><c>through the key by fourths</c>.</summary>
    public ChordWay? Through { get; init; }

    /// <summary><c>in every key, by half-steps</c>.</summary>
    public KeyOrder? EveryKey { get; init; }

    /// <summary>Whether <c>as block chords</c> was said; false for <c>as arpeggios</c>.</summary>
    public bool? IsBlock { get; init; }

    /// <summary><c>in eighths</c>.</summary>
    public NoteValue? Value { get; init; }

    /// <summary><c>in 3/4</c>.</summary>
    public Metre? Metre { get; init; }

    /// <summary><c>at 72</c>, or the rungs of <c>from 60 to 96 in steps of 6</c>.</summary>
    public TempoLadder? Tempo { get; init; }

    /// <summary><c>twice</c>, <c>4 times</c>: how often each tempo is played through, 1 to 99.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public int? Times
    {
        get;
        init
        {
            ArgumentOutOfRangeException.ThrowIfLessThan(value ?? 1, 1, nameof(value));
            ArgumentOutOfRangeException.ThrowIfGreaterThan(value ?? 1, MostTimes, nameof(value));
            field = value;
        }
    }

    /// <summary>Bars of <c>with a count-in</c>, 0 to 4.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public int? CountInBars
    {
        get;
        init
        {
            ArgumentOutOfRangeException.ThrowIfLessThan(value ?? 0, 0, nameof(value));
            ArgumentOutOfRangeException.ThrowIfGreaterThan(value ?? 0, Exercise.MostCountInBars, nameof(value));
            field = value;
        }
    }

    /// <summary>Whether <c>with a click</c> was said.</summary>
    public bool HasClick { get; init; }

    /// <summary><c>sustained</c>, <c>short</c>.</summary>
    public Touching? Touch { get; init; }

    /// <summary><c>strum down down-up up-down-up</c>.</summary>
    public StrumPattern? Strum { get; init; }

    /// <summary><c>picked p-i-m-a</c>, <c>picked down-up</c>: how the notes are picked, again and again; empty when unsaid.</summary>
    public ValueList<Picked> Picking { get; init; }

    /// <summary>Bars of <c>two bars, then two bars' rest</c>, 1 to 16.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public int? EchoBars
    {
        get;
        init
        {
            ArgumentOutOfRangeException.ThrowIfLessThan(value ?? 1, 1, nameof(value));
            ArgumentOutOfRangeException.ThrowIfGreaterThan(value ?? 1, MostEchoBars, nameof(value));
            field = value;
        }
    }

    /// <summary>Whether <c>for tuning</c> was said.</summary>
    public bool IsForTuning { get; init; }

    /// <summary>The canonical sentence: what, where, in which voicing, then order, rhythm, tempo, repeats, picking; what was left unsaid is left out.</summary>
    public override string ToString() => Play.PlayPrinter.Print(this);
}
