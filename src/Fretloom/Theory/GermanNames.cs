using System.Diagnostics.CodeAnalysis;

namespace Fretloom.Theory;

/// <summary>German note names: the endings <c>is</c> and <c>es</c>, drawn together in Es and As, and B for the flat of H.</summary>
internal sealed class GermanNames : NoteNameSystem
{
    private const string Letters = "CDEFGAH";

    private readonly Dictionary<string, NoteName> _notes = new(StringComparer.OrdinalIgnoreCase)
    {
        // Read, but not written.
        ["Hes"] = new NoteName(Step.B, -1),
        ["Asas"] = new NoteName(Step.A, -2),
    };

    public GermanNames()
        : base("German")
    {
        for (var step = Step.C; step <= Step.B; step++)
        {
            for (var alteration = -NoteName.MaxAlteration; alteration <= NoteName.MaxAlteration; alteration++)
            {
                var note = new NoteName(step, alteration);
                _notes.Add(Format(note), note);
            }
        }
    }

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

    public override bool TryParse([NotNullWhen(true)] string? text, out NoteName note)
    {
        note = default;
        return text is not null && _notes.TryGetValue(text, out note);
    }

    private static string Endings(string ending, int count) => string.Concat(Enumerable.Repeat(ending, count));
}
