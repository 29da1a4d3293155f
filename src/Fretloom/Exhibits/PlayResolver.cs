using Fretloom.Exercises;
using Fretloom.Exhibits.Playing;
using Fretloom.Hand;
using Fretloom.Sentences;
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
        var complete = Completed(sentence, defaults);
        if (Rhythm.WhyNot(complete) is { } wrong)
        {
            return PlayResolution.Refused(wrong);
        }

        var player = ShowResolver.PlayerOf(complete.Material, ShowResolver.MapOf(complete.Material).Instrument);
        var (parts, error) = Material.Of(complete, player);
        if (error is not null)
        {
            return PlayResolution.Refused(error);
        }

        var exercise = Arranger.Arrange(complete, player, parts) with { NoteNames = defaults.NoteNames };
        return TooLong(exercise) is { } tooLong ? PlayResolution.Refused(tooLong) : PlayResolution.Played(exercise);
    }

    private static PlayError? TooLong(Exercise exercise) =>
        exercise.Bars > MostBars
            ? new(
                $"the exercise would have {exercise.Bars:N0} bars, and at most {MostBars} are written; ask for less, or for shorter notes"
            )
        : exercise.Seconds > Exercise.MostSeconds
            ? new(
                $"the exercise would take {Math.Ceiling(exercise.Seconds / 60):N0} minutes, and at most an hour is played; play it fewer times, faster, or with fewer tempi",
                Played: PlayPhrase.Tempo
            )
        : null;

    private static PlaySentence Completed(PlaySentence sentence, ShowDefaults defaults)
    {
        var material = ShowResolver.Completed(sentence.Material, defaults) with { Labels = null };
        var subject = material.Subjects[0];
        var isChords = subject is Subject.ChordsOfTheKey or Subject.ChordsByNumeral or Subject.ChordsBySymbol;
        var isThirds = subject is Subject.TheThirds;
        bool? isBlock = isChords || isThirds ? sentence.IsBlock ?? (isThirds || sentence.Strum is not null) : null;
        var isRow = !isChords && !isThirds && subject is not (Subject.GivenSpots or Subject.TheOpenStrings);
        return sentence with
        {
            Material = material,
            IsBlock = isBlock,
            Direct = sentence.Direct ?? (isRow || isBlock == false ? Direct.Up : null),
            Value = sentence.Value ?? Rhythm.UsualValue(subject, isBlock == true),
            Metre = sentence.Metre ?? default(Metre),
            Tempo = sentence.Tempo ?? new TempoLadder(new Tempo(UsualTempo)),
        };
    }
}
