using Fretloom.Neck;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Show;

/// <summary>Spots by string and fret, between spaces, commas and <c>and</c>: <c>5:3 4:2 3:0</c>.</summary>
internal static class SpotList
{
    /// <summary>Reads the spots from here on.</summary>
    public static (Subject? Subject, Failure? Failure) Read(Cursor at, ShowDraft draft)
    {
        var spots = new List<Spot>();
        for (var skip = 0; Spot.TryParse(at.Peek(skip).Text, out var spot); skip = Series.Next(at, 0))
        {
            spots.Add(spot);
            draft.Spots.Add((spot, at.Peek(skip)));
            at.Skip(skip + 1);
        }

        var next = at.Peek(Series.Next(at, 0));
        var wrong = spots.Count == 0 ? at.Current : next;
        return spots.Count == 0 || LooksLikeSpot(next)
            ? (null, Failure.Expected("a spot by string and fret, such as '5:3' for string 5, fret 3", wrong))
            : (new Subject.GivenSpots(spots.ToValueList()), null);
    }

    private static bool LooksLikeSpot(Token token) =>
        token.Kind == TokenKind.Word && token.Text.Contains(':', StringComparison.Ordinal);
}
