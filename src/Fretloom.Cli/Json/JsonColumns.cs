using System.Globalization;
using System.Text;
using System.Text.Json;

namespace Fretloom.Cli.Json;

/// <summary>Where something stands in a line of JSON: columns count characters from 1.</summary>
internal sealed class JsonColumns
{
    private readonly byte[] _bytes;
    private readonly Dictionary<string, long> _names = [];
    private readonly Dictionary<string, long> _values = [];

    private JsonColumns(string line)
    {
        _bytes = Encoding.UTF8.GetBytes(line);
        var reader = new Utf8JsonReader(_bytes);
        if (reader.Read())
        {
            Walk(ref reader, "");
        }
    }

    /// <summary>Where a part of a well-formed line stands, or 1 when it has no such part.</summary>
    /// <param name="line">The line.</param>
    /// <param name="path">The part: <c>on</c>, <c>spots[2]</c>, <c>spots[2].fret</c>.</param>
    /// <param name="column">Where in the part, if it is a text, counted from 1.</param>
    public static int Of(string line, string path, int column)
    {
        var columns = new JsonColumns(line);
        return columns._values.TryGetValue(path, out var start)
            ? columns.Column(start) + Offset(line, columns.Column(start) - 1, column)
            : 1;
    }

    /// <summary>Where a line is not what it should be: the name that is unknown, the value that is wrong, or where it breaks.</summary>
    public static int Of(string line, JsonException problem)
    {
        try
        {
            var columns = new JsonColumns(line);
            var path = problem.Path?.TrimStart('$', '.') ?? "";
            return IsUnknown(path) && columns._names.TryGetValue(path, out var name) ? columns.Column(name)
                : columns._values.TryGetValue(path, out var value) ? columns.Column(value)
                : 1;
        }
        catch (JsonException broken)
        {
            var bytes = Encoding.UTF8.GetBytes(line);
            var start = Math.Min(bytes.LongLength, broken.BytePositionInLine ?? 0);
            return Encoding.UTF8.GetCharCount(bytes, 0, (int)start) + 1;
        }
    }

    private static bool IsUnknown(string path) =>
        !Documents
            .Contract.FingerRequestDocument.Properties.Concat(Documents.Contract.SpotDocument.Properties)
            .Any(known => path.Split('.')[^1].Split('[')[0] == known.Name);

    private int Column(long start) => Encoding.UTF8.GetCharCount(_bytes, 0, (int)start) + 1;

    // Past the quotation mark, and past the signs before the column, of which some are written as \n or \u0041.
    private static int Offset(string line, int start, int column)
    {
        if (line[start] != '"')
        {
            return 0;
        }

        var at = start + 1;
        for (var sign = 1; sign < column && line[at] != '"'; sign++)
        {
            at +=
                line[at] != '\\' ? 1
                : line[at + 1] == 'u' ? 6
                : 2;
        }

        return at - start;
    }

    private void Walk(ref Utf8JsonReader reader, string path)
    {
        _values[path] = reader.TokenStartIndex;
        if (reader.TokenType == JsonTokenType.StartArray)
        {
            for (var index = 0; reader.Read() && reader.TokenType != JsonTokenType.EndArray; index++)
            {
                Walk(ref reader, string.Create(CultureInfo.InvariantCulture, $"{path}[{index}]"));
            }
        }
        else if (reader.TokenType == JsonTokenType.StartObject)
        {
            while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
            {
                var inner = path.Length == 0 ? reader.GetString()! : $"{path}.{reader.GetString()}";
                _names[inner] = reader.TokenStartIndex;
                reader.Read();
                Walk(ref reader, inner);
            }
        }
    }
}
