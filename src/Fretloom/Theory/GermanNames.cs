using System.Diagnostics.CodeAnalysis;

namespace Fretloom.Theory;

/// <summary>German note names: the endings <c>is</c> and <c>es</c>, drawn together in Es and As, and B for the flat of H.</summary>
internal sealed class GermanNames() : NoteNameSystem("German")
{
    private const string Letters = "CDEFGAH";

    public override string Format(NoteName note, bool unicode = false)
    {
        var letter = Letters[(int)note.Step].ToString();
        return (note.Step, note.Alteration) switch
        {
            (Step.B, -1) => "B",
            (Step.E or Step.A, < 0) => letter + "s" + Endings("es", -note.Alteration - 1),
            (_, < 0) => letter + Endings("es", -note.Alteration),
            _ => letter + Endings("is", note.Alteration),
        };
    }

    // Read besides what is written: Hes for B, and Asas for Ases.
    public override bool TryParse([NotNullWhen(true)] string? text, out NoteName note)
    {
        note = default;
        if (string.IsNullOrEmpty(text))
        {
            return false;
        }

        if (text is "B" or "b" || text.Equals("Asas", StringComparison.OrdinalIgnoreCase))
        {
            note = text.Length == 1 ? new NoteName(Step.B, -1) : new NoteName(Step.A, -2);
            return true;
        }

        var step = Letters.IndexOf(char.ToUpperInvariant(text[0]), StringComparison.Ordinal);
        var rest = text.AsSpan(1);
        var contracted = step is (int)Step.E or (int)Step.A && rest is ['s' or 'S', ..] ? 1 : 0;
        rest = rest[contracted..];
        if (step < 0 || rest.Length % 2 != 0 || rest.Length / 2 + contracted > NoteName.MaxAlteration)
        {
            return false;
        }

        var count = rest.Length / 2;
        if (
            contracted == 0 && step is not ((int)Step.E or (int)Step.A) && IsRun(rest, "es")
            || contracted == 1 && IsRun(rest, "es")
        )
        {
            note = new NoteName((Step)step, -count - contracted);
            return true;
        }

        note = contracted == 0 && IsRun(rest, "is") ? new NoteName((Step)step, count) : default;
        return contracted == 0 && IsRun(rest, "is");
    }

    private static string Endings(string ending, int count) => string.Concat(Enumerable.Repeat(ending, count));

    private static bool IsRun(ReadOnlySpan<char> text, string ending)
    {
        while (text.StartsWith(ending, StringComparison.OrdinalIgnoreCase))
        {
            text = text[ending.Length..];
        }

        return text.IsEmpty;
    }
}
