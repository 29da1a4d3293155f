namespace Fretloom.HandFit;

/// <summary>
/// How well weights fitted to four fifths of the tuning half tell the other fifth. Shapes that are the same moved along the neck
/// stay together. This chose the terms and the two forces; the held-out half did not.
/// </summary>
internal static class CrossValidation
{
    private const int Folds = 5;

    /// <summary>The average surprise of the choices, each told by weights that were fitted without it.</summary>
    public static double Surprise(IReadOnlyList<Choice> choices, double ridge, double tie) =>
        Enumerable
            .Range(0, Folds)
            .Sum(fold =>
            {
                var told = choices.Where(choice => FoldOf(choice) == fold).ToList();
                var weights = new ConditionalLogit([.. choices.Except(told)], ridge, tie).Fit();
                return ConditionalLogit.Surprise(told, weights) * told.Count;
            }) / choices.Count;

    private static int FoldOf(Choice choice)
    {
        var mixed = choice.Shape.Slide.Aggregate(17u, (hash, fret) => hash * 31 + (uint)(fret + 1));
        return (int)((mixed * 2654435761u >> 16) % Folds);
    }
}
