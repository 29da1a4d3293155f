using Fretloom.Theory;

namespace Fretloom.Sentences.Reading;

/// <summary>Note names and scales in a sentence: <c>Bb</c>, <c>B-flat</c>, <c>B flat</c>; <c>A minor pentatonic</c>.</summary>
internal static class Notes
{
    private static readonly NameTable<ScaleKind> Kinds = new(
        ScaleKind.All.SelectMany(kind => kind.OtherNames.Prepend(kind.Name).Select(name => (name, kind)))
    );

    /// <summary>Every word in the name of a kind of scale.</summary>
    public static IEnumerable<string> KindWords =>
        ScaleKind
            .All.SelectMany(kind => kind.OtherNames.Prepend(kind.Name))
            .SelectMany(name => name.Split(' '))
            .Distinct();

    /// <summary>The note name some tokens ahead, the letter in either case and with at most three accidentals, and how many tokens it takes; 0 when there is none.</summary>
    public static int Read(Cursor at, int ahead, out NoteName name)
    {
        var token = at.Peek(ahead);
        if (
            token.Kind != TokenKind.Word
            || !Scale.TryParseTonic(token.Text, out name)
            || Math.Abs(name.Alteration) > Scale.MaxTonicAlteration
        )
        {
            name = default;
            return 0;
        }

        var isDouble = at.Peek(ahead + 1).Is("double");
        var sign = at.Peek(ahead + (isDouble ? 2 : 1));
        if (name.Alteration != 0 || token.Text.Length > 1 || !sign.IsAny("flat", "sharp"))
        {
            return 1;
        }

        name = new NoteName(name.Step, (sign.Is("flat") ? -1 : 1) * (isDouble ? 2 : 1));
        return isDouble ? 3 : 2;
    }

    /// <summary>The kind of scale some tokens ahead, and how many tokens it takes; null and 0 when there is none.</summary>
    public static (ScaleKind? Kind, int Count) ReadKind(Cursor at, int ahead) => Kinds.At(at, ahead);

    /// <summary>The scale some tokens ahead, without article and the word scale, and how many tokens it takes.</summary>
    public static (Scale? Scale, int Count) ReadScale(Cursor at, int ahead)
    {
        var tonicLength = Read(at, ahead, out var tonic);
        var (kind, kindLength) = tonicLength > 0 ? ReadKind(at, ahead + tonicLength) : default;
        return kind is null ? default : (new Scale(tonic, kind), tonicLength + kindLength);
    }

    /// <summary>The note name some tokens ahead, H too, which is how German names B; and how many tokens it takes.</summary>
    public static int ReadAny(Cursor at, int ahead, out NoteName name)
    {
        if (OfGerman(at.Peek(ahead)) is not { } german)
        {
            return Read(at, ahead, out name);
        }

        name = NoteName.Parse(german);
        return 1;
    }

    /// <summary>The failure for H, which is how German names B; null for anything else.</summary>
    public static Failure? German(Token token) =>
        OfGerman(token) is { } name
            ? Failure.At(token, $"'{token.Text}' is not a note name", Edit.Of(token, name))
            : null;

    private static string? OfGerman(Token token) =>
        token.Text is "H" or "h" ? "B"
        : token.Text is "Hb" or "H-flat" or "H♭" ? "Bb"
        : null;
}
