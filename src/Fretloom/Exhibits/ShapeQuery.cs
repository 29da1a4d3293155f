using Fretloom.Exhibits.Comparing;
using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Sentences;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Exhibits;

/// <summary>Finds the shapes that a completed sentence asks for.</summary>
internal static class ShapeQuery
{
    /// <summary>
    /// The shapes found and what has none, or why there can be none; shapes and error are null when the sentence asks for no shape.
    /// </summary>
    internal readonly record struct Answer(
        ValueList<ShapeInHand>? Found,
        ValueList<ShapeSource> Missing,
        ResolutionError? Error
    );

    /// <summary>Runs every subject that asks for shapes, in the order said.</summary>
    public static Answer Run(ShowSentence sentence, NeckMap map, Player player)
    {
        var found = new List<ShapeInHand>();
        var missing = new List<ShapeSource>();
        var isAsked = false;
        foreach (var subject in sentence.Subjects)
        {
            if (subject is Subject.ScaleShapes scale)
            {
                isAsked = true;
                if (scale.NotesPerString is null && ScaleShapeFinder.WhyNot(map, Position(sentence)) is { } reason)
                {
                    return new(null, [], new(ShowPhrase.Position, reason));
                }

                Add(new ShapeSource.OfScale(scale.Scale ?? map.Key.Scale), ShapesOf(scale, sentence, map), null, null);
            }
            else if (ChordsOf(subject, map.Key) is { } chords)
            {
                isAsked = true;
                var voicing = VoicingOf(sentence.Voicing, subject);
                foreach (var chord in chords)
                {
                    if (WhyNot(map, chord.Chord, voicing) is { } wrong)
                    {
                        return new(null, [], wrong);
                    }

                    Add(
                        chord,
                        ShapeFinder.Find(map, chord, voicing),
                        voicing,
                        sentence.Hand is null ? null : new InsteadFinder(player, map.Key, chord, voicing)
                    );
                }
            }
        }

        return new(isAsked ? found.ToValueList() : null, missing.Distinct().ToValueList(), null);

        void Add(ShapeSource source, ValueList<Shape> shapes, Voicing? voicing, InsteadFinder? instead)
        {
            var isOneNotePerString = voicing is Voicing.OneNotePerString;
            var inHand = ShapeFingering.Sorted(
                shapes.Select(shape => ShapeFingering.Of(player, shape, isOneNotePerString))
            );
            var kept = sentence.IsOneShapeEach ? inHand.Take(1) : inHand;
            found.AddRange(
                kept.Select(shape =>
                    instead is null || shape.Width == Width.InReach
                        ? shape
                        : shape with
                        {
                            Instead = instead.For(shape.Shape),
                        }
                )
            );
            if (shapes.Count == 0)
            {
                missing.Add(source);
            }
        }
    }

    /// <summary>Why a chord can have no shape so voiced, with the phrase to change; null when it may have one.</summary>
    internal static ResolutionError? WhyNot(NeckMap map, Chord chord, Voicing voicing) =>
        ShapeFinder.WhyNot(map, chord, voicing) is { } wrong ? new(PhraseToChange(map, chord, voicing), wrong) : null;

    private static ShowPhrase PhraseToChange(NeckMap map, Chord chord, Voicing voicing)
    {
        Voicing anywhere = voicing switch
        {
            Voicing.OneNotePerString each => each with { Position = null },
            Voicing.Strummed strummed => strummed with { Position = null },
            Voicing.Easy easy => easy with { Position = null },
            _ => voicing,
        };
        var inAnyInversion = voicing switch
        {
            Voicing.OneNotePerString each => each with { Inversions = [] },
            Voicing.Strummed strummed => strummed with { Inversions = [] },
            _ => voicing,
        };
        var onAllStrings = new NeckMap(map.Instrument, map.Key, map.Instrument.AllStrings, map.Frets);
        return ShapeFinder.WhyNot(map, chord, anywhere) is null ? ShowPhrase.Position
            : ShapeFinder.WhyNot(map, chord, inAnyInversion) is null ? ShowPhrase.Inversion
            : ShapeFinder.WhyNot(onAllStrings, chord, anywhere) is null ? ShowPhrase.Strings
            : ShowPhrase.Subject;
    }

    private static ValueList<Shape> ShapesOf(Subject.ScaleShapes subject, ShowSentence sentence, NeckMap map)
    {
        var scale = subject.Scale ?? map.Key.Scale;
        return subject.NotesPerString is { } count
            ? ScaleShapeFinder.NotesPerString(map, scale, count)
            : ScaleShapeFinder.InPosition(map, scale, Position(sentence));
    }

    private static int Position(ShowSentence sentence) => sentence.Voicing.Position ?? 1;

    /// <summary>The chords that a subject names, in the order said; null when it names none.</summary>
    internal static IEnumerable<ShapeSource.OfChord>? ChordsOf(Subject subject, Key key) =>
        subject switch
        {
            Subject.ChordsOfTheKey family => OnDegrees(Family(key, family.Chords), family.Range)
                .Select(one => new ShapeSource.OfChord(one.Chord, one.Numeral)),
            Subject.ChordsByNumeral numerals => numerals.Numerals.Select(numeral => new ShapeSource.OfChord(
                numeral.InKey(key),
                numeral
            )),
            Subject.ChordsBySymbol symbols => symbols.Chords.Select(chord => new ShapeSource.OfChord(chord, null)),
            _ => null,
        };

    private static IEnumerable<DiatonicChord> OnDegrees(ValueList<DiatonicChord> chords, DegreeRange? range) =>
        range is null ? chords : range.Degrees.Select(degree => chords[degree - 1]);

    private static ValueList<DiatonicChord> Family(Key key, KeyChords chords) =>
        chords switch
        {
            KeyChords.Triads => key.Triads(),
            KeyChords.SixthChords => key.Sixths(),
            KeyChords.SeventhChords => key.Sevenths(),
            _ => key.Ninths(),
        };

    /// <summary>
    /// What the sentence says, else: chords named by symbol are strummed unless an order of members is named, chords of
    /// the key sound one note per string in close position; the root lies lowest.
    /// </summary>
    internal static Voicing VoicingOf(VoicingPhrase said, Subject subject)
    {
        var inversions = said.Inversions ?? (said.Arrangement == Arrangement.AnyOrder ? [] : [0]);
        if (said.EasyStrings is { } strings)
        {
            return new Voicing.Easy(strings, said.Position);
        }

        var usual =
            subject is Subject.ChordsBySymbol && said.Arrangement is null
                ? VoicingKind.Strummed
                : VoicingKind.OneNotePerString;
        return (said.Kind ?? usual) == VoicingKind.Strummed
            ? new Voicing.Strummed(said.Position, inversions)
            : new Voicing.OneNotePerString(said.Arrangement ?? Arrangement.Close, inversions, said.Position);
    }
}
