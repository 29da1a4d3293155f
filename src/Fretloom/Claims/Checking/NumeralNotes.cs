using Fretloom.Theory;

namespace Fretloom.Claims.Checking;

/// <summary>What is to be known of the chords that a claim names by numeral: notes outside the key, and a flat that counts from the key's own degree.</summary>
internal static class NumeralNotes
{
    /// <summary>A line for each numeral of which there is something to say.</summary>
    public static ValueList<string> Of(ClaimSentence sentence)
    {
        var keys = sentence.Keys.Keys.GroupBy(key => key.Kind).Select(kind => kind.MinBy(Survey.Accidentals)!).ToList();
        return Parts
            .Of(sentence.Claim)
            .OfType<ShapeSet.ByNumeral>()
            .Select(shape => shape.Numeral)
            .Distinct()
            .Select(numeral => Of(numeral, keys, sentence.Keys is KeyScope.One))
            .OfType<string>()
            .ToValueList();
    }

    private static string? Of(RomanNumeral numeral, List<Key> keys, bool isOneKey)
    {
        var told = keys.Where(key => Foreign(numeral, key).Any() || IsPlainOne(numeral, key)).ToList();
        return told.Count == 0 ? null
            : isOneKey ? Of(numeral, told[0])
            : string.Join(' ', told.GroupBy(key => Reason(numeral, key)).Select(Same));

        string Same(IEnumerable<Key> same) =>
            $"{Of(numeral, same.First())} The same goes for every {ClaimWords.List(same.Select(key => ClaimWords.Of(key.Kind)))} key.";
    }

    /// <summary>What is to be said, apart from names: kinds of key with equal reasons share a line.</summary>
    private static (bool IsPlainOne, int ForeignOnC) Reason(RomanNumeral numeral, Key key) =>
        (
            IsPlainOne(numeral, key),
            Twelve.Turned(
                Foreign(numeral, key).Aggregate(0, (set, note) => set | 1 << note.PitchClass.Number),
                -key.Tonic.PitchClass.Number
            )
        );

    private static string Of(RomanNumeral numeral, Key key)
    {
        var (chord, name) = (numeral.InKey(key), $"{key.Tonic} {ClaimWords.Of(key.Kind)}");
        if (IsPlainOne(numeral, key))
        {
            var plain = new RomanNumeral(new Degree(numeral.Degree.Number), numeral.Quality, numeral.Inversion);
            return $"In {name} {plain} is {plain.InKey(key)}, and {numeral}, counted from the key's own degree, is {chord}: for {plain.InKey(key)} say {plain}.";
        }

        var foreign = Foreign(numeral, key).Select(note => note.ToString()).ToList();
        return $"{numeral} is {chord} in {name}; {ClaimWords.List(foreign)} {(foreign.Count == 1 ? "is" : "are")} not in the key.";
    }

    private static IEnumerable<NoteName> Foreign(RomanNumeral numeral, Key key) =>
        numeral.InKey(key).Notes.Where(note => !key.PitchClasses.Contains(note.PitchClass));

    /// <summary>Whether the sign was meant from the major scale, as common usage counts, and the key has that note without it: bIII in a minor key.</summary>
    private static bool IsPlainOne(RomanNumeral numeral, Key key)
    {
        var (number, alteration) = (numeral.Degree.Number, numeral.Degree.Alteration);
        var ofMajor = key.Tonic.Plus(ScaleKind.Major.Intervals[number - 1]);
        return alteration != 0
            && numeral.Target is null
            && new NoteName(ofMajor.Step, ofMajor.Alteration + alteration) == key.Notes[number - 1];
    }
}
