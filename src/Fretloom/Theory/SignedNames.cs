using System.Diagnostics.CodeAnalysis;

namespace Fretloom.Theory;

/// <summary>Seven names, and signs behind them.</summary>
/// <param name="name">The name of the system.</param>
/// <param name="naturals">The names of C to B.</param>
internal sealed class SignedNames(string name, string[] naturals) : NoteNameSystem(name)
{
    public override string Format(NoteName note, bool unicode = false) =>
        naturals[(int)note.Step]
        + (unicode ? Accidentals.Unicode(note.Alteration) : Accidentals.Ascii(note.Alteration));

    public override bool TryParse([NotNullWhen(true)] string? text, out NoteName note)
    {
        for (var step = 0; step < naturals.Length && text is not null; step++)
        {
            var natural = naturals[step];
            if (
                text.StartsWith(natural, StringComparison.OrdinalIgnoreCase)
                && Accidentals.Read(text.AsSpan(natural.Length), out var alteration) == text.Length - natural.Length
            )
            {
                note = new NoteName((Step)step, alteration);
                return true;
            }
        }

        note = default;
        return false;
    }
}
