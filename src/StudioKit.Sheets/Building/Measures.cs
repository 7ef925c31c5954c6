using System.Globalization;
using UnitsNet;

namespace StudioKit.Sheets.Building;

/// <summary>Lengths as a builder reads them off a tape.</summary>
internal sealed record Measures(SheetUnits Units)
{
    private const double MillimetresPerSixteenth = 25.4 / 16;

    public string Of(Length length) => Of(length.Millimeters);

    public string Of(double millimetres) => Units == SheetUnits.Both
        ? $"{Metric(millimetres)} ({Inches(millimetres)})"
        : Metric(millimetres);

    /// <summary>Millimetres to the tenth, without a point where there is nothing behind it.</summary>
    public static string Metric(double millimetres) => $"{millimetres.ToString("0.#", CultureInfo.InvariantCulture)} mm";

    /// <summary>Inches to the nearest sixteenth, as a fraction in its lowest terms.</summary>
    public static string Inches(double millimetres)
    {
        var sixteenths = (int)Math.Round(millimetres / MillimetresPerSixteenth, MidpointRounding.AwayFromZero);
        var (whole, rest) = (sixteenths / 16, sixteenths % 16);
        if (rest == 0)
        {
            return FormattableString.Invariant($"{whole} in");
        }

        var divisor = rest % 8 == 0 ? 8 : rest % 4 == 0 ? 4 : rest % 2 == 0 ? 2 : 1;
        var fraction = FormattableString.Invariant($"{rest / divisor}/{16 / divisor} in");
        return whole == 0 ? fraction : FormattableString.Invariant($"{whole} {fraction}");
    }
}
