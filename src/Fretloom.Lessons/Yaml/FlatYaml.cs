using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Fretloom.Lessons.Yaml;

/// <summary>One key and its value in a YAML mapping, with their places in the file, counted from 0.</summary>
internal readonly record struct YamlEntry(string Key, int KeyOffset, string Value, int ValueOffset);

/// <summary>
/// Reads YAML that is one flat mapping of words to words. It works on the event stream, so that no nesting, however
/// deep, uses the stack; whatever is nested or refers to another place is an error. Anchors and tags are passed over.
/// </summary>
internal static class FlatYaml
{
    /// <summary>The entries in order; what could not be read is left out and reported.</summary>
    /// <param name="text">The YAML.</param>
    /// <param name="offsetOf">Gives the place in the file of a line and a column of <paramref name="text"/>, both counted from 1.</param>
    /// <param name="known">The keys that may stand there, each once.</param>
    /// <param name="found">Takes the findings.</param>
    public static List<YamlEntry> Read(
        string text,
        Func<long, long, int> offsetOf,
        IReadOnlyCollection<string> known,
        DiagnosticList found
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
                ReadEntry(parser, entries, Place, known, found);
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

        return entries;

        int Place(in Mark mark) => offsetOf(mark.Line, mark.Column);
    }

    private delegate int PlaceOf(in Mark mark);

    private static void ReadEntry(
        Parser parser,
        List<YamlEntry> entries,
        PlaceOf place,
        IReadOnlyCollection<string> known,
        DiagnosticList found
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
            found.Error(
                keyOffset,
                $"{Suggestion.Quoted(key.Value)} is not known here; {Suggestion.For(key.Value, known)}"
            );
        }
        else if (entries.Exists(entry => entry.Key == key.Value))
        {
            found.Error(keyOffset, $"'{key.Value}' stands twice; keep one of them.");
        }
        else if (parser.Accept<Scalar>(out var value))
        {
            var quote = value.Style is ScalarStyle.SingleQuoted or ScalarStyle.DoubleQuoted ? 1 : 0;
            entries.Add(new YamlEntry(key.Value, keyOffset, value.Value, place(value.Start) + quote));
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

    private static string Sentence(YamlException problem)
    {
        var reason = (problem.InnerException ?? problem).Message.Trim().TrimEnd('.');
        return $"This line cannot be read: put the value in quotes if it holds a colon or begins with a special character. (YAML: {reason}.)";
    }
}
