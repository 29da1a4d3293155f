using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace Fretloom.Theory;

/// <summary>The distance between two spelled notes: letters apart and semitones apart.</summary>
/// <remarks>
/// Descending intervals have negative <see cref="Steps"/> (or no steps and negative semitones).
/// The <c>default</c> is the perfect unison. Text is quality and number, <c>P5</c>, <c>m3</c>, <c>A4</c>, <c>dd7</c>, descending <c>-M2</c>.
/// </remarks>
public readonly record struct Interval
{
    private const int MaxSteps = 700;
    private const int MaxDeviation = 28;

    /// <summary>Makes an interval.</summary>
    /// <param name="steps">Letters apart: 0 unison, 2 third, 7 octave; negative downward; -700 to 700, a hundred octaves.</param>
    /// <param name="semitones">Semitones apart; negative downward.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// Too many letters, or semitones more than 28 away from the major or perfect size (two names twelve accidentals off, on letters whose own
    /// distance is off by a few).
    /// </exception>
    public Interval(int steps, int semitones)
    {
        if (steps is < -MaxSteps or > MaxSteps)
        {
            throw new ArgumentOutOfRangeException(nameof(steps), steps, "An interval spans at most 700 letters.");
        }

        if (semitones < NaturalSemitones(steps) - MaxDeviation || semitones > NaturalSemitones(steps) + MaxDeviation)
        {
            throw new ArgumentOutOfRangeException(
                nameof(semitones),
                semitones,
                "The semitones do not fit so many letters."
            );
        }

        Steps = steps;
        Semitones = semitones;
    }

    /// <summary>Letters apart, negative when descending.</summary>
    public int Steps { get; }

    /// <summary>Semitones apart: the chromatic size.</summary>
    public int Semitones { get; }

    /// <summary>The number theory books use: 1 unison, 3 third, 8 octave, 9 ninth; always positive.</summary>
    public int Number => Math.Abs(Steps) + 1;

    /// <summary>Whether it goes down.</summary>
    public bool IsDescending => Steps < 0 || (Steps == 0 && Semitones < 0);

    /// <summary>The letters P, M, m, or a run of A (augmented) or d (diminished).</summary>
    public string Quality
    {
        get
        {
            var up = IsDescending ? Negated() : this;
            var deviation = up.Semitones - NaturalSemitones(up.Steps);
            var isPerfect = up.Steps % 7 is 0 or 3 or 4;
            return (isPerfect, deviation) switch
            {
                (true, 0) => "P",
                (false, 0) => "M",
                (false, -1) => "m",
                (_, > 0) => new string('A', deviation),
                (true, _) => new string('d', -deviation),
                (false, _) => new string('d', -deviation - 1),
            };
        }
    }

    /// <summary>
    /// How far the size is from the major scale's (perfect or major) interval of that number, in semitones; -1 from C sharp to the
    /// C on the same letter, which is b1.
    /// </summary>
    public int AlterationFromMajor => (Semitones - NaturalSemitones(Steps)) * (Steps < 0 ? -1 : 1);

    /// <summary>The same distance the other way.</summary>
    public Interval Negated() => new(-Steps, -Semitones);

    /// <summary>The sum of two intervals.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The sum is beyond what the constructor allows.</exception>
    public Interval Plus(Interval other) => new(Steps + other.Steps, Semitones + other.Semitones);

    /// <summary>The interval that completes this one to an octave: a third becomes a sixth. Beyond the octave it descends.</summary>
    public Interval Inverted() => new(7 - Steps, 12 - Semitones);

    /// <summary>The number with accidentals against the major scale: <c>b3</c>, <c>5</c>, <c>#11</c>.</summary>
    public string ToDegreeText() =>
        Accidentals.Ascii(AlterationFromMajor) + Number.ToString(CultureInfo.InvariantCulture);

    /// <summary>
    /// The number of a member of a chord or scale; with an accidental against the major scale only where two of the members share it.
    /// </summary>
    internal string MemberText(ValueList<Interval> members)
    {
        var number = Number;
        return members.Count(other => other.Number == number) > 1
            ? ToDegreeText()
            : number.ToString(CultureInfo.InvariantCulture);
    }

    /// <summary>Reads an interval written as by <see cref="ToString"/>.</summary>
    /// <exception cref="FormatException">The text is not an interval.</exception>
    public static Interval Parse(string text) =>
        TryParse(text, out var interval)
            ? interval
            : throw new FormatException($"'{text}' is not an interval such as P5 or m3.");

    /// <summary>Reads an interval if the whole text is one.</summary>
    public static bool TryParse([NotNullWhen(true)] string? text, out Interval interval)
    {
        interval = default;
        var body = text.AsSpan().TrimStart('-');
        var isDescending = text is not null && body.Length == text.Length - 1;
        if (text is null || (!isDescending && body.Length != text.Length))
        {
            return false;
        }

        var letters = body.IndexOfAnyInRange('0', '9');
        if (
            letters is < 1 or > MaxDeviation
            || !int.TryParse(body[letters..], NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            || number is < 1 or > MaxSteps + 1
        )
        {
            return false;
        }

        if (
            Deviation(body[..letters], (number - 1) % 7 is 0 or 3 or 4) is not { } deviation
            || deviation < -MaxDeviation
            || (number == 1 && deviation < 0)
        )
        {
            return false;
        }

        var up = new Interval(number - 1, NaturalSemitones(number - 1) + deviation);
        interval = isDescending ? up.Negated() : up;
        return !isDescending || interval != up;
    }

    /// <summary>Quality and number, with a minus sign when descending: <c>m3</c>, <c>-P4</c>.</summary>
    public override string ToString() =>
        (IsDescending ? "-" : "") + Quality + Number.ToString(CultureInfo.InvariantCulture);

    private static int? Deviation(ReadOnlySpan<char> quality, bool isPerfect) =>
        quality switch
        {
            "P" when isPerfect => 0,
            "M" when !isPerfect => 0,
            "m" when !isPerfect => -1,
            _ when quality.Count('A') == quality.Length => quality.Length,
            _ when quality.Count('d') == quality.Length => isPerfect ? -quality.Length : -quality.Length - 1,
            _ => null,
        };

    private static int NaturalSemitones(int steps) =>
        steps < 0 ? -NaturalSemitones(-steps) : 12 * (steps / 7) + ((Step)(steps % 7)).Semitones();
}
