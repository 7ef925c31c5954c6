using System.Globalization;

namespace StudioKit.Web.Engine;

/// <summary>Writes a moved length as the length before it was written: in its unit, and with what stands after ± still there.</summary>
internal static class LengthInStyle
{
    private static readonly Dictionary<string, double> Millimetres = new(StringComparer.Ordinal) { ["mm"] = 1, ["cm"] = 10, ["m"] = 1000 };

    /// <summary>The value in the style of the one that it takes the place of; the value itself where either is no plain metric length.</summary>
    /// <param name="written">What stands in the kit, e.g. <c>45 cm ± 1 cm</c>.</param>
    /// <param name="value">What is to stand there, e.g. <c>470 mm</c>.</param>
    public static string Of(string written, string value)
    {
        var sign = written.IndexOf('±', StringComparison.Ordinal);
        var (head, known) = sign < 0 ? (written.Trim(), "") : (written[..sign].Trim(), " " + written[sign..].Trim());
        return Read(head) is { } before && Read(value) is { } now
            ? string.Create(CultureInfo.InvariantCulture, $"{now.Number * Millimetres[now.Unit] / Millimetres[before.Unit]:0.####} {before.Unit}{known}")
            : value + known;
    }

    private static (double Number, string Unit)? Read(string text)
    {
        var parts = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return parts.Length == 2 && Millimetres.ContainsKey(parts[1]) && double.TryParse(parts[0], NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? (number, parts[1]) : null;
    }
}
