using System.Globalization;
using Fretloom.Neck;

namespace Fretloom.Hand;

/// <summary>What a teacher asks of a fingering.</summary>
/// <remarks>The text of a rule is in a teacher's words, and reads back to the rule. Notes are counted from 0 in code and from 1 in words.</remarks>
public abstract record LineRule
{
    private LineRule() { }

    /// <summary>The first note is stopped with this finger, or left open: <c>start with finger 2</c>, <c>start open</c>.</summary>
    public sealed record StartWith : LineRule
    {
        /// <summary>Makes the rule.</summary>
        /// <param name="finger">Index to little, or none for the open string.</param>
        /// <exception cref="ArgumentOutOfRangeException">The thumb or no finger.</exception>
        public StartWith(Finger finger) => Finger = Checked(finger, Finger.None);

        /// <summary>Index to little, or none for the open string.</summary>
        public Finger Finger { get; }

        /// <inheritdoc/>
        public override string ToString() => $"start {Stopped(Finger)}";
    }

    /// <summary>The last note is stopped with this finger, or left open: <c>end with finger 1</c>, <c>end open</c>.</summary>
    public sealed record EndWith : LineRule
    {
        /// <inheritdoc cref="StartWith(Finger)"/>
        public EndWith(Finger finger) => Finger = Checked(finger, Finger.None);

        /// <summary>Index to little, or none for the open string.</summary>
        public Finger Finger { get; }

        /// <inheritdoc/>
        public override string ToString() => $"end {Stopped(Finger)}";
    }

    /// <summary>The first note is played on a certain string: <c>start on string 3</c>.</summary>
    public sealed record StartOn : LineRule
    {
        /// <summary>Makes the rule.</summary>
        /// <param name="stringNumber">The string, 1 (nearest the floor) to 99.</param>
        /// <exception cref="ArgumentOutOfRangeException">The number is out of range.</exception>
        public StartOn(int stringNumber) => String = Checked(stringNumber, 1, nameof(stringNumber));

        /// <summary>The string, counted from 1 nearest the floor.</summary>
        public int String { get; }

        /// <inheritdoc/>
        public override string ToString() => Say($"start on string {String}");
    }

    /// <summary>The last note is played on a certain string: <c>end on string 3</c>.</summary>
    public sealed record EndOn : LineRule
    {
        /// <inheritdoc cref="StartOn(int)"/>
        public EndOn(int stringNumber) => String = Checked(stringNumber, 1, nameof(stringNumber));

        /// <summary>The string, counted from 1 nearest the floor.</summary>
        public int String { get; }

        /// <inheritdoc/>
        public override string ToString() => Say($"end on string {String}");
    }

    /// <summary>The hand stays where the index finger lies at one fret: <c>stay in position 5</c>.</summary>
    public sealed record StayIn : LineRule
    {
        /// <summary>Makes the rule.</summary>
        /// <param name="position">The fret of the index finger, 1 to 99.</param>
        /// <exception cref="ArgumentOutOfRangeException">The fret is out of range.</exception>
        public StayIn(int position) => Position = Checked(position, 1, nameof(position));

        /// <summary>The fret of the index finger, 1 to 99.</summary>
        public int Position { get; }

        /// <inheritdoc/>
        public override string ToString() => Say($"stay in position {Position}");
    }

    /// <summary>Every note is stopped: <c>no open strings</c>.</summary>
    public sealed record NoOpenStrings : LineRule
    {
        /// <inheritdoc/>
        public override string ToString() => "no open strings";
    }

    /// <summary>A finger is not used: <c>never finger 4</c>.</summary>
    public sealed record Never : LineRule
    {
        /// <summary>Makes the rule.</summary>
        /// <exception cref="ArgumentOutOfRangeException">Not a finger from index to little.</exception>
        public Never(Finger finger) => Finger = Checked(finger, Finger.Index);

        /// <summary>Index to little.</summary>
        public Finger Finger { get; }

        /// <inheritdoc/>
        public override string ToString() => $"never finger {(int)Finger}";
    }

    /// <summary>Every note lies on these frets: <c>within frets 5-9</c>.</summary>
    /// <param name="Frets">Open strings count as the fret where they begin.</param>
    public sealed record Within(FretRange Frets) : LineRule
    {
        /// <inheritdoc/>
        public override string ToString() => $"within frets {Frets}";
    }

    /// <summary>One note is played on a certain string: <c>note 3 on string 3</c>.</summary>
    public sealed record OnString : LineRule
    {
        /// <summary>Makes the rule.</summary>
        /// <param name="note">The note, counted from 0.</param>
        /// <param name="stringNumber">The string, 1 (nearest the floor) to 99.</param>
        /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
        public OnString(int note, int stringNumber) =>
            (Note, String) = (CheckedNote(note), Checked(stringNumber, 1, nameof(stringNumber)));

        /// <summary>The note, counted from 0.</summary>
        public int Note { get; }

        /// <summary>The string, counted from 1 nearest the floor.</summary>
        public int String { get; }

        /// <inheritdoc/>
        public override string ToString() => Say($"note {Note + 1} on string {String}");
    }

    /// <summary>One note is stopped with a certain finger, or left open: <c>note 3 with finger 1</c>, <c>note 3 open</c>.</summary>
    public sealed record WithFinger : LineRule
    {
        /// <summary>Makes the rule.</summary>
        /// <param name="note">The note, counted from 0.</param>
        /// <param name="finger">Index to little, or none for the open string.</param>
        /// <exception cref="ArgumentOutOfRangeException">The note is negative, or it is the thumb or no finger.</exception>
        public WithFinger(int note, Finger finger) =>
            (Note, Finger) = (CheckedNote(note), Checked(finger, Finger.None));

        /// <summary>The note, counted from 0.</summary>
        public int Note { get; }

        /// <summary>Index to little, or none for the open string.</summary>
        public Finger Finger { get; }

        /// <inheritdoc/>
        public override string ToString() => Say($"note {Note + 1} {Stopped(Finger)}");
    }

    private static string Stopped(Finger finger) => finger == Finger.None ? "open" : $"with finger {(int)finger}";

    private static Finger Checked(Finger finger, Finger least) =>
        finger >= least && finger <= Finger.Little
            ? finger
            : throw new ArgumentOutOfRangeException(nameof(finger), finger, "Lines are played with fingers 1 to 4.");

    private static int Checked(int number, int least, string parameter) =>
        number >= least && number <= 99
            ? number
            : throw new ArgumentOutOfRangeException(parameter, number, "Strings and frets are 1 to 99.");

    private static int CheckedNote(int note)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(note);
        ArgumentOutOfRangeException.ThrowIfEqual(note, int.MaxValue);
        return note;
    }

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
