using CsCheck;
using Fretloom.Exercises;
using Fretloom.Sentences;
using Fretloom.Theory;

namespace Fretloom.Testing;

/// <summary>Random play sentences of everything that the sentences can say, and damaged ones.</summary>
public static class PlayGen
{
    /// <summary>Whole sentences that a reader can make: parts that contradict each other do not occur.</summary>
    public static Gen<PlaySentence> Play { get; } =
        Gen.Select(
            SentenceGen.Show,
            Order,
            Time,
            Hand,
            (material, order, time, hand) => Join(material, order, time, hand)
        );

    /// <summary>The canonical text of a sentence with one to four characters or words lost, doubled, swapped or replaced.</summary>
    public static Gen<string> Damaged { get; } =
        Gen.Select(
            Play,
            Gen.Select(Gen.Int[0, 5], Gen.Int[0, 999], Gen.Char[' ', '~']).List[1, 4],
            (sentence, damages) =>
                damages.Aggregate(
                    sentence.ToString(),
                    (text, damage) => SentenceGen.Damage(text, damage.Item1, damage.Item2, damage.Item3)
                )
        );

    private static Gen<PlaySentence> Order =>
        Gen.Select(
            Gen.Enum<Direction>().Nullable(),
            Gen.OneOf(Grouping.BrokenThirds, Grouping.Threes, Grouping.Fours).Nullable(),
            Gen.Enum<ChordWay>().Nullable(),
            Gen.Enum<KeyOrder>().Nullable(),
            Gen.Bool.Nullable(),
            Gen.Int[1, 5].Nullable(),
            (direction, grouping, through, keys, isBlock, octaves) =>
                new PlaySentence
                {
                    Direction = direction,
                    Grouping = grouping,
                    Through = through,
                    EveryKey = keys,
                    IsBlock = isBlock,
                    Octaves = octaves,
                }
        );

    private static Gen<PlaySentence> Time =>
        Gen.Select(
            Gen.Enum<NoteValue>().Nullable(),
            Gen.OneOf([.. Metre.All]).Nullable(),
            Ladder.Null(),
            Gen.Int[1, 99].Nullable(),
            Gen.Int[0, 4].Nullable(),
            Gen.Int[1, 16].Nullable(),
            Gen.Bool,
            (value, metre, tempo, times, countIn, echo, hasClick) =>
                new PlaySentence
                {
                    Value = value,
                    Metre = metre,
                    Tempo = tempo,
                    Times = times,
                    CountInBars = countIn,
                    EchoBars = echo,
                    HasClick = hasClick,
                }
        );

    private static Gen<PlaySentence> Hand =>
        Gen.Select(
            Gen.OneOf(Touching.Sustained, Touching.Short).Nullable(),
            Gen.Bool.Array[1, 3].Array[1, 4].Null(),
            Gen.OneOf(
                Gen.Enum<Picked>().Where(picked => picked is Picked.Down or Picked.Up).Array[0, 6],
                Gen.Enum<Picked>().Where(picked => picked > Picked.Up).Array[0, 8]
            ),
            Gen.Bool,
            (touch, strum, picking, isForTuning) =>
                new PlaySentence
                {
                    Touch = touch,
                    Strum = strum is null ? null : new StrumPattern(strum.Select(group => group.ToValueList())),
                    Picking = picking.ToValueList(),
                    IsForTuning = isForTuning,
                }
        );

    private static Gen<TempoLadder> Ladder =>
        Gen.Select(
            Gen.Int[Tempo.Slowest, Tempo.Fastest],
            Gen.Int[Tempo.Slowest, Tempo.Fastest],
            Gen.Int[5, 40],
            (one, other, step) =>
                new TempoLadder(new Tempo(Math.Min(one, other)), new Tempo(Math.Max(one, other)), step)
        );

    private static PlaySentence Join(ShowSentence show, PlaySentence order, PlaySentence time, PlaySentence hand)
    {
        var subject = show.Subjects.FirstOrDefault(
            subject => subject is not (Subject.TheLandmarks or Subject.TheSymmetries),
            new Subject.ChordsOfTheKey(KeyChords.Triads)
        );
        var isChords = subject is Subject.ChordsOfTheKey or Subject.ChordsByNumeral or Subject.ChordsBySymbol;
        var isThirds = subject is Subject.TheThirds;
        var isRow =
            !isChords
            && !isThirds
            && subject is not (Subject.GivenSpots or Subject.GivenNotes or Subject.TheOpenStrings);
        var isOfKey =
            subject
            is Subject.ChordsOfTheKey
                or Subject.ChordsByNumeral
                or Subject.TheThirds
                or Subject.NotesOfTheKey
                or Subject.ScaleShapes { Scale: null };
        var isBlock = isChords || isThirds ? order.IsBlock : null;
        var strum = isChords && isBlock != false ? hand.Strum : null;
        var isByFingers = hand.Picking.Any(picked => picked > Picked.Up);
        return time with
        {
            Material = show with { Subjects = [subject], Labels = null, IsOneShapeEach = false },
            Direction = isChords && isByFingers && strum is null && isBlock != true ? null : order.Direction,
            Grouping = isRow ? order.Grouping : null,
            Octaves = isRow && subject is not Subject.EveryNote ? order.Octaves : null,
            Through = subject is Subject.ChordsOfTheKey ? order.Through : null,
            EveryKey = isOfKey ? order.EveryKey : null,
            IsBlock = isBlock,
            Touch = hand.Touch,
            Strum = strum,
            Picking = strum is not null || (isByFingers && (isBlock == true || isThirds)) ? [] : hand.Picking,
            IsForTuning = subject is Subject.TheOpenStrings && hand.IsForTuning,
        };
    }
}
