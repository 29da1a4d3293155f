using Fretloom.Neck;

namespace Fretloom.Pages.Pictures;

/// <summary>Where strings and frets of a part of a neck lie on the page: true to scale along the neck, evenly spaced across it.</summary>
internal sealed class NeckFrame
{
    private readonly NeckMap _map;
    private readonly double _scale;
    private readonly double _firstWireMm;
    private readonly double[] _wires;

    /// <summary>Lays out a part of a neck.</summary>
    /// <param name="map">The neck.</param>
    /// <param name="frets">The part of it.</param>
    /// <param name="measures">Sizes.</param>
    /// <param name="left">Where its leftmost wire, or the nut, stands.</param>
    /// <param name="top">Where the string nearest the floor lies.</param>
    /// <param name="scale">Points for a millimetre of the neck.</param>
    public NeckFrame(NeckMap map, FretRange frets, Measures measures, double left, double top, double scale)
    {
        _map = map;
        Frets = frets;
        Measures = measures;
        Left = left;
        Top = top;
        _scale = scale;
        _firstWireMm = map.Instrument.FretMm(FirstWire);
        _wires = [.. Enumerable.Range(0, frets.Last + 1).Select(fret => MillimetreX(map.Instrument.FretMm(fret)))];
    }

    public FretRange Frets { get; }

    public Measures Measures { get; }

    public double Left { get; }

    public double Top { get; }

    public double Right => WireX(Frets.Last);

    public double Bottom => Top + (_map.Strings.Count - 1) * Measures.Spacing;

    /// <summary>The upper edge of the neck.</summary>
    public double EdgeTop => Top - Measures.Overhang;

    /// <summary>The lower edge of the neck.</summary>
    public double EdgeBottom => Bottom + Measures.Overhang;

    /// <summary>The number of the leftmost wire; 0 is the nut.</summary>
    public int FirstWire => Math.Max(0, Frets.First - 1);

    public bool HasNut => FirstWire == 0;

    public bool HasOpenStrings => Frets.First == 0;

    /// <summary>Wires to the right of the leftmost.</summary>
    public IEnumerable<int> Wires => Enumerable.Range(FirstWire + 1, Frets.Last - FirstWire);

    public double WireX(int fret) => fret < _wires.Length ? _wires[fret] : MillimetreX(_map.Instrument.FretMm(fret));

    /// <summary>The middle of a fret; the place of the open strings' marks for fret 0.</summary>
    public double FretX(int fret) => fret == 0 ? Left - Measures.OpenOffset : (WireX(fret - 1) + WireX(fret)) / 2;

    /// <summary>The place of a whole or half fret number: halves lie on the wires.</summary>
    public double PlaceX(double place) =>
        place == Math.Floor(place) ? FretX((int)place) : WireX((int)Math.Floor(place));

    public double StringY(int number)
    {
        var fromNear = _map.Strings.Numbers.Count - 1 - IndexOf(number);
        return Top + fromNear * Measures.Spacing;
    }

    /// <summary>Whether a whole or half fret number lies in the row; a wire at its end does.</summary>
    public bool HasPlace(double place) => place >= Frets.First - 0.5 && place >= 0 && place <= Frets.Last + 0.5;

    /// <summary>A distance from the bare nut in millimetres.</summary>
    public double MillimetreX(double millimetres) => Left + _scale * (millimetres - _firstWireMm);

    public (double X, double Y) PointOf(Spot spot) => (FretX(spot.Fret), StringY(spot.String));

    public bool Contains(Spot spot) => Frets.Contains(spot.Fret) && IndexOf(spot.String) >= 0;

    /// <summary>The left and right end of a fret's column.</summary>
    public (double Left, double Right) ColumnOf(int fret) =>
        fret == 0
            ? (FretX(0) - Measures.Overhang, FretX(0) + Measures.Overhang - Measures.NutWidth)
            : (WireX(fret - 1), WireX(fret));

    /// <summary>
    /// A fret across the strings, as rectangles from the floor up: one, from edge to edge, unless short strings are counted from their own nuts and
    /// so have it elsewhere. Parts that lie outside the row are left out.
    /// </summary>
    /// <param name="place">A whole fret.</param>
    /// <param name="fromOwnNut">Whether each string is counted from its own nut.</param>
    public IEnumerable<(double Left, double Top, double Right, double Bottom)> Across(int place, bool fromOwnNut)
    {
        var numbers = _map.Strings.Numbers.Reverse().ToList();
        for (var first = 0; first < numbers.Count; )
        {
            var shift = Shift(numbers[first]);
            var last = first;
            while (last + 1 < numbers.Count && Shift(numbers[last + 1]) == shift)
            {
                last++;
            }

            if (Frets.Contains(place + shift))
            {
                var (left, right) = ColumnOf(place + shift);
                yield return (
                    left,
                    first == 0 ? EdgeTop : StringY(numbers[first]) - Measures.Spacing / 2,
                    right,
                    last == numbers.Count - 1 ? EdgeBottom : StringY(numbers[last]) + Measures.Spacing / 2
                );
            }

            first = last + 1;
        }

        int Shift(int number) => fromOwnNut ? _map.Instrument.String(number).StartsAtFret : 0;
    }

    private int IndexOf(int number)
    {
        for (var at = 0; at < _map.Strings.Count; at++)
        {
            if (_map.Strings.Numbers[at] == number)
            {
                return at;
            }
        }

        return -1;
    }
}
