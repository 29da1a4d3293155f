namespace Fretloom.Studio.Client.Write.Desk;

/// <summary>Puts a block into a lesson where it stands alone: between paragraphs, never inside another block or what stands above the text.</summary>
internal static class BlockPlace
{
    /// <summary>Puts a block in at the cursor, or below the paragraph or block that the cursor stands in; at the end without a cursor.</summary>
    /// <param name="text">The lesson.</param>
    /// <param name="cursor">Where the cursor stands, counted in UTF-16 units from 0; null for nowhere.</param>
    /// <param name="block">The block.</param>
    /// <returns>The new text, and where the cursor stands in it: in the line below the block, which is empty; where more follows, an empty one lies between.</returns>
    public static (string Text, int Cursor) Put(string text, int? cursor, string block)
    {
        var (place, fence) = GapFrom(cursor ?? text.Length, text);
        var (before, after) = (text[..place].TrimEnd(), text[place..].TrimStart('\n'));
        before += fence.Length > 0 ? $"\n{fence}" : "";
        var start = before.Length == 0 ? "" : before + "\n\n";
        var end = start + block.TrimEnd() + "\n";
        return (after.Length == 0 ? end : end + "\n\n" + after, end.Length);
    }

    // The beginning of the first empty line there or below that parts two paragraphs or blocks; the end where there is none, with the fence of a block that
    // is still open there, which is to be closed first.
    private static (int Place, string OpenFence) GapFrom(int cursor, string text)
    {
        var above = LessonSlices.Front(text).Length;
        var fence = "";
        var start = 0;
        foreach (var line in text.Split('\n'))
        {
            var words = line.Trim();
            if (start < above)
            {
                // What stands above the text is fenced too.
            }
            else if (fence.Length > 0)
            {
                fence =
                    words.StartsWith(fence, StringComparison.Ordinal) && words.Trim(fence[0]).Length == 0 ? "" : fence;
            }
            else if (
                words.StartsWith("```", StringComparison.Ordinal) || words.StartsWith("~~~", StringComparison.Ordinal)
            )
            {
                fence = words[..(words.Length - words.TrimStart(words[0]).Length)];
            }
            else if (words.Length == 0 && cursor <= start + line.Length)
            {
                return (start, "");
            }

            start += line.Length + 1;
        }

        return (text.Length, fence);
    }
}
