using Fretloom.Claims.Checking;
using Fretloom.Neck;
using Fretloom.Sentences;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Claims.Discovery;

/// <summary>Says what to show so that a statement can be seen: one key, the strings that it names, one octave of frets.</summary>
internal static class Examples
{
    private const int Octave = 12;
    private const int LastOfOctave = Octave - 1;

    private static readonly CheckOptions Options = new() { LooksElsewhere = false, MostFailures = 0 };

    /// <summary>The sentences to show, necks before shapes; empty when nothing that is spoken of lies on a neck.</summary>
    /// <param name="claim">What is true, with what it takes.</param>
    /// <param name="place">The strings that it is shown on.</param>
    /// <param name="keys">Where it is true; the one with the fewest accidentals in which it says anything is taken.</param>
    public static ValueList<ShowSentence> Of(Claim claim, PlaceScope.On place, KeyScope keys) =>
        keys.Keys.OrderBy(Survey.Accidentals).FirstOrDefault(key => Holds(claim, place, key)) is { } key
            ? In(key, claim is Claim.If condition ? condition.Then : claim, place)
            : [];

    /// <summary>The same in a key, whether it is true there or not.</summary>
    public static ValueList<ShowSentence> In(Key key, Claim claim, PlaceScope.On place) =>
        Views(claim, key)
            .GroupBy(view => view.On)
            .OrderBy(one => one.Key.IsOfShapes)
            .Select(one =>
                Sentence(
                    one.Key,
                    one.SelectMany(view => view.Subjects).Distinct(),
                    place,
                    key,
                    Frets(one.Key, claim, place, key)
                )
            )
            .ToValueList();

    private static bool Holds(Claim claim, PlaceScope.On place, Key key) =>
        ClaimChecker.Check(new ClaimSentence(new KeyScope.One(key), place, null, claim), Options).Verdict
        == Verdict.Holds;

    /// <summary>
    /// One octave of frets, a short string's as well; of shapes so many that each has room at its lowest place. A span on a card does not count
    /// open strings, that of a claim does: so shapes are shown without them.
    /// </summary>
    private static FretRange Frets(Scene on, Claim claim, PlaceScope.On place, Key key)
    {
        var instrument = on.Strings?.Instrument ?? place.Instrument;
        var strings = on.Strings is { } other ? other.Strings : place.Strings;
        var shorter = (strings ?? instrument.AllStrings).Numbers.Max(number => instrument.String(number).StartsAtFret);
        return on.IsOfShapes
            ? new FretRange(1, Math.Min(HighestAtLowest(on, claim, place, key) + shorter, instrument.LastFret))
            : new FretRange(0, Math.Min(LastOfOctave + shorter, instrument.LastFret));
    }

    /// <summary>The highest fret of any shape at its lowest place without open strings; of a form that may lie everywhere, of its chord's.</summary>
    private static int HighestAtLowest(Scene on, Claim claim, PlaceScope.On place, Key key)
    {
        var one = new Case(Place.On(place.Instrument, place.Strings), key, new NeckLine(null));
        return Parts
            .Of(claim)
            .OfType<ShapeSet>()
            .Where(set => set.Of == on.Strings && set.Voicing == on.Voicing && set.Notes > 2)
            .SelectMany(set => PlacedShapes.Of(one, set))
            .Select(shape =>
                shape.HasPlace ? Modulo.Of(shape.Frets.Min() - 1, Octave) + shape.Span : LastOfOctave + shape.Span
            )
            .Max();
    }

    private static ShowSentence Sentence(
        Scene on,
        IEnumerable<Subject> subjects,
        PlaceScope.On place,
        Key key,
        FretRange frets
    )
    {
        var instrument = on.Strings?.Instrument ?? place.Instrument;
        return new ShowSentence
        {
            Subjects = subjects.ToValueList(),
            Instrument = instrument,
            Key = key,
            Strings = on.Strings is { } other
                ? other.Strings ?? instrument.AllStrings
                : place.Strings ?? instrument.AllStrings,
            Frets = frets,
            Voicing = on.IsOfShapes
                ? VoicingPhrase.Unsaid with
                {
                    Kind = VoicingKind.OneNotePerString,
                    Arrangement = on.Voicing.Arrangement == Arrangement.Close ? null : on.Voicing.Arrangement,
                    Inversions = on.Voicing.Inversion == 0 ? null : [on.Voicing.Inversion],
                }
                : VoicingPhrase.Unsaid,
            IsOneShapeEach = on.IsOfShapes,
        };
    }

    /// <summary>What each part of a claim asks to see.</summary>
    private static IEnumerable<(Scene On, ValueList<Subject> Subjects)> Views(Claim claim, Key key) =>
        Parts
            .Of(claim)
            .Select(part =>
                part switch
                {
                    FretNoun { Kind: FretKind.HalfTurnCentre } noun => (Neck(noun.Of), [KeyNotes, Turns]),
                    FretNoun noun => (Neck(noun.Of), [KeyNotes]),
                    FretSet.OfDegree or FretSet.Numbers => (Neck(null), [KeyNotes]),
                    Claim.PatternIs { IsOwn: true } pattern => (Neck(pattern.One), [KeyNotes, Turns]),
                    Claim.PatternIs or Claim.PatternsHaveSameForm => (Neck(null), [KeyNotes]),
                    Claim.CarriesDegree degrees => (
                        Neck(null),
                        [Every(key, degrees.From), Every(key, degrees.To), Turns]
                    ),
                    Claim.CarriesFrets or FretRelation.AreCarriedToThemselves => (Neck(null), [KeyNotes, Turns]),
                    Claim.CarriesShapes => (Neck(null), [KeyNotes, Turns]),
                    ShapeSet { Notes: 2 } thirds => (Neck(thirds.Of), [new Subject.TheThirds()]),
                    ShapeSet shapes => (new Scene(shapes.Of, true, shapes.Voicing), [Chords(shapes, key)]),
                    _ => (Neck(null), (ValueList<Subject>)[]),
                }
            )
            .Where(view => view.Item2.Count > 0);

    private static Subject KeyNotes => new Subject.NotesOfTheKey();

    private static Subject Turns => new Subject.TheSymmetries();

    private static Scene Neck(OtherStrings? strings) => new(strings, false, default);

    private static Subject.EveryNote Every(Key key, int degree) => new(key.Notes[degree - 1]);

    private static Subject Chords(ShapeSet shapes, Key key) =>
        shapes switch
        {
            ShapeSet.Several several => new Subject.ChordsOfTheKey(
                several.Family switch
                {
                    ShapeFamily.Triad => KeyChords.Triads,
                    ShapeFamily.Sixth => KeyChords.SixthChords,
                    _ => KeyChords.SeventhChords,
                }
            ),
            ShapeSet.OnDegree on => Numeral(OnDegree(key, on.Family, on.Degree).Numeral),
            ShapeSet.ByNumeral by => Numeral(by.Numeral),
            ShapeSet.OfQuality of => OfQuality(of.Quality, key),
            _ => throw new ArgumentOutOfRangeException(nameof(shapes)),
        };

    private static Subject.ChordsByNumeral Numeral(RomanNumeral numeral) => new([numeral]);

    private static DiatonicChord OnDegree(Key key, ShapeFamily family, int degree)
    {
        var number = new Degree(degree);
        return family switch
        {
            ShapeFamily.Triad => key.Triad(number),
            ShapeFamily.Sixth => key.Sixth(number),
            _ => key.Seventh(number),
        };
    }

    /// <summary>The first chord of the key that is of a quality; where none is, the one on its tonic.</summary>
    private static Subject OfQuality(ShapeQuality quality, Key key)
    {
        var chords = key.Triads().Concat(key.Sevenths()).Concat(key.Sixths());
        return chords.FirstOrDefault(one => SemitonesOf(one.Chord.Quality).SequenceEqual(quality.Semitones)) is { } own
            ? Numeral(own.Numeral)
            : new Subject.ChordsBySymbol([
                new Chord(key.Tonic, ChordQuality.All.First(one => SemitonesOf(one).SequenceEqual(quality.Semitones))),
            ]);
    }

    private static IEnumerable<int> SemitonesOf(ChordQuality quality) =>
        quality.Intervals.Select(interval => interval.Semitones);

    /// <summary>What one sentence shows together.</summary>
    private sealed record Scene(OtherStrings? Strings, bool IsOfShapes, ShapeVoicing Voicing);
}
