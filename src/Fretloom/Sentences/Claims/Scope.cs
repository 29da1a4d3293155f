using Fretloom.Claims;
using Fretloom.Neck;
using Fretloom.Sentences.Reading;
using Fretloom.Theory;

namespace Fretloom.Sentences.Claims;

/// <summary>The parts of what a claim speaks of.</summary>
internal enum ScopePart
{
    Keys,
    Instrument,
    Strings,
    Frets,
    Capo,
}

/// <summary>What a claim speaks of, as far as it was read; complete when the claim itself begins.</summary>
internal sealed class Scope(ClaimDefaults defaults)
{
    private readonly Dictionary<ScopePart, Token> _said = [];

    public ClaimDefaults Defaults { get; } = defaults;

    public KeyScope? Keys { get; set; }

    public PlaceScope? Places { get; set; }

    public FretRange? Window { get; set; }

    public Instrument? Instrument { get; set; }

    public StringSet? Strings { get; set; }

    public int Capo { get; set; }

    /// <summary>The string numbers said, with their places.</summary>
    public List<(int Number, Token Place)> StringPlaces { get; } = [];

    /// <summary>The first word of the claim itself; a scope that is missing goes before it.</summary>
    public Token ClaimBegins { get; private set; }

    /// <summary>The instrument chosen; null when the places are listed ones or tunings.</summary>
    public Instrument? ChosenInstrument => (Places as PlaceScope.On)?.Instrument;

    /// <summary>The strings chosen on <see cref="ChosenInstrument"/>; null when that is.</summary>
    public StringSet? ChosenStrings => Places is PlaceScope.On on ? on.Strings ?? on.Instrument.AllStrings : null;

    /// <summary>How many strings a phrase names; null when that depends on the case.</summary>
    public int? CountOf(OtherStrings? strings) =>
        strings is { Strings: { } said } ? said.Count
        : strings is { Instrument: { } other } ? other.Strings.Count
        : Places is PlaceScope.Tunings tunings ? tunings.Strings
        : ChosenStrings?.Count;

    /// <summary>Whether a part was said.</summary>
    public bool Has(ScopePart part) => _said.ContainsKey(part);

    /// <summary>Notes that a part was said; a failure when it had been before.</summary>
    public Failure? Note(ScopePart part, Token place)
    {
        if (_said.TryAdd(part, place))
        {
            return null;
        }

        return Failure.At(
            place,
            part switch
            {
                ScopePart.Keys => "the keys were already chosen earlier in this sentence",
                ScopePart.Instrument => "the instrument was already chosen earlier in this sentence",
                ScopePart.Strings => "the strings were already chosen earlier in this sentence",
                ScopePart.Capo => "the capo was already placed earlier in this sentence",
                _ => "the frets were already chosen earlier in this sentence",
            }
        );
    }

    /// <summary>Fills in what was left unsaid, and checks what was said against the instrument.</summary>
    /// <param name="begins">The first word of the claim itself.</param>
    public Failure? Complete(Token begins)
    {
        ClaimBegins = begins;
        if (Places is null)
        {
            var instrument = Instrument ?? Defaults.Instrument;
            if (Has(ScopePart.Capo) && Capo >= instrument.Frets)
            {
                return Failure.At(
                    _said[ScopePart.Capo],
                    $"the {instrument} has {instrument.Frets} frets; a capo sits at fret 1 to {instrument.Frets - 1}"
                );
            }

            if (StringNames.Missing(StringPlaces, instrument) is { } missing)
            {
                return missing;
            }

            Places = new PlaceScope.On(
                Has(ScopePart.Capo) ? instrument.WithCapo(Capo) : instrument,
                Has(ScopePart.Strings) ? Strings
                    : Instrument is null ? Defaults.Strings
                    : null
            );
        }

        return ChosenInstrument is { } chosen ? OnInstrument(chosen)
            : Has(ScopePart.Capo) ? Failure.At(_said[ScopePart.Capo], "a capo goes with an instrument that is named")
            : null;
    }

    /// <summary>The same, with what was left unsaid such that no claim is refused for it; null where what was said is wrong.</summary>
    /// <param name="begins">The first word of the claim itself.</param>
    public Scope? Anywhere(Token begins)
    {
        var hasPlace = Has(ScopePart.Instrument) || Has(ScopePart.Strings);
        var anywhere = new Scope(Defaults)
        {
            Keys = Keys ?? new KeyScope.One(new Key(default, ScaleKind.Major)),
            Places = hasPlace ? Places : new PlaceScope.Listed(IsPalindromic: false, IsFourString: false),
            Window = Window ?? new FretRange(0, 0),
            Instrument = Instrument,
            Strings = Strings,
            Capo = Capo,
        };
        anywhere.StringPlaces.AddRange(StringPlaces);
        foreach (var (part, place) in _said)
        {
            anywhere._said.Add(part, place);
        }

        return anywhere.Complete(begins) is null ? anywhere : null;
    }

    private Failure? OnInstrument(Instrument instrument) =>
        BeyondNeck(instrument, ChosenStrings!.Value) is { } beyond ? Failure.At(_said[ScopePart.Frets], beyond) : null;

    /// <summary>Why the frets chosen are not on some strings; null where they are.</summary>
    public string? BeyondNeck(Instrument instrument, StringSet strings)
    {
        var last = instrument.LastFretOf(strings);
        return !(Window?.Last > last) ? null
            : last == instrument.LastFret ? $"the {instrument} has {last} frets; there is no fret {Window.Value.Last}"
            : $"the short string of the {instrument} has {last} frets from its own nut; there is no fret {Window.Value.Last}";
    }
}
