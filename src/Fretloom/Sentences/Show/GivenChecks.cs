using Fretloom.Neck;
using Fretloom.Sentences.Reading;
using Fretloom.Theory;

namespace Fretloom.Sentences.Show;

/// <summary>Whether spots and notes that a sentence gives lie on the instrument.</summary>
internal static class GivenChecks
{
    private const int HalfStepsOfOctave = 12;

    /// <summary>The first that does not; null when all do.</summary>
    /// <param name="draft">The sentence.</param>
    /// <param name="instrument">The instrument with its capo.</param>
    public static Failure? First(ShowDraft draft, Instrument instrument)
    {
        foreach (var (spot, place) in draft.Spots)
        {
            if ((WhyNot(instrument, spot) ?? WhyNot(draft.Sentence, spot)) is { } reason)
            {
                return Failure.At(place, reason);
            }
        }

        foreach (var (pitch, place) in draft.Pitches)
        {
            if (Misplaced(instrument, pitch, place) is { } failure)
            {
                return failure;
            }
        }

        return null;
    }

    private static string? WhyNot(Instrument instrument, Spot spot) =>
        instrument.Has(spot) ? null
        : spot.String > instrument.Strings.Count
            ? $"the {instrument} has {instrument.Strings.Count} strings; there is no spot {spot}"
        : spot.Fret > instrument.LastFret
            ? $"the {instrument} has {instrument.LastFret} frets{(instrument.Capo == 0 ? "" : " beyond the capo")}; there is no spot {spot}"
        : $"string {spot.String} of the {instrument} begins at fret {instrument.String(spot.String).StartsAtFret}; there is no spot {spot}";

    private static string? WhyNot(ShowSentence sentence, Spot spot) =>
        sentence.Frets?.Contains(spot.Fret) == false ? $"spot {spot} lies on none of the frets {sentence.Frets}"
        : sentence.Strings?.Numbers.Contains(spot.String) == false
            ? $"spot {spot} lies on none of the strings {sentence.Strings}"
        : null;

    private static Failure? Misplaced(Instrument instrument, Pitch pitch, Token place)
    {
        if (instrument.SpotsOf(pitch.MidiNumber).Any())
        {
            return null;
        }

        var (lowest, highest) = Ends(instrument);
        var (isLow, end) = pitch.MidiNumber < lowest ? (true, lowest) : (false, highest);
        var octaves = (Math.Abs(pitch.MidiNumber - end) + HalfStepsOfOctave - 1) / HalfStepsOfOctave;
        var nearest = $"{pitch.Name}{pitch.Octave + (isLow ? octaves : -octaves)}";
        return Failure.At(
            place,
            $"{pitch} lies {(isLow ? "below" : "above")} the {instrument}, which goes from {Pitch.FromMidiNumber(lowest)} to {Pitch.FromMidiNumber(highest)}",
            Edit.Of(place, nearest)
        );
    }

    private static (int Lowest, int Highest) Ends(Instrument instrument)
    {
        var sounds = instrument
            .AllStrings.Numbers.SelectMany(number =>
                new[] { instrument.String(number).StartsAtFret, instrument.LastFret }.Select(fret =>
                    instrument.MidiAt(new Spot(number, fret))
                )
            )
            .OfType<int>()
            .ToList();
        return (sounds.Min(), sounds.Max());
    }
}
