using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Shapes;

/// <summary>What the notes of a chord's shapes may be: its members by index and, last, a bass that is foreign to it.</summary>
internal sealed class ChordVoices
{
    private const int FewestForLeavingOut = 4;

    private readonly ShapeSource.OfChord _source;
    private readonly Chord _chord;
    private readonly string[] _memberTexts;
    private readonly int[] _indexOfPitchClass = new int[12];

    public ChordVoices(ShapeSource.OfChord source)
    {
        _source = source;
        _chord = source.Chord;
        Names = HasForeignBass ? [.. _chord.Notes, _chord.Bass] : _chord.Notes;
        PitchClasses = PitchClassSet.Of(Names.Select(name => name.PitchClass));
        Essential = PitchClassSet.Of(Names.Where((_, index) => !MayBeLeftOut(index)).Select(name => name.PitchClass));
        _memberTexts = [.. Enumerable.Range(0, Count).Select(MemberText)];
        Array.Fill(_indexOfPitchClass, -1);
        for (var index = Count - 1; index >= 0; index--)
        {
            _indexOfPitchClass[Names[index].PitchClass.Number] = index;
        }
    }

    /// <summary>The members as the chord lists them, then a foreign bass.</summary>
    public ValueList<NoteName> Names { get; }

    /// <summary>What <see cref="Names"/> sound.</summary>
    public PitchClassSet PitchClasses { get; }

    /// <summary>The pitch classes that must sound.</summary>
    /// <remarks>
    /// May be left out: what <see cref="ChordQuality.Omissible"/> says, and in any chord of four or more members the perfect
    /// fifth (common practice, no source).
    /// </remarks>
    public PitchClassSet Essential { get; }

    public PitchClass Root => _chord.Root.PitchClass;

    public bool HasForeignBass => _chord.Inversion < 0;

    public int Count => Names.Count;

    /// <summary>
    /// Indexes of the voices that may lie lowest. The bass of a slash chord always lies there; else the inversions asked for,
    /// none meaning every member.
    /// </summary>
    public IEnumerable<int> Lowest(ValueList<int> inversions)
    {
        if (_chord.Bass != _chord.Root)
        {
            return [IndexOf(_chord.Bass.PitchClass)];
        }

        return inversions.Count == 0 ? Enumerable.Range(0, _chord.Notes.Count) : inversions.Distinct();
    }

    /// <summary>The pitch classes of <see cref="Lowest"/>.</summary>
    public PitchClassSet LowestPitchClasses(ValueList<int> inversions) =>
        PitchClassSet.Of(Lowest(inversions).Select(index => Names[index].PitchClass));

    /// <summary>
    /// Whether every colour tone (any member but root, third and fifth) sounds at most once, and over the root in the bass a
    /// ninth or higher one at least that far above it: C-E-G-D, not C-D-G-E, for Cadd9 (common practice, no source).
    /// </summary>
    public bool HasColoursInPlace(Grip grip) =>
        _chord
            .Quality.Intervals.Where(interval => interval.Steps is not (0 or 2 or 4))
            .All(interval =>
            {
                var heights = grip.HeightsOf(Root.Plus(interval.Semitones)).ToList();
                return heights.Count < 2 && (grip.Bass != Root || heights.All(height => height >= interval.Semitones));
            });

    /// <summary>Why an inversion does not exist, or null.</summary>
    public string? WhyNot(ValueList<int> inversions) =>
        inversions.Any(inversion => inversion < 0 || inversion >= _chord.Notes.Count)
            ? $"{_chord} has {_chord.Notes.Count} members, so its inversions go up to {_chord.Notes.Count - 1}."
            : null;

    /// <summary>The spots of a string within reach that sound a voice, frets ascending.</summary>
    public SoundingSpot[] SpotsOn(Reach reach, int number) =>
        [.. reach.On(number).Where(spot => PitchClasses.Contains(spot.PitchClass))];

    /// <summary>The shape of some spots that each sound a voice.</summary>
    public Shape ShapeOf(NeckMap map, StringSet strings, IEnumerable<Spot> spots) =>
        new(_source, map.Instrument, strings, spots.Select(spot => NoteAt(map, spot)));

    private int IndexOf(PitchClass pitchClass) => _indexOfPitchClass[pitchClass.Number];

    private ShapeNote NoteAt(NeckMap map, Spot spot)
    {
        var midi = map.SoundAt(spot);
        var index = IndexOf(PitchClass.FromSemitones(midi));
        var name = Names[index];
        return new ShapeNote(spot, Pitch.FromMidiNumber(midi, name), map.Key.DegreeOf(name), _memberTexts[index]);
    }

    private string MemberText(int index) =>
        index < _chord.Notes.Count ? _chord.MemberText(index) : _chord.Root.IntervalTo(_chord.Bass).ToDegreeText();

    private bool MayBeLeftOut(int index)
    {
        if (index >= _chord.Notes.Count || _chord.Notes.Count < FewestForLeavingOut)
        {
            return false;
        }

        var interval = _chord.Quality.Intervals[index];
        return interval is { Steps: 4, Semitones: 7 } || _chord.Quality.Omissible.Contains(interval);
    }
}
