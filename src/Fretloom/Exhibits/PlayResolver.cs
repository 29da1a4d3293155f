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
    /// <summary>The most bars that an exercise may have, so that their numbers have three figures. Ours, without source.</summary>
    public const int MostBars = 999;

    private const int HalfStepsOfFifth = 7;

    /// <summary>Fills in what the sentence leaves unsaid, and lays the notes out in time with their fingers.</summary>
    /// <param name="sentence">A sentence that was read with the instrument of the defaults as the one unsaid.</param>
    /// <param name="defaults">What to use where it says nothing.</param>
    /// <returns>The exercise, or what stands in the way, such as a chord that no hand can hold.</returns>
    /// <exception cref="ArgumentException">A string, a fret or the capo is not on the instrument.</exception>
    public static PlayResolution Resolve(PlaySentence sentence, ShowDefaults defaults)
    {
        ArgumentNullException.ThrowIfNull(sentence);
        ArgumentNullException.ThrowIfNull(defaults);
        sentence = WithStrum(sentence);
        PlayResolution? best = null;
        var fewest = int.MaxValue;
        foreach (var attempt in Windows(sentence, defaults).Select(window => Attempt(window, defaults)))
        {
            var flaws = attempt.IsPlayed ? Flaws(sentence, attempt.Exercise) : int.MaxValue;
            if (flaws == 0)
            {
                return attempt;
            }

            (best, fewest) = best is null || flaws < fewest ? (attempt, flaws) : (best, fewest);
        }

        return best!;
    }

    // Where no frets are said, those beyond the twelfth are used for what does not fit below.
    private static IEnumerable<PlaySentence> Windows(PlaySentence sentence, ShowDefaults defaults)
    {
        var material = sentence.Material;
        if ((material.Frets ?? defaults.Frets) is not null || material.Voicing.Position is not null)
        {
            return [sentence];
        }

        var instrument = ShowResolver.MapOf(ShowResolver.Completed(material, defaults)).Instrument;
        var wider = new[] { 15, 17, instrument.LastFret }
            .Select(last => Math.Min(last, instrument.LastFret))
            .Distinct()
            .Select(last => sentence with { Material = material with { Frets = new FretRange(0, last) } });
        return material.Voicing.Inversions is { Count: not 1 } ? wider : wider.Prepend(sentence);
    }

    // A run of so many notes a string begins on the tonic, a scale that is laid out in no way runs from tonic to tonic, and
    // chords of the key go on without a leap: how often it is otherwise.
    private static int Flaws(PlaySentence sentence, Exercise exercise) =>
        sentence.Material.Subjects[0] switch
        {
            { NotesAString: not null } subject => exercise.Sections.Count(section =>
                exercise.Notes.First(note => note.At >= section.At).Note.Pitch.PitchClass
                != TonicOf(subject, section).PitchClass
            ),
            Subject.ChordsOfTheKey when sentence.Strum is null => Leaps(exercise),
            { IsScale: true } subject when sentence.Material.Voicing.Position is null => exercise.Sections.Count(
                section => !HasOctave(exercise, section, TonicOf(subject, section))
            ),
            _ => 0,
        };

    private static NoteName TonicOf(Subject subject, Section section) =>
        subject switch
        {
            Subject.NotesOfScale notes => notes.Scale.Tonic,
            Subject.ScaleShapes { Scale: { } scale } => scale.Tonic,
            _ => section.Key.Tonic,
        };

    // A chord that lies more than a fifth higher or lower than the one before it; from key to key there may be one.
    private static int Leaps(Exercise exercise)
    {
        var begins = exercise.Chords.Select(chord => chord.At).ToList();
        var heights = begins
            .Zip(begins.Skip(1).Append(exercise.Length))
            .Select(chord => exercise.NotesIn(chord.First, chord.Second))
            .Select(notes => notes.Average(note => note.Note.Pitch.MidiNumber))
            .ToList();
        return Enumerable
            .Range(1, Math.Max(0, begins.Count - 1))
            .Count(at =>
                Math.Abs(heights[at] - heights[at - 1]) > HalfStepsOfFifth
                && exercise.SectionAt(begins[at]) == exercise.SectionAt(begins[at - 1])
            );
    }

    private static bool HasOctave(Exercise exercise, Section section, NoteName tonic)
    {
        var pitches = exercise
            .Notes.Where(note => exercise.SectionAt(note.At) == section)
            .Select(note => note.Note.Pitch)
            .OrderBy(pitch => pitch.MidiNumber)
            .ToList();
        return pitches[^1].MidiNumber > pitches[0].MidiNumber
            && pitches[0].PitchClass == tonic.PitchClass
            && pitches[^1].PitchClass == tonic.PitchClass;
    }

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

        if (Ungrouped(complete, parts) is { } few)
        {
            return PlayResolution.Refused(few);
        }

        var exercise = Arranger.Arrange(complete, player, parts) with
        {
            NoteNames = defaults.NoteNames,
            IsLeftHanded = complete.Material is { IsLeftHanded: true, IsTurnedOver: false },
        };
        return (TooLong(exercise, complete) ?? Shifts.WhyNot(exercise)) is { } wrong
            ? PlayResolution.Refused(wrong)
            : PlayResolution.Played(exercise);
    }

    private static PlayError? Ungrouped(PlaySentence complete, ValueList<Part> parts)
    {
        var least = Ways.Least(complete.Grouping ?? Grouping.Plain);
        var few = parts.SelectMany(part => part.Groups).Min(group => group.Notes.Count);
        return complete.Grouping is null || few >= least
            ? null
            : new(
                $"such groups need {least} notes, and there {(few == 1 ? "is 1" : $"are {few}")}; look at more frets or strings, or leave the groups out",
                Played: PlayPhrase.Grouping
            );
    }

    private static PlayError? TooLong(Exercise exercise, PlaySentence complete) =>
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
                Played: complete.Times is null ? PlayPhrase.Tempo : PlayPhrase.Times
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
        var isChords = subject.IsChords;
        var isThirds = subject is Subject.TheThirds;
        var isStrummed = sentence.Strum is not null || sentence.Material.Voicing.Kind == VoicingKind.Strummed;
        bool? isBlock = isChords || isThirds ? sentence.IsBlock ?? (isThirds || isStrummed) : null;
        var isByFingers = sentence.Picking.Any(picked => picked > Picked.Up);
        var isRow = !isChords && !isThirds && !subject.IsInOrderGiven;
        return sentence with
        {
            Material = material,
            IsBlock = isBlock,
            Direction = sentence.Direction ?? (isRow || (isBlock == false && !isByFingers) ? Direction.Up : null),
            Touch = sentence.Touch ?? (sentence.IsForTuning || (isChords && isByFingers) ? Touching.Sustained : null),
            Value = sentence.Value ?? Rhythm.UsualValue(subject, isBlock == true),
            Metre = sentence.Metre ?? default(Metre),
            Tempo = sentence.Tempo ?? new TempoLadder(default),
        };
    }

    // Chords strummed in quarters or eighths, with no pattern, are strummed so for a bar each: quarters down, eighths as the hand swings.
    private static PlaySentence WithStrum(PlaySentence sentence)
    {
        var metre = sentence.Metre ?? default;
        bool[]? beat = sentence.Value switch
        {
            NoteValue.Quarters when !metre.IsCompound => [true],
            NoteValue.Eighths or NoteValue.SwingEighths => metre.IsCompound ? [true, false, true] : [true, false],
            _ => null,
        };
        return
            beat is not null
            && sentence is { Strum: null, Picking.Count: 0, IsBlock: not false }
            && sentence.Material is { Voicing.Kind: VoicingKind.Strummed, Subjects: [{ IsChords: true }] }
            ? sentence with
            {
                Strum = new(Enumerable.Repeat(beat.ToValueList(), metre.BeatsPerBar)),
                Value = sentence.Value == NoteValue.SwingEighths ? NoteValue.SwingEighths : null,
            }
            : sentence;
    }
}
