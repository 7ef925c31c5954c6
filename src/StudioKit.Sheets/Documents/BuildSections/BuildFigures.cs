using System.Globalization;

namespace StudioKit.Sheets.Documents.BuildSections;

/// <summary>Counts, measures and prices as the build sheet's tables have them.</summary>
internal static class BuildFigures
{
    public static string Count(int count) => count.ToString(CultureInfo.InvariantCulture);

    public static string Number(double value, string format = "0.#") => value.ToString(format, CultureInfo.InvariantCulture);

    public static string Money(decimal? price) => price?.ToString("0.00", CultureInfo.InvariantCulture) ?? "?";
}
