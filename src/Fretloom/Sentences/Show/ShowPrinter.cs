using System.Globalization;
using Fretloom.Shapes;

namespace Fretloom.Sentences.Show;

/// <summary>Prints a show sentence in canonical form.</summary>
internal static class ShowPrinter
{
    /// <summary>The sentence: subjects, instrument and capo, key, strings, frets, voicing, number of shapes, labels, hand; what is unsaid is left out.</summary>
    public static string Print(ShowSentence sentence) => Print(Phrases(sentence));

    /// <summary>The sentence that has these phrases.</summary>
    public static string Print(IEnumerable<SaidPhrase> phrases) =>
        "show " + string.Join(", ", phrases.Select(phrase => phrase.Words));

    /// <summary>The words of the phrases in order.</summary>
    public static IEnumerable<string> Words(ShowSentence sentence) => Phrases(sentence).Select(phrase => phrase.Words);

    /// <summary>The phrases in order.</summary>
    public static IEnumerable<SaidPhrase> Phrases(ShowSentence sentence) =>
        Subjects(sentence.Subjects)
            .Concat(Where(sentence))
            .Concat(Voicing(sentence.Voicing))
            .Concat(sentence.IsOneShapeEach ? [new(OneShapePhrase.Kind, "one shape each")] : [])
            .Concat(Labels(sentence))
            .Concat(Player(sentence));

    private static IEnumerable<SaidPhrase> Subjects(ValueList<Subject> subjects)
    {
        if (subjects.Count > 0)
        {
            yield return new(
                SubjectPhrase.Kind,
                List(subjects.Select((subject, at) => SubjectPrinter.Print(subject, isFirst: at == 0)))
            );
        }

        if (subjects.Select(subject => subject.NotesAString).FirstOrDefault(count => count is not null) is { } count)
        {
            yield return new(NotesPerStringPhrase.Kind, Invariant($"{count} notes a string"));
        }
    }

    private static IEnumerable<SaidPhrase> Where(ShowSentence sentence)
    {
        if (sentence.Instrument is { } instrument)
        {
            yield return new(InstrumentPhrase.Kind, $"on {instrument.NameWithArticle}");
        }

        if (sentence.Capo is { } capo)
        {
            yield return new(CapoPhrase.Kind, capo == 0 ? "without a capo" : Invariant($"with a capo at {capo}"));
        }

        if (sentence.Key is { } key)
        {
            yield return new(KeyPhrase.Kind, $"in {key}");
        }

        if (sentence.IsOnAllStrings)
        {
            yield return new(StringsPhrase.Kind, "on all strings");
        }
        else if (sentence.Strings is { } strings)
        {
            yield return new(StringsPhrase.Kind, strings.Count == 1 ? $"on string {strings}" : $"on strings {strings}");
        }

        if (sentence.Frets is { } frets)
        {
            yield return new(FretsPhrase.Kind, frets.Count == 1 ? Invariant($"fret {frets.First}") : $"frets {frets}");
        }
    }

    private static IEnumerable<SaidPhrase> Voicing(VoicingPhrase voicing)
    {
        if (voicing.Kind is { } kind)
        {
            yield return new(
                VoicingPhrases.Sounding,
                kind == VoicingKind.Strummed ? "strummed" : "one note per string"
            );
        }

        if (voicing.Arrangement is { } arrangement)
        {
            yield return new(
                VoicingPhrases.Arrangement,
                arrangement switch
                {
                    Arrangement.Close => "in close position",
                    Arrangement.DropTwo => "in drop 2",
                    Arrangement.DropThree => "in drop 3",
                    _ => "in any order",
                }
            );
        }

        if (voicing.Inversions is { } inversions)
        {
            yield return new(InversionPhrase.Kind, "in " + Inversions(inversions));
        }

        if (voicing.Position is { } position)
        {
            yield return new(PositionPhrase.Kind, $"in {Reading.Numbers.OrdinalWord(position)} position");
        }

        if (voicing.EasyStrings is { } count)
        {
            yield return new(VoicingPhrases.Easy, $"easy, {Reading.Numbers.InWords(count)} strings");
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

    private static IEnumerable<SaidPhrase> Labels(ShowSentence sentence)
    {
        if (sentence.Labels is { } style)
        {
            yield return new(LabelsPhrases.Labels, $"as {LabelsPhrases.WordOf(style)}");
        }

        if (sentence.IsWithFingers)
        {
            yield return new(LabelsPhrases.Fingers, "with fingers");
        }
    }

    private static IEnumerable<SaidPhrase> Player(ShowSentence sentence)
    {
        if (sentence.Hand is { } hand)
        {
            yield return new(HandPhrases.Hand, $"for {HandPhrases.WordsOf(hand)}");
        }

        if (sentence.IsLeftHanded is { } isLeft)
        {
            yield return new(HandPhrases.Player, isLeft ? "for a left-handed player" : "for a right-handed player");
        }

        if (sentence.IsTurnedOver)
        {
            yield return new(PlayingPhrases.TurnedOver, "turned over");
        }

        if (sentence.UsesThumb is { } usesThumb)
        {
            yield return new(PlayingPhrases.Thumb, usesThumb ? "with the thumb" : "without the thumb");
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
