namespace Fretloom.HandFit;

/// <summary>
/// How well weights fitted to four fifths of the tuning half tell the other fifth. Shapes that are the same moved along the neck
/// stay together, and each such form counts once as often as every shape does. This chose the terms and the two forces; the
/// held-out half did not.
/// </summary>
internal static class CrossValidation
{
    private const int Folds = 5;

    /// <summary>
    /// The average surprise of the choices, each told by weights that were fitted without it; half by shapes, half by forms.
    /// </summary>
    public static double Surprise(IReadOnlyList<Choice> choices, double ridge, double tie)
    {
        var each = Enumerable
            .Range(0, Folds)
            .SelectMany(fold =>
            {
                var told = choices.Where(choice => FoldOf(choice) == fold).ToList();
                var weights = new ConditionalLogit([.. choices.Except(told)], ridge, tie).Fit();
                return told.Select(choice => (choice.Form, Surprise: ConditionalLogit.Surprise(choice, weights)));
            })
            .ToList();
        var byForm = each.GroupBy(one => one.Form).Average(form => form.Average(one => one.Surprise));
        return (each.Average(one => one.Surprise) + byForm) / 2;
    }

    private static int FoldOf(Choice choice)
    {
        var mixed = choice.Shape.Slide.Aggregate(17u, (hash, fret) => hash * 31 + (uint)(fret + 1));
        return (int)((mixed * 2654435761u >> 16) % Folds);
    }
}
