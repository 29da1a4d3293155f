namespace Fretloom.Hand.Lines;

/// <summary>
/// Every weight of the model of lines. All are set by hand, without source, so that the lines in the tests come out as
/// teachers finger them; those that rest on common practice say so. Costs have no unit: 1 is about a third of a shift.
/// </summary>
internal sealed record LineWeights
{
    /// <summary>The weights that the program uses.</summary>
    public static LineWeights Default { get; } = new();

    /// <summary>The narrowest place a finger takes along the neck, in millimetres for the adult hand.</summary>
    public double NarrowestMm { get; init; } = 10;

    /// <summary>The widest place a finger takes along the neck without reaching, in millimetres for the adult hand.</summary>
    public double WidestMm { get; init; } = 37.5;

    /// <summary>
    /// Two frets belong to each finger on an instrument tuned in fifths when frets 2 to 7 are no wider than this share of what
    /// fingers 1 and 4 reach in comfort: the mandolin, not the octave mandolin (common practice, no source).
    /// </summary>
    public double MostForSteps { get; init; } = 1.1;

    /// <summary>How far the index reaches back from its place, in places.</summary>
    public double MostBack { get; init; } = 1.5;

    /// <summary>How far the other fingers play from their places, in places.</summary>
    public double MostAside { get; init; } = 1.6;

    /// <summary>Playing above one's place, for each place, by finger.</summary>
    public ValueList<double> Above { get; init; } = [0, 0, 0.8, 1, 1.2];

    /// <summary>Playing below one's place, for each place, by finger.</summary>
    public ValueList<double> Below { get; init; } = [0, 1.5, 0.8, 0.8, 1.5];

    /// <summary>Reaching from the index's place beyond what is comfortable, for each millimetre.</summary>
    public double FarFromIndex { get; init; } = 0.04;

    /// <summary>Using a finger, by finger.</summary>
    public ValueList<double> Weak { get; init; } = [0, 0, 0.05, 0.15, 0.3];

    /// <summary>Each fret above the twelfth.</summary>
    public double High { get; init; } = 0.2;

    /// <summary>Each fret of the position.</summary>
    public double Up { get; init; } = 0.04;

    /// <summary>An open string outside first position: open strings go with first position (common practice, no source).</summary>
    public double OpenAway { get; init; } = 1.5;

    /// <summary>Each string crossed.</summary>
    public double Crossing { get; init; } = 0.1;

    /// <summary>Stretching two fingers beyond their places, for each place; pairs in the order of <see cref="StretchOf"/>.</summary>
    public ValueList<double> Stretch { get; init; } = [1.0, 2.0, 2.4, 0.9, 1.4, 1.2];

    /// <summary>Squeezing two fingers, for each place.</summary>
    public double Squeeze { get; init; } = 0.8;

    /// <summary>Stretching two fingers beyond what is comfortable, for each millimetre.</summary>
    public double FarApart { get; init; } = 0.05;

    /// <summary>A shift, however small.</summary>
    public double Shift { get; init; } = 3;

    /// <summary>Each millimetre of a shift.</summary>
    public double ShiftMm { get; init; } = 0.05;

    /// <summary>A shift between two notes of one string.</summary>
    public double ShiftInString { get; init; } = 0.5;

    /// <summary>A finger that passes over another during a shift.</summary>
    public double Passing { get; init; } = 4;

    /// <summary>One finger along a string while the hand stays; the millimetres cost as in a shift.</summary>
    public double Slide { get; init; } = 3;

    /// <summary>One finger along a string while the hand shifts.</summary>
    public double Guide { get; init; } = 3;

    /// <summary>One finger to another string and fret.</summary>
    public double Leap { get; init; } = 6;

    /// <summary>One finger to the same fret of the next string.</summary>
    public double Roll { get; init; } = 4;

    /// <summary>Each further string of a roll.</summary>
    public double RollFarther { get; init; } = 1;

    /// <summary>Fingers on one fret, the higher finger on the string farther from the floor.</summary>
    public double Tangle { get; init; } = 2;

    /// <summary>Another finger on the same spot.</summary>
    public double Substitution { get; init; } = 1;

    /// <summary>The weight of a stretch between two fingers; pairs in the order 1-2, 2-3, 3-4, 1-3, 2-4, 1-4.</summary>
    public double StretchOf(Finger lower, Finger higher) =>
        Stretch[
            (higher - lower) switch
            {
                1 => (int)lower - 1,
                2 => (int)lower + 2,
                _ => 5,
            }
        ];
}
