using Fretloom.Exercises;
using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Sentences;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Exhibits.Playing;

/// <summary>What is played in one key.</summary>
/// <param name="Key">The key.</param>
/// <param name="Groups">Its chords or thirds in order, or its one row of notes.</param>
internal sealed record Part(Key Key, ValueList<PlayedGroup> Groups);

/// <summary>Finds what a completed play sentence is made of, key by key.</summary>
internal static class Material
{
    /// <summary>The parts in order, or what stands in the way.</summary>
    public static (ValueList<Part> Parts, PlayError? Error) Of(PlaySentence complete, Player player)
    {
        var home = complete.Material.Key!;
        var keys = complete.EveryKey is { } order ? TwelveKeys.From(home, order) : [home];
        return complete.Material.Subjects[0].IsChords ? Chords(complete, player, keys) : Others(complete, player, keys);
    }

    // One walk through all keys, so that the hand moves little from key to key too.
    private static (ValueList<Part>, PlayError?) Chords(PlaySentence complete, Player player, ValueList<Key> keys)
    {
        var steps = new List<(Key Key, ChordWalk.Step Step)>();
        foreach (var key in keys)
        {
            var material = complete.Material with { Key = key };
            foreach (var subject in material.Subjects)
            {
                var (found, error) = ChordWalk.Steps(
                    material,
                    subject,
                    InOrder(subject, key, complete.Through),
                    ShowResolver.MapOf(material),
                    player
                );
                if (error is not null)
                {
                    return ([], InKey(error, key, keys));
                }

                steps.AddRange(found.Select(step => (key, step)));
            }
        }

        var shapes = ChordWalk.Choose(steps.Select(step => step.Step).ToValueList());
        return (
            steps
                .Zip(
                    shapes,
                    (step, shape) =>
                        (
                            step.Key,
                            Group: PlayedGroup.Of(
                                shape,
                                step.Step.Chord,
                                complete.Material.Voicing.Inversions is not null
                            )
                        )
                )
                .GroupBy(step => step.Key)
                .Select(key => new Part(key.Key, key.Select(step => step.Group).ToValueList()))
                .ToValueList(),
            null
        );
    }

    private static IEnumerable<ShapeSource.OfChord> InOrder(Subject subject, Key key, ChordWay? way)
    {
        var chords = ShapeQuery.ChordsOf(subject, key)!;
        if (subject is not Subject.ChordsOfTheKey family || way is null)
        {
            return chords;
        }

        var degrees = family.Range is { } range ? range.Degrees.ToValueList() : [1, 2, 3, 4, 5, 6, 7];
        var byDegree = degrees.Zip(chords).ToDictionary();
        return Ways.Order(degrees, way.Value).Select(degree => byDegree[degree]);
    }

    private static (ValueList<Part>, PlayError?) Others(PlaySentence complete, Player player, ValueList<Key> keys)
    {
        var parts = new List<Part>();
        foreach (var key in keys)
        {
            var material = complete.Material with { Key = key };
            var map = ShowResolver.MapOf(material);
            var (groups, error) =
                material.Subjects[0] is Subject.TheThirds
                    ? Rows.Thirds(map, player)
                    : Row(
                        ScaleOf(material.Subjects[0], key) is { } scale
                            ? new ScaleRows(scale, map, player).Of(
                                material.Subjects[0],
                                material.Voicing.Position,
                                complete.Octaves
                            )
                            : Rows.Of(material, map, player)
                    );
            if (error is not null)
            {
                return ([], InKey(error, key, keys));
            }

            parts.Add(new(key, groups));
        }

        return (parts.ToValueList(), null);
    }

    private static Scale? ScaleOf(Subject subject, Key key) =>
        subject switch
        {
            Subject.NotesOfScale notes => notes.Scale,
            Subject.ScaleShapes shapes => shapes.Scale ?? key.Scale,
            Subject.NotesOfTheKey => key.Scale,
            _ => null,
        };

    private static (ValueList<PlayedGroup>, PlayError?) Row((PlayedGroup? Row, PlayError? Error) answer) =>
        answer.Row is { } row ? ([row], null) : ([], answer.Error);

    private static PlayError InKey(PlayError error, Key key, ValueList<Key> keys) =>
        keys.Count == 1 ? error : error with { Message = $"in {key}: {error.Message}" };
}
