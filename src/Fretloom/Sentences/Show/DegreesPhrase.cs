using Fretloom.Sentences.Reading;
using Fretloom.Theory;

namespace Fretloom.Sentences.Show;

/// <summary><c>from I to IV</c>, <c>from degree 1 to 4</c>, behind the chords of the key.</summary>
internal static class DegreesPhrase
{
    /// <summary>Reads the degrees if they stand here, and gives the chords with them.</summary>
    public static (Subject? Subject, Failure? Failure) Read(Cursor at, Subject.ChordsOfTheKey chords)
    {
        var isByNumber = at.Peek(1).IsAny("degree", "degrees");
        if (!at.Is("from") || !(isByNumber || RomanNumeral.TryParse(at.Peek(1).Text, out _)))
        {
            return (chords, null);
        }

        at.Skip(isByNumber ? 2 : 1);
        if (ReadDegree(at, out var from) is { } wrong)
        {
            return (null, wrong);
        }

        if (!at.AcceptAny("to", "through", "up"))
        {
            return (null, Failure.Expected($"'to' and the last degree after '{at.Previous.Text}'", at.Current, "to"));
        }

        at.Accept("to");
        at.Accept("degree");
        return ReadDegree(at, out var to) is { } failure
            ? (null, failure)
            : (chords with { Range = new DegreeRange(from, to) }, null);
    }

    private static Failure? ReadDegree(Cursor at, out int degree)
    {
        var token = at.Current;
        degree =
            Numbers.Cardinal(token)
            ?? (
                RomanNumeral.TryParse(token.Text, out var numeral) && numeral.Degree.IsDiatonic
                    ? numeral.Degree.Number
                    : 0
            );
        if (degree is < 1 or > 7)
        {
            return Failure.Expected("a degree of the key from I to VII", token);
        }

        at.Skip();
        return null;
    }
}
