using System.Globalization;
using Fretloom.Exercises;
using Fretloom.Exhibits.Playing;
using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Sentences;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Exhibits;

/// <summary>Works a play sentence out.</summary>
public static class PlayResolver
{
    /// <summary>The most bars that an exercise may have.</summary>
    public const int MostBars = 999;

    private const int UsualTempo = 72;

    /// <summary>Fills in what the sentence leaves unsaid, and lays the notes out in time with their fingers.</summary>
    /// <param name="sentence">A sentence that was read with the instrument of the defaults as the one unsaid.</param>
    /// <param name="defaults">What to use where it says nothing.</param>
    /// <returns>The exercise, or what stands in the way, such as a chord that no hand can hold.</returns>
    /// <exception cref="ArgumentException">A string, a fret or the capo is not on the instrument.</exception>
    public static PlayResolution Resolve(PlaySentence sentence, ShowDefaults defaults)
    {
        ArgumentNullException.ThrowIfNull(sentence);
        ArgumentNullException.ThrowIfNull(defaults);
        var frets = sentence.Material.Frets ?? defaults.Frets;
        var windows = frets is null && sentence.Material.Voicing.Position is null ? Windows(sentence) : [null];
        PlayResolution? best = null;
        foreach (var last in windows)
        {
            var attempt = Attempt(Within(sentence, defaults, last), defaults);
            best = best is { IsPlayed: true } && !attempt.IsPlayed ? best : attempt;
            if (attempt.IsPlayed && (!IsRun(sentence) || BeginsAtHome(attempt.Exercise)))
            {
                return attempt;
            }
        }

        return best!;
    }

    // Where no frets are said, those beyond the twelfth are used for what does not fit below: null stands for the usual ones.
    private static ValueList<int?> Windows(PlaySentence sentence) =>
        sentence.Material.Voicing.Inversions is { Count: not 1 }
            ? [15, 17, int.MaxValue]
            : [null, 15, 17, int.MaxValue];

    private static PlaySentence Within(PlaySentence sentence, ShowDefaults defaults, int? last)
    {
        if (last is null)
        {
            return sentence;
        }

        var instrument = ShowResolver.MapOf(ShowResolver.Completed(sentence.Material, defaults)).Instrument;
        return sentence with
        {
            Material = sentence.Material with { Frets = new FretRange(0, Math.Min(last.Value, instrument.LastFret)) },
        };
    }

    private static bool IsRun(PlaySentence sentence) =>
        sentence.Material.Subjects[0] is Subject.ScaleShapes { NotesPerString: not null };

    private static bool BeginsAtHome(Exercise exercise) =>
        exercise.Sections.All(section =>
            exercise.Notes.First(note => note.At >= section.At).Note.Pitch.PitchClass == section.Key.Tonic.PitchClass
        );

    private static PlayResolution Attempt(PlaySentence sentence, ShowDefaults defaults)
    {
        var complete = Completed(sentence, defaults);
        if (Rhythm.WhyNot(complete) is { } unfit)
        {
            return PlayResolution.Refused(unfit);
        }

        var player = ShowResolver.PlayerOf(complete.Material, ShowResolver.MapOf(complete.Material).Instrument);
        var (parts, error) = Material.Of(complete, player);
        if (error is not null)
        {
            return PlayResolution.Refused(error);
        }

        var exercise = Arranger.Arrange(complete, player, parts) with
        {
            NoteNames = defaults.NoteNames,
            IsLeftHanded = complete.Material is { IsLeftHanded: true, IsTurnedOver: false },
        };
        return (TooLong(exercise) ?? Shifts.WhyNot(exercise)) is { } wrong
            ? PlayResolution.Refused(wrong)
            : PlayResolution.Played(exercise);
    }

    private static PlayError? TooLong(Exercise exercise) =>
        exercise.Bars > MostBars
            ? new(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"the exercise would have {exercise.Bars:N0} bars, and at most {MostBars} are written; ask for less, or for shorter notes"
                )
            )
        : exercise.Seconds > Exercise.MostSeconds
            ? new(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"the exercise would take {Math.Ceiling(exercise.Seconds / 60):N0} minutes, and at most an hour is played; play it fewer times, faster, or with fewer tempi"
                ),
                Played: PlayPhrase.Tempo
            )
        : null;

    private static PlaySentence Completed(PlaySentence sentence, ShowDefaults defaults)
    {
        var material = ShowResolver.Completed(sentence.Material, defaults) with { Labels = null };
        if (sentence.Strum is not null && material.Voicing is { Kind: null, EasyStrings: null, Arrangement: null })
        {
            material = material with { Voicing = material.Voicing with { Kind = VoicingKind.Strummed } };
        }

        var subject = material.Subjects[0];
        var isChords = subject is Subject.ChordsOfTheKey or Subject.ChordsByNumeral or Subject.ChordsBySymbol;
        var isThirds = subject is Subject.TheThirds;
        bool? isBlock = isChords || isThirds ? sentence.IsBlock ?? (isThirds || sentence.Strum is not null) : null;
        var isByFingers = sentence.Picking.Any(picked => picked > Picked.Up);
        var isRow = !isChords && !isThirds && subject is not (Subject.GivenSpots or Subject.TheOpenStrings);
        return sentence with
        {
            Material = material,
            IsBlock = isBlock,
            Direct = sentence.Direct ?? (isRow || (isBlock == false && !isByFingers) ? Direct.Up : null),
            Touch = sentence.Touch ?? (sentence.IsForTuning || (isChords && isByFingers) ? Touching.Sustained : null),
            Value = sentence.Value ?? Rhythm.UsualValue(subject, isBlock == true),
            Metre = sentence.Metre ?? default(Metre),
            Tempo = sentence.Tempo ?? new TempoLadder(new Tempo(UsualTempo)),
        };
    }
}
