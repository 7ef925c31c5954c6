namespace StudioKit.Cli.Tables;

/// <summary>A map of margins as a picture of characters.</summary>
internal static class MarginPicture
{
    /// <summary>What the characters mean.</summary>
    public const string Legend = "  # more than 1 stop under clipping   - under   . white   + 1 to 2 stops over   * more   ? unknown";

    /// <summary>The picture, a line for each row; every cell two characters wide, as characters are taller than wide.</summary>
    public static IEnumerable<string> Of(int columns, int rows, IReadOnlyList<double> margins) => Enumerable.Range(0, rows)
        .Select(row => "  " + string.Concat(Enumerable.Range(0, columns).Select(column => new string(Sign(margins[(row * columns) + column]), 2))));

    private static char Sign(double margin) => margin switch
    {
        double.NaN => '?',
        < -1 => '#',
        < 0 => '-',
        < 1 => '.',
        <= 2 => '+',
        _ => '*',
    };
}
