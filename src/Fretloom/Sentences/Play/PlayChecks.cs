using Fretloom.Exercises;
using Fretloom.Neck;
using Fretloom.Sentences.Reading;
using Fretloom.Sentences.Show;

namespace Fretloom.Sentences.Play;

/// <summary>What can be said of a play sentence only when all of it is known.</summary>
internal static class PlayChecks
{
    public const string WhatToPlay = "what to play, such as 'the scale' or 'the seventh chords'";

    /// <summary>Completes the sentence; the first thing that does not fit together, or null.</summary>
    public static Failure? First(PlayDraft draft, Instrument? unsaid, Token end)
    {
        if (draft.Material.Subjects.Count == 0)
        {
            return Failure.Expected(WhatToPlay, end);
        }

        if ((ShowChecks.First(draft.Material, unsaid, end) ?? Subjects(draft)) is { } failure)
        {
            return failure;
        }

        draft.Sentence = draft.Sentence with { Material = draft.Material.Sentence };
        return AgainstEachOther(draft);
    }

    private static Failure? Subjects(PlayDraft draft)
    {
        for (var at = 0; at < draft.Material.Subjects.Count; at++)
        {
            var (subject, place) = draft.Material.Subjects[at];
            if (subject is Subject.TheLandmarks or Subject.TheSymmetries)
            {
                return Failure.At(place, $"{subject} can be shown, not played; name a scale, chords, notes or spots");
            }

            var first = draft.Material.Subjects[0].Subject;
            if (
                at > 0
                && !(subject.IsChords && first.IsChords)
                && !(subject is Subject.EveryNote && first is Subject.EveryNote)
            )
            {
                return subject is Subject.ScaleShapes { Scale: { Kind.IsSevenNote: true } scale }
                    ? Failure.At(
                        place,
                        $"one thing is played at a time; is {scale} the key?",
                        Edit.Of(place, $"in {scale}")
                    )
                    : Failure.At(place, "one thing is played at a time; write another exercise for it");
            }
        }

        return null;
    }

    private static Failure? AgainstEachOther(PlayDraft draft)
    {
        var sentence = draft.Sentence;
        var subject = sentence.Material.Subjects[0];
        var isChords = subject.IsChords;
        Failure? Only(bool isSaid, bool suits, PlayPhrase part, string message) =>
            isSaid && !suits ? Failure.At(draft.PlaceOf(part)!.Value, message) : null;

        return Only(
                sentence.Picking.Count > 0,
                sentence.Strum is null,
                PlayPhrase.Picking,
                "a strum pattern has its own strokes; leave out the picking or the pattern"
            )
            ?? Only(
                sentence.Picking.Any(picked => picked > Picked.Up),
                sentence.IsBlock != true && subject is not Subject.TheThirds,
                PlayPhrase.Picking,
                "fingers pick one string after another, and block chords sound at once; leave out one of the two"
            )
            ?? Only(
                sentence.Direction is not null,
                !isChords || sentence.Picking.All(picked => picked <= Picked.Up),
                PlayPhrase.Direction,
                "the fingers say which string comes when; leave out the direction or the picking"
            )
            ?? Only(
                sentence.Strum is not null,
                isChords && sentence.IsBlock != false,
                PlayPhrase.Strum,
                "a strum pattern goes with chords that are held"
            )
            ?? Only(
                sentence.IsBlock is not null,
                isChords || subject is Subject.TheThirds,
                PlayPhrase.Sounding,
                "only chords and thirds are played as block chords or as arpeggios"
            )
            ?? Only(
                sentence.Through is not null,
                subject is Subject.ChordsOfTheKey,
                PlayPhrase.Through,
                "the order of the chords goes with 'the triads', 'the sixth chords', 'the seventh chords' or 'the ninth chords'"
            )
            ?? Only(
                sentence.Grouping is not null,
                !isChords && !subject.IsInOrderGiven && subject is not Subject.TheThirds,
                PlayPhrase.Grouping,
                "broken thirds and groups are made of a scale or of single notes"
            )
            ?? Only(
                sentence.EveryKey is not null,
                !subject.IsInOrderGiven
                    && subject is not (Subject.EveryNote or Subject.ChordsBySymbol)
                    && !IsNamedScale(subject),
                PlayPhrase.Keys,
                "every key is gone through with what belongs to a key: 'the scale', 'the triads', 'the chords I IV V7', 'the thirds'"
            )
            ?? Only(
                sentence.Octaves is not null,
                subject.IsScale,
                PlayPhrase.Octaves,
                "octaves are counted of a scale; leave them out, or name one, such as 'the scale'"
            )
            ?? Only(
                sentence.IsForTuning,
                subject is Subject.TheOpenStrings,
                PlayPhrase.Tuning,
                "'for tuning' goes with 'the open strings'"
            );
    }

    private static bool IsNamedScale(Subject subject) =>
        subject is Subject.NotesOfScale or Subject.ScaleShapes { Scale: not null } or Subject.TheChromaticScale;
}
