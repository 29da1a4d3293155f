using Fretloom.Sentences.Reading;
using Fretloom.Theory;

namespace Fretloom.Sentences.Show;

/// <summary>Chords in words: <c>D major chord</c>, <c>G major and E minor chords</c>, <c>the A dominant seventh chord</c>.</summary>
internal static class SpokenChords
{
    private static readonly NameTable<ChordQuality> Qualities = new([
        .. ChordQuality.All.Select(quality => (Bare(quality.Name), quality)),
        ("seventh", ChordQuality.Parse("7")),
        ("7th", ChordQuality.Parse("7")),
        ("ninth", ChordQuality.Parse("9")),
        ("sixth", ChordQuality.Parse("6")),
        ("suspended", ChordQuality.Parse("sus4")),
    ]);

    /// <summary>Reads the chords here; null, and nothing read, when there are none.</summary>
    /// <param name="at">The place.</param>
    /// <param name="isIntroduced">Whether <c>chord</c> or <c>chords</c> stood before them; else it must stand behind.</param>
    public static Subject.ChordsBySymbol? Read(Cursor at, bool isIntroduced)
    {
        var chords = new List<Chord>();
        var (next, end) = (0, 0);
        while (ChordAt(at, next) is ({ } chord, var count))
        {
            chords.Add(chord);
            end = next + count;
            if (at.Peek(end).IsAny("chord", "chords", "triad", "triads"))
            {
                at.Skip(end + 1);
                return new(chords.ToValueList());
            }

            if (IsArpeggio(at.Peek(end)))
            {
                at.Skip(end);
                return new(chords.ToValueList());
            }

            next = Series.Next(at, end);
            if (next == end)
            {
                break;
            }
        }

        if (!isIntroduced || chords.Count == 0)
        {
            return null;
        }

        at.Skip(end);
        return new(chords.ToValueList());
    }

    /// <summary>Whether a word says that chords went before it, and how to play them, which is a phrase of its own.</summary>
    public static bool IsArpeggio(Token token) => token.IsAny("arpeggio", "arpeggios");

    private static (Chord? Chord, int Count) ChordAt(Cursor at, int ahead)
    {
        var length = Notes.Read(at, ahead, out var root);
        var (quality, count) = length > 0 ? Qualities.At(at, ahead + length) : default;
        return quality is null ? default : (new Chord(root, quality), length + count);
    }

    // The word chord or triad is not part of the name here.
    private static string Bare(string name) =>
        name.Split(' ') is [.. var words, "triad" or "chord"] ? string.Join(' ', words) : name;
}
