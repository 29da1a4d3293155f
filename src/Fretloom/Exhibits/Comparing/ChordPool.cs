using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Exhibits.Comparing;

/// <summary>Everything that a hand reaches of one chord up to the body; each part is found once, when it is first looked at.</summary>
/// <remarks>The neck meets the body of most instruments at frets 12 to 14 (common practice, no source); beyond, a hand is in its way.</remarks>
internal sealed class ChordPool
{
    private const int HighestCapo = 7;
    private const int FretsBeyondCapo = 4;
    private const int LastFretBeforeBody = 14;

    private readonly Player _player;
    private readonly Key _key;
    private readonly ShapeSource.OfChord _chord;
    private readonly Voicing _voicing;
    private readonly Lazy<List<Reached>> _everywhere;
    private readonly Lazy<List<Reached>>[] _onRuns;
    private readonly Lazy<List<Reached>> _withCapo;

    /// <summary>Makes a pool.</summary>
    public ChordPool(Player player, Key key, ShapeSource.OfChord chord, Voicing voicing)
    {
        (_player, _key, _chord, _voicing) = (player, key, chord, voicing);
        _everywhere = new(() => [.. FindEverywhere()]);
        _onRuns =
        [
            .. Enumerable
                .Range(0, player.Instrument.Strings.Count + 1)
                .Select(size => new Lazy<List<Reached>>(() => [.. FindOnRuns(size)])),
        ];
        _withCapo = new(() => [.. FindWithCapo()]);
    }

    /// <summary>In the voicing asked for, any member lowest, on all strings and frets.</summary>
    public List<Reached> Everywhere => _everywhere.Value;

    /// <summary>On every run of so many neighbours, any member lowest; from four members on the fifth may be left out.</summary>
    public List<Reached> OnRuns(int size) => _onRuns[size].Value;

    /// <summary>With a capo elsewhere, in the first four frets beyond it, with at least one open string.</summary>
    public List<Reached> WithCapo => _withCapo.Value;

    private IEnumerable<Reached> FindEverywhere() =>
        _voicing switch
        {
            Voicing.OneNotePerString each => Find(NeckToBody, each with { Inversions = [], Position = null }),
            Voicing.Easy easy => OnRuns(easy.StringCount),
            _ => Find(NeckToBody, new Voicing.Strummed(null, [])),
        };

    private IEnumerable<Reached> FindWithCapo()
    {
        var here = _player.Instrument.Capo;
        return Enumerable
            .Range(1, Math.Min(HighestCapo, _player.Instrument.Frets - 1))
            .Where(capo => capo != here)
            .SelectMany(capo => FindBeyond(_player with { Instrument = _player.Instrument.WithCapo(capo) }))
            .Where(reached => reached.Candidate.HasOpenString);
    }

    private IEnumerable<Reached> FindBeyond(Player player)
    {
        var frets = new FretRange(0, Math.Min(FretsBeyondCapo, player.Instrument.LastFret));
        var map = new NeckMap(player.Instrument, _key, player.Instrument.AllStrings, frets);
        return Find(
            map,
            _voicing switch
            {
                Voicing.OneNotePerString each => each with { Inversions = [], Position = null },
                Voicing.Easy easy => easy with { Position = null },
                _ => new Voicing.Strummed(null, []),
            }
        );
    }

    private IEnumerable<Reached> FindOnRuns(int size) =>
        _player
            .Instrument.AllStrings.Neighbours(size)
            .SelectMany(run =>
                Find(new NeckMap(_player.Instrument, _key, run, NeckToBody.Frets), new Voicing.Strummed(null, []))
            )
            .Where(reached => reached.Candidate.Shape.Notes.Count == size);

    private IEnumerable<Reached> Find(NeckMap map, Voicing voicing) =>
        ShapeFinder.WhyNot(map, _chord.Chord, voicing) is not null
            ? []
            : ShapeFinder
                .Find(map, _chord, voicing)
                .Select(shape =>
                    Candidate.InReach(
                        _player with
                        {
                            Instrument = map.Instrument,
                        },
                        shape,
                        voicing is Voicing.OneNotePerString
                    )
                )
                .OfType<Reached>();

    private NeckMap NeckToBody =>
        new(
            _player.Instrument,
            _key,
            _player.Instrument.AllStrings,
            new FretRange(0, Math.Min(_player.Instrument.LastFret, LastFretBeforeBody))
        );
}
