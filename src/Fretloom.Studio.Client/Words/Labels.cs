using System.Globalization;
using System.Text.Json;

namespace Fretloom.Studio.Client.Words;

/// <summary>Everything the studio says, in the reader's language. Sentences of the grammar and findings stay English.</summary>
/// <remarks>The words stand in <c>labels.json</c>: for each key an object with the languages.</remarks>
public sealed class Labels
{
    /// <summary>The language of a key that another language lacks.</summary>
    public const string Fallback = "en";

    private readonly Dictionary<string, Dictionary<string, string>> _words = Read();

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
    public string this[string key] => In(Language, key) ?? _words[key][Fallback];

    /// <summary>The words of a key with what belongs in its braces.</summary>
    /// <exception cref="KeyNotFoundException">There is no such key.</exception>
    public string Of(string key, params object[] values) =>
        string.Format(CultureInfo.InvariantCulture, this[key], values);

    /// <summary>The words of a key in one language; null when that language lacks them.</summary>
    public string? In(string language, string key) => _words[key].GetValueOrDefault(language);

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

    // Word by word: a document of the whole file would take longer to set up than to read.
    private static Dictionary<string, Dictionary<string, string>> Read()
    {
        using var file = typeof(Labels).Assembly.GetManifestResourceStream("labels.json")!;
        var text = new byte[file.Length];
        file.ReadExactly(text);
        var words = new Dictionary<string, Dictionary<string, string>>();
        var (key, language) = ("", "");
        var json = new Utf8JsonReader(text);
        while (json.Read())
        {
            if (json.TokenType == JsonTokenType.String)
            {
                words[key].Add(language, json.GetString()!);
            }
            else if (json is { TokenType: JsonTokenType.PropertyName, CurrentDepth: 1 })
            {
                words.Add(key = json.GetString()!, []);
            }
            else if (json.TokenType == JsonTokenType.PropertyName)
            {
                language = json.GetString()!;
            }
        }

        return words;
    }
}
