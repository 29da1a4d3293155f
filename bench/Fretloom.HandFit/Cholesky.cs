namespace Fretloom.HandFit;

/// <summary>Linear equations with a symmetric positive matrix, by Cholesky's decomposition.</summary>
internal static class Cholesky
{
    /// <summary>Solves <c>matrix</c> x = <c>right</c> for some rows and the same columns.</summary>
    public static double[] Solve(double[,] matrix, double[] right, int[] rows)
    {
        var count = rows.Length;
        var root = new double[count, count];
        var solved = new double[count];
        for (var row = 0; row < count; row++)
        {
            var sum = right[rows[row]];
            for (var column = 0; column < row; column++)
            {
                var rest = matrix[rows[row], rows[column]] - Dot(root, row, column);
                root[row, column] = rest / root[column, column];
                sum -= root[row, column] * solved[column];
            }

            root[row, row] = Math.Sqrt(matrix[rows[row], rows[row]] - Dot(root, row, row));
            solved[row] = sum / root[row, row];
        }

        for (var row = count - 1; row >= 0; row--)
        {
            for (var below = row + 1; below < count; below++)
            {
                solved[row] -= root[below, row] * solved[below];
            }

            solved[row] /= root[row, row];
        }

        return solved;
    }

    private static double Dot(double[,] root, int row, int column)
    {
        var sum = 0.0;
        for (var at = 0; at < column; at++)
        {
            sum += root[row, at] * root[column, at];
        }

        return sum;
    }
}
