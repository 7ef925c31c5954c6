using System.Globalization;

namespace StudioKit.Physics.Exposure.Series;

/// <summary>Words the settings as dials and cards show them.</summary>
internal static class ThirdStopText
{
    // Up to here times are written as a fraction of a second, above as decimals, as camera dials do.
    private const double LongestFraction = 0.28;

    public static string FNumber(double value) => "f/" + MarkText(ThirdStopSeries.FNumbers, value);

    public static string Speed(double value) => "ISO " + SpeedMark(value);

    public static string SpeedMark(double value) => MarkText(ThirdStopSeries.Speeds, value);

    public static string Power(double fraction) =>
        "1/" + ThirdStopScale.ThreeDigits(1 / (ThirdStopSeries.Powers.MarkOf(fraction) ?? fraction));

    public static string Time(double seconds) => $"{TimeMark(seconds)} s";

    public static string TimeMark(double seconds)
    {
        var shown = ThirdStopSeries.Times.MarkOf(seconds) ?? seconds;
        return shown < LongestFraction
            ? $"1/{ThirdStopScale.ThreeDigits(1 / shown)}"
            : ThirdStopScale.ThreeDigits(shown);
    }

    public static string Thirds(double stops)
    {
        var thirds = (long)Math.Round(Math.Clamp(Math.Abs(stops), 0, 1e6) * 3, MidpointRounding.AwayFromZero);
        if (thirds == 0)
        {
            return "0";
        }

        var whole = thirds / 3;
        var part = thirds % 3 == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $"{thirds % 3}/3");
        var number = whole == 0 ? part : $"{whole.ToString(CultureInfo.InvariantCulture)} {part}".TrimEnd();
        return (stops < 0 ? "−" : "+") + number;
    }

    /// <summary>A loss or step to the nearest third with its noun, e.g. <c>1/3 stop</c>, <c>1 stop</c>, <c>1 2/3 stops</c>.</summary>
    public static string Count(double stops)
    {
        var number = Thirds(Math.Abs(stops)).TrimStart('+');
        return Math.Round(Math.Abs(stops) * 3) is > 3 or 0 ? $"{number} stops" : $"{number} stop";
    }

    public static string Signed(double stops)
    {
        var rounded = Math.Round(stops, 2);
        var sign = rounded switch { < 0 => "−", > 0 => "+", _ => "" };
        return sign + Math.Abs(rounded).ToString("0.00", CultureInfo.InvariantCulture);
    }

    private static string MarkText(ThirdStopScale scale, double value) =>
        scale.MarkOf(value) is { } mark
            ? mark.ToString("0.#", CultureInfo.InvariantCulture)
            : ThirdStopScale.ThreeDigits(value);
}
