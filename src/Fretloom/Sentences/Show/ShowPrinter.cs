using System.Globalization;
using Fretloom.Shapes;

namespace Fretloom.Sentences.Show;

/// <summary>Prints a show sentence in canonical form.</summary>
internal static class ShowPrinter
{
    /// <summary>The sentence: subjects, instrument and capo, key, strings, frets, voicing, number of shapes, labels, hand; what is unsaid is left out.</summary>
    public static string Print(ShowSentence sentence) => "show " + string.Join(", ", Phrases(sentence));

    /// <summary>The phrases in order.</summary>
    public static IEnumerable<string> Phrases(ShowSentence sentence) => Parts(sentence).SelectMany(part => part);

    private static IEnumerable<IEnumerable<string>> Parts(ShowSentence sentence) =>
        [
            Subjects(sentence.Subjects),
            Where(sentence),
            Voicing(sentence.Voicing),
            sentence.IsOneShapeEach ? ["one shape each"] : [],
            Labels(sentence),
            Player(sentence),
        ];

    private static IEnumerable<string> Subjects(ValueList<Subject> subjects)
    {
        if (subjects.Count > 0)
        {
            yield return List(subjects.Select((subject, at) => SubjectPrinter.Print(subject, isFirst: at == 0)));
        }

        if (subjects.Select(subject => subject.NotesAString).FirstOrDefault(count => count is not null) is { } count)
        {
            yield return Invariant($"{count} notes a string");
        }
    }

    private static IEnumerable<string> Where(ShowSentence sentence)
    {
        if (sentence.Instrument is { } instrument)
        {
            yield return $"on {instrument.NameWithArticle}";
        }

        if (sentence.Capo is { } capo)
        {
            yield return capo == 0 ? "without a capo" : Invariant($"with a capo at {capo}");
        }

        if (sentence.Key is { } key)
        {
            yield return $"in {key}";
        }

        if (sentence.IsOnAllStrings)
        {
            yield return "on all strings";
        }
        else if (sentence.Strings is { } strings)
        {
            yield return strings.Count == 1 ? $"on string {strings}" : $"on strings {strings}";
        }

        if (sentence.Frets is { } frets)
        {
            yield return frets.Count == 1 ? Invariant($"fret {frets.First}") : $"frets {frets}";
        }
    }

    private static IEnumerable<string> Voicing(VoicingPhrase voicing)
    {
        if (voicing.Kind is { } kind)
        {
            yield return kind == VoicingKind.Strummed ? "strummed" : "one note per string";
        }

        if (voicing.Arrangement is { } arrangement)
        {
            yield return arrangement switch
            {
                Arrangement.Close => "in close position",
                Arrangement.DropTwo => "in drop 2",
                Arrangement.DropThree => "in drop 3",
                _ => "in any order",
            };
        }

        if (voicing.Inversions is { } inversions)
        {
            yield return "in " + Inversions(inversions);
        }

        if (voicing.Position is { } position)
        {
            yield return $"in {Reading.Numbers.OrdinalWord(position)} position";
        }

        if (voicing.EasyStrings is { } count)
        {
            yield return $"easy, {Reading.Numbers.InWords(count)} strings";
        }
    }

    private static string Inversions(ValueList<int> inversions)
    {
        if (inversions.Count == 0)
        {
            return "every inversion";
        }

        var words = inversions.Where(number => number > 0).Select(Reading.Numbers.OrdinalWord).ToList();
        var inverted = words.Count == 0 ? "" : $"{string.Join(" and ", words)} inversion";
        var root = inversions.Contains(0) ? "root position" : "";
        return root + (root.Length > 0 && inverted.Length > 0 ? " and " : "") + inverted;
    }

    private static IEnumerable<string> Labels(ShowSentence sentence)
    {
        if (sentence.Labels is { } style)
        {
            yield return $"as {LabelsPhrases.WordOf(style)}";
        }

        if (sentence.IsWithFingers)
        {
            yield return "with fingers";
        }
    }

    private static IEnumerable<string> Player(ShowSentence sentence)
    {
        if (sentence.Hand is { } hand)
        {
            yield return $"for {HandPhrases.WordsOf(hand)}";
        }

        if (sentence.IsLeftHanded is { } isLeft)
        {
            yield return isLeft ? "for a left-handed player" : "for a right-handed player";
        }

        if (sentence.IsTurnedOver)
        {
            yield return "turned over";
        }

        if (sentence.UsesThumb is { } usesThumb)
        {
            yield return usesThumb ? "with the thumb" : "without the thumb";
        }
    }

    /// <summary>Some things with commas, the last one with <c>and</c>.</summary>
    internal static string List(IEnumerable<string> items)
    {
        var words = items.ToList();
        return words.Count == 1 ? words[0] : $"{string.Join(", ", words[..^1])} and {words[^1]}";
    }

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
