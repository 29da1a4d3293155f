using Fretloom.Sentences;

namespace Fretloom.Tests.Sentences;

/// <summary>What holds of every kind of sentence, whatever it says.</summary>
/// <param name="parse">Reads a sentence.</param>
internal sealed class SentenceLaws<T>(Func<string, SentenceResult<T>> parse)
    where T : notnull
{
    /// <summary>What is printed reads back as the same sentence.</summary>
    public void ReadsBack(T sentence) => Assert.Equal(sentence, Read(sentence.ToString()!));

    /// <summary>What is typed and its canonical form say the same.</summary>
    public void HasForm(string canonical, string typed)
    {
        Assert.Equal(canonical, Read(typed).ToString());
        Assert.Equal(Read(canonical), Read(typed));
    }

    /// <summary>A text is a sentence, or has an error that lies within it and says something in one line.</summary>
    public void IsAnswered(string text)
    {
        var result = parse(text);
        Assert.Equal(result.IsRead, result.Value is not null);
        foreach (var error in result.Errors)
        {
            Assert.InRange(error.Column, 1, text.Length + 1);
            Assert.InRange(error.Length, 0, text.Length + 1 - error.Column);
            Assert.DoesNotContain('\n', error.Message);
            Assert.NotEmpty(error.Message);
        }
    }

    /// <summary>A repair is named in the message, and what is still wrong after it stands behind it.</summary>
    public void IsMended(string text)
    {
        if (parse(text).Errors is [{ Repair: { } repair } error])
        {
            var next = parse(repair.ApplyTo(text));

            Assert.Contains($"did you mean '{repair.Text}'?", error.Message, StringComparison.Ordinal);
            Assert.True(next.IsRead || next.Errors[0].Column > repair.Column + repair.Text.Length - 1);
        }
    }

    /// <summary>Of all sentences with one wrong letter behind the first word that cannot be read, so many in a hundred are mended.</summary>
    public void AreMostlyMended(string sentence, int percent)
    {
        var (mended, tried) = (0, 0);
        for (var at = sentence.IndexOf(' ', StringComparison.Ordinal) + 1; at < sentence.Length; at++)
        {
            var wrong = sentence.Remove(at, 1).Insert(at, "q");
            if (char.IsAsciiLetterLower(sentence[at]) && parse(wrong) is { IsRead: false } result)
            {
                tried++;
                mended += result.Errors[0].Repair?.ApplyTo(wrong) == sentence ? 1 : 0;
            }
        }

        Assert.True(100 * mended >= percent * tried, $"{mended} of {tried}");
    }

    /// <summary>A text without sense, however long, has one error.</summary>
    public void AreAnswered(string signs, int length)
    {
        foreach (var sign in signs)
        {
            Assert.Single(parse(new string(sign, length)).Errors);
        }
    }

    /// <summary>A sentence that must read.</summary>
    public T Read(string text)
    {
        var result = parse(text);
        Assert.True(result.IsRead, $"{text}\n{string.Join('\n', result.Errors)}");
        return result.Value;
    }
}
