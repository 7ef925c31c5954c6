namespace StudioKit.Kits.Quantities;

/// <summary>Wind as a speed or by the Beaufort scale.</summary>
internal static class WindText
{
    // Upper bounds of forces 0 to 11 at 10 m height [m/s], as the meteothes.gr table has them; force 12 has none.
    private static readonly double[] UpperBounds = [0.3, 1.5, 3.3, 5.4, 7.9, 10.7, 13.8, 17.1, 20.7, 24.4, 28.4, 32.6];

    /// <summary>Reads a speed; a Beaufort force stands for the upper bound of its band, as the worst that it may mean.</summary>
    public static Reading<double> Read(string text)
    {
        if (Force(text.Trim()) is not { } force)
        {
            return NumberText.Quantity(text, UnitDimension.Speed);
        }

        return NumberText.Whole(force).Then(number => number >= 0 && number < UpperBounds.Length
            ? Reading<double>.Good(UpperBounds[number])
            : Reading<double>.Bad($"'{text}' is no band of the Beaufort scale with an upper bound.", "Write 'Beaufort 0' to 'Beaufort 11', or a speed in m/s."));
    }

    private static string? Force(string text)
    {
        foreach (var word in new[] { "Beaufort", "Bft" })
        {
            if (text.StartsWith(word, StringComparison.OrdinalIgnoreCase))
            {
                return text[word.Length..];
            }

            if (text.EndsWith(word, StringComparison.OrdinalIgnoreCase))
            {
                return text[..^word.Length];
            }
        }

        return null;
    }
}
