using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Fretloom.Lessons.Yaml;

/// <summary>One key and its value in a YAML mapping, with their places in the file, counted from 0.</summary>
internal readonly record struct YamlEntry(string Key, int KeyOffset, string Value, int ValueOffset)
{
    /// <summary>The key whose value is the mapping that holds this entry; null for an entry of the outermost one.</summary>
    public string? Parent { get; init; }
}

/// <summary>
/// Reads YAML that is one flat mapping of words to words; keys that are said to may hold another such mapping. It works on the event stream, so that no nesting, however
/// deep, uses the stack; whatever is nested or refers to another place is an error. Anchors and tags are passed over.
/// </summary>
internal static class FlatYaml
{
    /// <summary>The entries in order; what could not be read is left out and reported.</summary>
    /// <param name="text">The YAML.</param>
    /// <param name="offsetOf">Gives the place in the file of a line and a column of <paramref name="text"/>, both counted from 1.</param>
    /// <param name="known">The keys that may stand there, each once.</param>
    /// <param name="found">Takes the findings.</param>
    /// <param name="mappings">Those of the known keys whose value is a mapping; any words may be its keys, each once.</param>
    public static List<YamlEntry> Read(
        string text,
        Func<long, long, int> offsetOf,
        IReadOnlyCollection<string> known,
        DiagnosticList found,
        params IReadOnlyCollection<string> mappings
    )
    {
        var entries = new List<YamlEntry>();
        try
        {
            var parser = new Parser(new StringReader(text));
            parser.Consume<StreamStart>();
            if (!parser.TryConsume<DocumentStart>(out _) || parser.Accept<DocumentEnd>(out _))
            {
                return entries;
            }

            if (!parser.TryConsume<MappingStart>(out _))
            {
                found.Error(Place(parser.Current!.Start), "Expected lines such as 'key: G major'.");
                return entries;
            }

            while (!parser.TryConsume<MappingEnd>(out _))
            {
                ReadEntry(parser, entries, Place, known, found, mappings);
            }

            parser.Consume<DocumentEnd>();
            if (!parser.Accept<StreamEnd>(out _))
            {
                found.Error(Place(parser.Current!.Start), "Expected the end of the options here.");
            }
        }
        catch (YamlException problem)
        {
            found.Error(Place(problem.Start), Sentence(problem));
        }
        catch (InvalidOperationException)
        {
            // The scanner gives up so on some texts that are no YAML, without a place.
            found.Error(
                offsetOf(1, 1),
                "These lines cannot be read; put values that hold special characters in quotes."
            );
        }

        return entries;

        int Place(in Mark mark) => offsetOf(mark.Line, mark.Column);
    }

    private delegate int PlaceOf(in Mark mark);

    private static void ReadEntry(
        Parser parser,
        List<YamlEntry> entries,
        PlaceOf place,
        IReadOnlyCollection<string> known,
        DiagnosticList found,
        IReadOnlyCollection<string> mappings
    )
    {
        if (!parser.TryConsume<Scalar>(out var key))
        {
            found.Error(place(parser.Current!.Start), "Expected a word and a colon here.");
            parser.SkipThisAndNestedEvents();
            parser.SkipThisAndNestedEvents();
            return;
        }

        var keyOffset = place(key.Start);
        if (!known.Contains(key.Value))
        {
            found.Misspelt(keyOffset, key.Value, known, $"{Suggestion.Quoted(key.Value)} is not known here;");
        }
        else if (entries.Exists(entry => (entry.Parent ?? entry.Key) == key.Value))
        {
            found.Error(keyOffset, $"'{key.Value}' stands twice; keep one of them.");
        }
        else if (mappings.Contains(key.Value))
        {
            ReadMapping(parser, key.Value, entries, place, found);
            return;
        }
        else if (parser.Accept<Scalar>(out var value))
        {
            entries.Add(Entry(key.Value, keyOffset, value, place));
        }
        else
        {
            found.Error(
                place(parser.Current!.Start),
                $"'{key.Value}' takes words on one line. Put them in quotes if they begin with a special character."
            );
        }

        parser.SkipThisAndNestedEvents();
    }

    private static void ReadMapping(
        Parser parser,
        string parent,
        List<YamlEntry> entries,
        PlaceOf place,
        DiagnosticList found
    )
    {
        if (!parser.TryConsume<MappingStart>(out _))
        {
            found.Error(
                place(parser.Current!.Start),
                $"'{parent}' takes lines of its own below it, each with a name and a value, such as '  top: 3-1'."
            );
            parser.SkipThisAndNestedEvents();
            return;
        }

        while (!parser.TryConsume<MappingEnd>(out _))
        {
            if (!parser.TryConsume<Scalar>(out var key) || !parser.Accept<Scalar>(out var value))
            {
                found.Error(place(parser.Current!.Start), "Expected a name, a colon and a value on one line.");
                parser.SkipThisAndNestedEvents();
                if (key is null)
                {
                    parser.SkipThisAndNestedEvents();
                }

                continue;
            }

            if (entries.Exists(entry => entry.Parent == parent && entry.Key == key.Value))
            {
                found.Error(place(key.Start), $"{Suggestion.Quoted(key.Value)} stands twice; keep one of them.");
            }
            else
            {
                entries.Add(Entry(key.Value, place(key.Start), value, place) with { Parent = parent });
            }

            parser.SkipThisAndNestedEvents();
        }
    }

    private static YamlEntry Entry(string key, int keyOffset, Scalar value, PlaceOf place)
    {
        var quote = value.Style is ScalarStyle.SingleQuoted or ScalarStyle.DoubleQuoted ? 1 : 0;
        return new YamlEntry(key, keyOffset, value.Value, place(value.Start) + quote);
    }

    private static string Sentence(YamlException problem)
    {
        var reason = (problem.InnerException ?? problem).Message.Trim().TrimEnd('.');
        return $"This line cannot be read: put the value in quotes if it holds a colon or begins with a special character. (YAML: {reason}.)";
    }
}
