using Fretloom.Sentences.Reading;
using Fretloom.Sentences.Show;

namespace Fretloom.Sentences.Play;

/// <summary>What to say where no phrase of a play sentence begins.</summary>
internal static class PlayOpenings
{
    private static readonly string[] Words =
    [
        .. SubjectPhrase.Openings,
        "up",
        "down",
        "from",
        "in",
        "at",
        "on",
        "as",
        "with",
        "without",
        "twice",
        "through",
        "strum",
        "strummed",
        "picked",
        "sustained",
        "short",
        "for",
        "frets",
    ];

    /// <summary>The failure for the word here.</summary>
    /// <param name="at">The place.</param>
    /// <param name="isSeparated">Whether the word stands at the beginning, or behind a comma or <c>and</c>.</param>
    public static Failure At(Cursor at, bool isSeparated)
    {
        var found = at.Current;
        return found.Is("in") ? AfterIn(at)
            : found.IsAny("on", "for") ? Openings.At(at, isSeparated)
            : found.Is("with")
                ? Failure.Expected(
                    "'a count-in', 'a capo at 2', 'fingers' or 'the thumb' after 'with'",
                    at.Peek(at.Peek(1).IsAny("a", "the") ? 2 : 1),
                    "count-in",
                    "capo",
                    "fingers",
                    "thumb"
                )
            : found.Kind == TokenKind.End
                ? Failure.Expected(
                    at.Previous.Kind == TokenKind.Comma || at.Previous.Is("and")
                        ? $"another phrase after '{at.Previous.Text}'"
                        : PlayChecks.WhatToPlay,
                    found
                )
            : Symbols.Misread(at)
                ?? Failure.At(
                    found,
                    isSeparated
                        ? $"expected what to play (such as 'the scale'), an order ('up and down'), a rhythm ('in eighths'), a tempo ('at 72') or a place ('on strings 4-1'), found {Failure.Shown(found)}"
                        : $"expected a comma and another phrase, or the end of the sentence, found {Failure.Shown(found)}",
                    [.. Symbols.Capitals(found), .. Spelling.Edits(found, Words)]
                );
    }

    /// <summary>The failure for a label, which a play sentence has none of.</summary>
    public static Failure AfterAs(Cursor at) =>
        Failure.Expected("'arpeggios' or 'block chords' after 'as'", at.Peek(1), "arpeggios", "block", "chords");

    private static Failure AfterIn(Cursor at) =>
        Failure.Expected(
            "a rhythm such as 'eighths', a metre such as '3/4', a key such as 'D major', 'every key', 'broken thirds' or 'fifth position' after 'in'",
            at.Peek(1),
            [
                .. ValuePhrase.Words,
                "broken",
                "groups",
                "every",
                "close",
                "drop",
                "any",
                "root",
                "the",
                .. Numbers.OrdinalWords,
            ]
        );
}
