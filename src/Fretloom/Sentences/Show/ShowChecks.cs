using Fretloom.Neck;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Show;

/// <summary>What can be said of a show sentence only when all of it is known.</summary>
internal static class ShowChecks
{
    /// <summary>Completes the sentence; the first thing that does not fit together, or null.</summary>
    public static Failure? First(ShowDraft draft, Instrument? unsaid, Token end) =>
        CapoShapes.Resolve(draft, draft.Sentence.Capo ?? (draft.Sentence.Instrument ?? unsaid)?.Capo ?? 0)
        ?? Subjects(draft, end)
        ?? Voicing(draft)
        ?? OnInstrument(draft, draft.Sentence.Instrument ?? unsaid);

    private static Failure? Subjects(ShowDraft draft, Token end)
    {
        if (draft.NotesPerString is not null && !draft.Subjects.Any(said => said.Subject.IsLaidOut))
        {
            var place = draft.PlaceOf(NotesPerStringPhrase.Kind)!.Value;
            return Failure.At(
                place,
                "notes a string are counted on a scale, and this sentence shows none",
                Edit.Of(place, $"the scale, {draft.NotesPerString} notes a string")
            );
        }

        if (draft.Subjects.Count == 0)
        {
            var nothing = Failure.Expected("what to show, such as 'the notes of the key' or 'the triads'", end);
            return draft.Phrases.Count == 0
                ? nothing
                : nothing with
                {
                    Edits = [new Edit(end.Start, 0, ", the notes of the key")],
                    NamesChange = true,
                };
        }

        var subjects = new List<Subject>();
        foreach (var (said, place) in draft.Subjects)
        {
            var subject = Completed(said, draft);
            if (subjects.Contains(subject))
            {
                return Failure.At(place, $"'{subject}' was already named earlier in this sentence");
            }

            subjects.Add(subject);
        }

        draft.Sentence = draft.Sentence with { Subjects = subjects.ToValueList() };
        return null;
    }

    // A scale without a count is laid out in the position of the sentence; without a position every spot of it is meant.
    private static Subject Completed(Subject said, ShowDraft draft) =>
        said switch
        {
            Subject.ScaleShapes shapes when draft.NotesPerString is { } count => shapes with { NotesPerString = count },
            Subject.TheChromaticScale => new Subject.TheChromaticScale(draft.NotesPerString),
            Subject.ScaleShapes when draft.Voicing.Position is not null => said,
            Subject.ScaleShapes { Scale: { } scale } => new Subject.NotesOfScale(scale),
            Subject.ScaleShapes => new Subject.NotesOfTheKey(),
            _ => said,
        };

    private static Failure? Voicing(ShowDraft draft)
    {
        var voicing = draft.Voicing;
        var rival =
            voicing.EasyStrings is not null ? "'easy'"
            : voicing.Kind == VoicingKind.Strummed ? "'strummed'"
            : null;
        if (rival is not null && voicing.Arrangement is not null)
        {
            return Failure.At(
                draft.PlaceOf(VoicingPhrases.Arrangement)!.Value,
                $"an order of the members goes with 'one note per string', not with {rival}"
            );
        }

        return voicing is { EasyStrings: not null, Inversions: not null }
            ? Failure.At(
                draft.PlaceOf(InversionPhrase.Kind)!.Value,
                "an easy shape takes the inversion that lies best; leave out one of the two"
            )
            : null;
    }

    private static Failure? OnInstrument(ShowDraft draft, Instrument? instrument) =>
        instrument is null
            ? null
            : Capo(draft, instrument)
                ?? Strings(draft, instrument)
                ?? GivenChecks.First(draft, instrument.WithCapo(draft.Sentence.Capo ?? instrument.Capo))
                ?? OnFrets(draft, instrument, FretsPhrase.Kind, "fret", draft.Sentence.Frets?.Last)
                ?? OnFrets(draft, instrument, PositionPhrase.Kind, "position", draft.Voicing.Position);

    private static Failure? Capo(ShowDraft draft, Instrument instrument) =>
        draft.Sentence.Capo >= instrument.Frets
            ? Failure.At(
                draft.PlaceOf(CapoPhrase.Kind)!.Value,
                $"the {instrument} has {instrument.Frets} frets; a capo sits at fret 1 to {instrument.Frets - 1}"
            )
            : null;

    private static Failure? Strings(ShowDraft draft, Instrument instrument)
    {
        var count = instrument.Strings.Count;
        foreach (var (number, place) in draft.Strings)
        {
            if (number > count)
            {
                return Failure.At(place, $"the {instrument} has {count} strings; there is no string {number}");
            }
        }

        return draft.Voicing.EasyStrings > count
            ? Failure.At(
                draft.PlaceOf(VoicingPhrases.Easy)!.Value,
                $"the {instrument} has {count} strings, fewer than {draft.Voicing.EasyStrings}"
            )
            : null;
    }

    private static Failure? OnFrets(ShowDraft draft, Instrument instrument, PhraseKind kind, string what, int? number)
    {
        var capo = draft.Sentence.Capo ?? instrument.Capo;
        var last = instrument.Frets - capo;
        if (number is null || number <= last)
        {
            return null;
        }

        var counted = capo == 0 ? "" : $" beyond the capo at {capo}";
        return Failure.At(
            draft.PlaceOf(kind)!.Value,
            $"the {instrument} has {last} frets{counted}; there is no {what} {number}"
        );
    }
}
