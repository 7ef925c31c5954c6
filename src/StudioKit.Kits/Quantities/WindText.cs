using StudioKit.Physics.Structure;

namespace StudioKit.Kits.Quantities;

/// <summary>Wind as a speed or by the Beaufort scale.</summary>
internal static class WindText
{
    /// <summary>Reads a speed; a Beaufort force stands for the upper bound of its band, as the worst that it may mean.</summary>
    public static Reading<double> Read(string text)
    {
        if (Force(text.Trim()) is not { } force)
        {
            return text.Any(char.IsAsciiDigit)
                ? NumberText.Quantity(text, UnitDimension.Speed)
                : Reading<double>.Bad($"'{text}' does not say how hard it blows.", "Write for example 'Beaufort 3' or '5 m/s'.");
        }

        return NumberText.Whole(force).Then(number => number >= 0 && number <= Beaufort.Strongest
            ? Reading<double>.Good(Beaufort.HighestMean(number))
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
