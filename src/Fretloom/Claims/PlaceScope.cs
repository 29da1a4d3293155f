using Fretloom.Neck;

namespace Fretloom.Claims;

/// <summary>The string sets a claim speaks of.</summary>
public abstract record PlaceScope
{
    private PlaceScope() { }

    /// <summary><c>on guitar strings 4-1</c>, <c>on a bass</c>.</summary>
    /// <param name="Instrument">The instrument; a short string counts from its own nut.</param>
    /// <param name="Strings">The strings; null for all.</param>
    public sealed record On(Instrument Instrument, StringSet? Strings) : PlaceScope
    {
        /// <summary>The instrument; a short string counts from its own nut.</summary>
        public Instrument Instrument { get; } = Instrument;

        /// <summary>The strings, all of them the instrument's; null for all.</summary>
        /// <exception cref="ArgumentException">The instrument has not all of them.</exception>
        public StringSet? Strings { get; } = Require.Has(Instrument, Strings);
    }

    /// <summary><c>on every palindromic four-string listed string set</c>.</summary>
    /// <param name="IsPalindromic">Only those whose steps read the same both ways.</param>
    /// <param name="IsFourString">Only those of four strings.</param>
    public sealed record Listed(bool IsPalindromic, bool IsFourString) : PlaceScope;

    /// <summary><c>on every 4 string tuning that is palindromic with steps 4 to 5</c>.</summary>
    public sealed record Tunings : PlaceScope
    {
        /// <summary>Makes the scope.</summary>
        /// <param name="strings">How many strings, 2 to 8.</param>
        /// <param name="isPalindromic">Only those whose steps read the same both ways.</param>
        /// <param name="least">The smallest step between neighbours in semitones, 1 to 11.</param>
        /// <param name="most">The largest.</param>
        /// <exception cref="ArgumentOutOfRangeException">A number is out of range, or the largest step is less than the smallest.</exception>
        public Tunings(int strings, bool isPalindromic = false, int least = 1, int most = 11)
        {
            ArgumentOutOfRangeException.ThrowIfLessThan(strings, 2);
            ArgumentOutOfRangeException.ThrowIfGreaterThan(strings, 8);
            ArgumentOutOfRangeException.ThrowIfLessThan(least, 1);
            ArgumentOutOfRangeException.ThrowIfLessThan(most, least);
            ArgumentOutOfRangeException.ThrowIfGreaterThan(most, 11);
            (Strings, IsPalindromic, Least, Most) = (strings, isPalindromic, least, most);
        }

        /// <summary>How many strings.</summary>
        public int Strings { get; }

        /// <summary>Only those whose steps read the same both ways.</summary>
        public bool IsPalindromic { get; }

        /// <summary>The smallest step in semitones, from a string to the next one toward the floor.</summary>
        public int Least { get; }

        /// <summary>The largest step.</summary>
        public int Most { get; }
    }
}
