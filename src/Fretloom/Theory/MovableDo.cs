using System.Diagnostics.CodeAnalysis;

namespace Fretloom.Theory;

/// <summary>Movable do: syllables that tell a note's place in a key, do re mi fa so la ti.</summary>
/// <remarks>
/// Minor is la-based: the tonic of a minor key is la, and that of a mode its place in the major scale of the same notes (dorian re,
/// phrygian mi, lydian fa, mixolydian so, locrian ti), so that half-steps are always mi-fa and ti-do. Harmonic major and double harmonic begin on do.
/// Raised: di ri fi si li; lowered: ra me se le te. Any other alteration is the plain syllable and signs: <c>mi#</c>, <c>fab</c>.
/// Common practice, no source.
/// </remarks>
internal sealed class MovableDo : NoteNameSystem
{
    private static readonly string[] Plain = ["do", "re", "mi", "fa", "so", "la", "ti"];
    private static readonly string?[] Raised = ["di", "ri", null, "fi", "si", "li", null];
    private static readonly string?[] Lowered = [null, "ra", "me", null, "se", "le", "te"];

    private readonly NoteName _do;

    public MovableDo(Key key)
        : base($"movable do in {key}") => _do = DoOf(key);

    public override string Format(NoteName note, bool unicode = false)
    {
        var above = _do.IntervalTo(note);
        var alteration = above.AlterationFromMajor;
        var single = alteration switch
        {
            1 => Raised[above.Steps],
            -1 => Lowered[above.Steps],
            _ => null,
        };
        return single
            ?? Plain[above.Steps] + (unicode ? Accidentals.Unicode(alteration) : Accidentals.Ascii(alteration));
    }

    public override bool TryParse([NotNullWhen(true)] string? text, out NoteName note)
    {
        note = default;
        if (text is not { Length: >= 2 })
        {
            return false;
        }

        var syllable = text[..2].ToLowerInvariant();
        var signs = Accidentals.Read(text.AsSpan(2), out var alteration, 2 * NoteName.MaxAlteration);
        if (2 + signs != text.Length)
        {
            return false;
        }

        if (Array.IndexOf(Plain, syllable) is >= 0 and var plain)
        {
            return TryPlace(plain, alteration, out note);
        }

        return signs == 0
            && (
                (Array.IndexOf(Raised, syllable) is >= 0 and var raised && TryPlace(raised, 1, out note))
                || (Array.IndexOf(Lowered, syllable) is >= 0 and var lowered && TryPlace(lowered, -1, out note))
            );
    }

    private bool TryPlace(int steps, int alteration, out NoteName note)
    {
        var natural = _do.Plus(ScaleKind.Major.Intervals[steps]);
        var isNote = Math.Abs(natural.Alteration + alteration) <= NoteName.MaxAlteration;
        note = isNote ? new NoteName(natural.Step, natural.Alteration + alteration) : default;
        return isNote;
    }

    // Fifths from the tonic to do.
    private static NoteName DoOf(Key key)
    {
        var kind = key.Kind;
        var fifths =
            kind == ScaleKind.Lydian ? 1
            : kind == ScaleKind.Mixolydian ? -1
            : kind == ScaleKind.Dorian ? -2
            : kind == ScaleKind.Phrygian ? -4
            : kind == ScaleKind.Locrian ? -5
            : kind.IsMinor ? -3
            : 0;
        return NoteName.FromFifths(key.Tonic.FifthsFromC + fifths);
    }
}
