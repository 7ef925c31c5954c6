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

    public static string Time(double seconds) => $"{TimeMark(seconds)} s";

    public static string TimeMark(double seconds)
    {
        var shown = ThirdStopSeries.Times.MarkOf(seconds) ?? seconds;
        return shown < LongestFraction
            ? $"1/{DialScale.ThreeDigits(1 / shown)}"
            : DialScale.ThreeDigits(shown);
    }

    public static string Thirds(double stops) => Rounded(stops, PowerStep.Third);

    /// <summary>Signed, to the nearest click of a dial, e.g. <c>+1 1/2</c>.</summary>
    public static string Rounded(double stops, PowerStep step)
    {
        var parts = step.ClicksPerStop();
        var clicks = (long)Math.Round(Math.Clamp(Math.Abs(stops), 0, 1e6) * parts, MidpointRounding.AwayFromZero);
        if (clicks == 0)
        {
            return "0";
        }

        var whole = clicks / parts;
        var part = clicks % parts == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $"{clicks % parts}/{parts}");
        var number = whole == 0 ? part : $"{whole.ToString(CultureInfo.InvariantCulture)} {part}".TrimEnd();
        return (stops < 0 ? "−" : "+") + number;
    }

    /// <summary>A loss or step to the nearest click with its noun, e.g. <c>1/3 stop</c>, <c>1 stop</c>, <c>1 2/3 stops</c>.</summary>
    public static string Count(double stops, PowerStep step = PowerStep.Third)
    {
        var number = Rounded(Math.Abs(stops), step).TrimStart('+');
        var clicks = Math.Round(Math.Abs(stops) * step.ClicksPerStop(), MidpointRounding.AwayFromZero);
        return clicks > step.ClicksPerStop() || clicks == 0 ? $"{number} stops" : $"{number} stop";
    }

    public static string Signed(double stops)
    {
        var rounded = Math.Round(stops, 2);
        var sign = rounded switch { < 0 => "−", > 0 => "+", _ => "" };
        return sign + Math.Abs(rounded).ToString("0.00", CultureInfo.InvariantCulture);
    }

    private static string MarkText(DialScale scale, double value) =>
        scale.MarkOf(value) is { } mark
            ? mark.ToString("0.#", CultureInfo.InvariantCulture)
            : DialScale.ThreeDigits(value);
}
