using System.Globalization;

namespace Fretloom.Studio.Client.Words;

/// <summary>Everything the studio says, in the reader's language. Sentences of the grammar and findings stay English.</summary>
/// <remarks>The words stand in <c>labels.tsv</c>: a row for each key, a column for each language, tab-separated, in the order of the first row, which names them.</remarks>
public sealed class Labels
{
    /// <summary>The language of a key that another language lacks.</summary>
    public const string Fallback = "en";

    private readonly Dictionary<string, string[]> _words = [];
    private readonly string[] _columns;

    /// <summary>Reads the table. JSON would take longer to read than anything else at the start.</summary>
    public Labels()
    {
        using var file = new StreamReader(typeof(Labels).Assembly.GetManifestResourceStream("labels.tsv")!);
        _columns = Cells(file.ReadLine()!)[1..];
        while (file.ReadLine() is { } row)
        {
            var cells = Cells(row);
            if (cells.Length != 1 + _columns.Length)
            {
                throw new InvalidDataException($"labels.tsv: '{cells[0]}' has not one cell for each language.");
            }

            _words.Add(cells[0], cells[1..]);
        }
    }

    /// <summary>The languages there are, by code, English first.</summary>
    public static IReadOnlyList<(string Code, string Name)> Languages { get; } = [("en", "English"), ("de", "Deutsch")];

    /// <summary>The language spoken now.</summary>
    public string Language { get; private set; } = Fallback;

    /// <summary>Raised when another language is chosen.</summary>
    public event Action? Changed;

    /// <summary>Every key, in the order of the file.</summary>
    public IEnumerable<string> Keys => _words.Keys;

    /// <summary>The words of a key.</summary>
    /// <exception cref="KeyNotFoundException">There is no such key.</exception>
    public string this[string key] => In(Language, key) ?? In(Fallback, key)!;

    /// <summary>The words of a key with what belongs in its braces.</summary>
    /// <exception cref="KeyNotFoundException">There is no such key.</exception>
    public string Of(string key, params object[] values) =>
        string.Format(CultureInfo.InvariantCulture, this[key], values);

    /// <summary>The words of a key in one language; null when that language lacks them.</summary>
    public string? In(string language, string key) =>
        Array.IndexOf(_columns, language) is >= 0 and var at && _words[key][at] is { Length: > 0 } words ? words : null;

    /// <summary>Speaks another language; one that is not known leaves things as they are.</summary>
    /// <param name="code">A code such as <c>de</c> or <c>de-AT</c>.</param>
    public void Speak(string code)
    {
        var language = code.Split('-')[0];
        if (language != Language && Languages.Any(known => known.Code == language))
        {
            Language = language;
            Changed?.Invoke();
        }
    }

    private static string[] Cells(string row) => row.Split('\t');
}
