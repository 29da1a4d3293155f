using System.Buffers;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Claims;

/// <summary>Signs that no claim can hold.</summary>
internal static class Signs
{
    private static readonly SearchValues<char> Foreign = SearchValues.Create(";:!?\"“”„«»[]{}<>=|\\@$%&*_~^`…¿¡");

    /// <summary>The failure for the first such sign, or for a full stop before the end; null when there is none.</summary>
    public static Failure? Unreadable(string text)
    {
        var length = text.AsSpan().TrimEnd().Length;
        for (var at = 0; at < length; at++)
        {
            var isInnerStop = text[at] == '.' && at < length - 1 && !char.IsAsciiDigit(text[at + 1]);
            if (isInnerStop)
            {
                return new Failure(at, 1, "a claim is one sentence: cannot read on after '.' here");
            }

            if (Foreign.Contains(text[at]))
            {
                return new Failure(at, 1, $"cannot read '{text[at]}' here");
            }
        }

        return null;
    }
}
