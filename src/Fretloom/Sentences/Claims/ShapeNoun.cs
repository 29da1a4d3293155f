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
            return Failure.Expected(
                "a shape (third, triad, seventh or sixth shape; after 'the' also 'dominant seventh shape', 'V7 shape')",
                at.Current,
                ShapeNouns.Words
            );
        }

        family = named;
        return ReadName(at, count);
    }

    /// <summary>Reads a name of some words and <c>shape</c>.</summary>
    public Failure? ReadName(Cursor at, int count)
    {
        First = at.Current;
        at.Skip(count);
        Last = at.Current;
        at.Skip(ShapeNouns.IsNoun(Last) ? 1 : 0);
        return ShapeNouns.IsNoun(Last)
            ? null
            : Failure.Expected($"'shape' after '{at.Previous.Text}'", Last, "shape", "shapes");
    }

    /// <summary>Reads degree, voicing and strings, in any order.</summary>
    public Failure? ReadRest(Cursor at, bool mayHaveDegree)
    {
        while (true)
        {
            Failure? failure;
            if (mayHaveDegree && Degree is null && at.Is("on"))
            {
                at.Skip();
                failure = Degrees.Read(at, out var degree);
                Degree = degree;
            }
            else if (at.Accept("in"))
            {
                failure = Voicings.ReadAfter(at);
            }
            else if (Of is null && at.Is("of"))
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

    /// <summary>The failure for a shape that cannot lie on its strings or be voiced so; null when it can.</summary>
    public Failure? Check(int notes, string word) =>
        Voicings.Check(notes, $"{Article(word)} {word} shape")
        ?? ShapeStrings.Check(scope, Of, First, Last, notes, word);

    private static string Article(string word) => ShapeStrings.Article(word);
}
