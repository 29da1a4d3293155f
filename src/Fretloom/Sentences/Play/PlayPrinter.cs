using System.Globalization;
using Fretloom.Exercises;
using Fretloom.Sentences.Reading;
using Fretloom.Sentences.Show;

namespace Fretloom.Sentences.Play;

/// <summary>Prints a play sentence in canonical form.</summary>
internal static class PlayPrinter
{
    /// <summary>What and where as in a show sentence, then how; what is unsaid is left out.</summary>
    public static string Print(PlaySentence sentence) =>
        "play " + string.Join(", ", ShowPrinter.Words(sentence.Material).Concat(Said(sentence)));

    private static IEnumerable<string> Said(PlaySentence sentence) =>
        Way(sentence).Concat(Time(sentence)).Concat(CountedIn(sentence)).Concat(Picking(sentence));

    private static IEnumerable<string> Way(PlaySentence sentence)
    {
        if (sentence.Octaves is { } octaves)
        {
            yield return OctavesPhrase.WordsOf(octaves);
        }

        if (sentence.IsBlock is { } isBlock)
        {
            yield return isBlock ? "as block chords" : "as arpeggios";
        }

        if (sentence.Strum is { } strum)
        {
            yield return $"strum {strum}";
        }

        if (sentence.Direction is { } direction)
        {
            yield return DirectionPhrase.WordsOf(direction);
        }

        if (sentence.Grouping is { } grouping)
        {
            yield return GroupingPhrase.WordsOf(grouping);
        }

        if (sentence.Through is { } way)
        {
            yield return ThroughPhrase.WordsOf(way);
        }

        if (sentence.EveryKey is { } order)
        {
            yield return EveryKeyPhrase.WordsOf(order);
        }
    }

    private static IEnumerable<string> Time(PlaySentence sentence)
    {
        if (sentence.Value is { } value)
        {
            yield return ValuePhrase.WordsOf(value);
        }

        if (sentence.Metre is { } metre)
        {
            yield return $"in {metre}";
        }

        if (sentence.Tempo is { } tempo)
        {
            yield return Words(tempo);
        }

        if (sentence.Times is { } times)
        {
            yield return times switch
            {
                1 => "once",
                2 => "twice",
                _ => $"{Numbers.InWords(times)} times",
            };
        }
    }

    private static IEnumerable<string> CountedIn(PlaySentence sentence)
    {
        if (sentence.CountInBars is { } bars)
        {
            yield return bars switch
            {
                0 => "without a count-in",
                1 => "with a count-in",
                _ => $"with a count-in of {Numbers.InWords(bars)} bars",
            };
        }

        if (sentence.HasClick)
        {
            yield return "with a click";
        }
    }

    private static IEnumerable<string> Picking(PlaySentence sentence)
    {
        if (sentence.Touch is Touching.Sustained or Touching.Short)
        {
            yield return sentence.Touch == Touching.Short ? "short" : "sustained";
        }

        if (sentence.Picking.Count > 0)
        {
            yield return PickingPhrase.WordsOf(sentence.Picking);
        }

        if (sentence.EchoBars is { } echo)
        {
            yield return EchoPhrase.WordsOf(echo);
        }

        if (sentence.IsForTuning)
        {
            yield return "for tuning";
        }
    }

    private static string Words(TempoLadder tempo) =>
        tempo.First == tempo.Last
            ? $"at {tempo.First}"
            : string.Create(
                CultureInfo.InvariantCulture,
                $"from {tempo.First} to {tempo.Last} in steps of {tempo.Step}"
            );
}
