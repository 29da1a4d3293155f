using Fretloom.Claims;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Claims;

/// <summary>The name of a shape and what stands around it.</summary>
internal sealed class ShapeNoun(Scope scope)
{
    public Voicings Voicings { get; } = new();

    public OtherStrings? Of { get; private set; }

    public int? Degree { get; private set; }

    public Token First { get; private set; }

    public Token Last { get; private set; }

    /// <summary>Reads <c>seventh shape</c>.</summary>
    public Failure? ReadFamily(Cursor at, out ShapeFamily family)
    {
        family = default;
        if (Voicings.ReadBefore(at) is { } failure)
        {
            return failure;
        }

        if (ShapeNouns.Family(at) is not ({ } named, var count))
        {
            return Extended(at.Current)
                ?? Failure.Expected(
                    "a shape (third, triad, seventh, sixth, octave or tenth shape; after 'the' also 'dominant seventh shape', 'V7 shape')",
                    at.Current,
                    ShapeNouns.Words
                );
        }

        family = named;
        return ReadName(at, count);
    }

    // A ninth chord, and what is stacked above it.
    private static Failure? Extended(Token token) =>
        (Numbers.Ordinal(token) ?? Numbers.Ordinal(token with { Text = token.Text.TrimEnd('s') })) is { } ordinal
        && ordinal is 9 or 11 or 13
            ? Failure.At(
                token,
                $"of {Numbers.OrdinalWord(ordinal)} chords a claim names one by its numeral, such as 'the V{CountWords.Number(ordinal)} shape'; 'every' goes with third, triad, seventh, sixth, octave and tenth shapes"
            )
            : null;

    /// <summary>Reads a name of some words and <c>shape</c>, which may be left out.</summary>
    public Failure? ReadName(Cursor at, int count)
    {
        First = at.Current;
        at.Skip(count);
        var next = at.Current;
        var isUnknown = next.Kind == TokenKind.Word && !Vocabulary.Knows(next.Text);
        at.Skip(ShapeNouns.IsNoun(next) ? 1 : 0);
        Last = at.Previous;
        return isUnknown ? Failure.Expected($"'shape' after '{Last.Text}'", next, "shape", "shapes") : null;
    }

    /// <summary>Reads degree, voicing and strings, in any order.</summary>
    public Failure? ReadRest(Cursor at, bool mayHaveDegree)
    {
        while (true)
        {
            Failure? failure;
            if (mayHaveDegree && Degree is null && at.Is("on") && !at.Peek(1).IsAny("strings", "string", "the", "my"))
            {
                at.Skip();
                failure = Degrees.Read(at, out var degree);
                Degree = degree;
            }
            else if (!mayHaveDegree && at.Is("on") && at.Peek(1).Is("degree"))
            {
                return Failure.At(
                    at.Current,
                    at.Peek(2),
                    "only one shape stands on a degree: say 'the seventh shape on degree 5', or 'the V7 shape'"
                );
            }
            else if (at.Accept("in"))
            {
                failure = Voicings.ReadAfter(at);
            }
            else if (Of is null && OfStrings.Begins(at))
            {
                failure = OfStrings.Read(at, scope, out var of);
                Of = of;
            }
            else
            {
                return null;
            }

            if (failure is not null)
            {
                return failure;
            }
        }
    }

    /// <summary>The family that is meant: on two strings a sixth that is not called a chord has two notes.</summary>
    public ShapeFamily Meant(ShapeFamily named) =>
        named == ShapeFamily.Sixth && scope.CountOf(Of) == 2 && !Last.IsAny("chord", "chords")
            ? ShapeFamily.TwoNoteSixth
            : named;

    /// <summary>The failure for a shape that cannot lie on its strings or be voiced so; null when it can.</summary>
    public Failure? Check(ShapeSet shapes, string word) =>
        Voicings.Check(shapes, $"{Article(word)} {word} shape")
        ?? ShapeStrings.Check(scope, Of, First, Last, shapes.Notes, word);

    private static string Article(string word) => ShapeStrings.Article(word);
}
