using System.Globalization;

namespace StudioKit.Physics.Exposure.Series;

/// <summary>Words powers as dials show them.</summary>
internal static class PowerText
{
    /// <summary>A power this close to a click, in clicks, was meant as that click.</summary>
    public const double OnTheClick = 0.06;

    private static readonly PowerStep[] Others = [PowerStep.Third, PowerStep.Half];

    /// <summary>As one fraction; what the dial does not have is looked for on the others, else written with three digits.</summary>
    public static string Decimal(double fraction, PowerStep step) =>
        "1/" + DialScale.ThreeDigits(1 / (Steps(step).Select(one => ThirdStopSeries.PowersIn(one).MarkOf(fraction)).FirstOrDefault(mark => mark is not null) ?? fraction));

    /// <summary>As a full stop and what is added to it; none for a power on no click of any dial.</summary>
    public static string? InFullStops(double fraction, PowerStep step) =>
        Steps(step).Select(one => OnOne(fraction, one)).FirstOrDefault(text => text is not null);

    private static string? OnOne(double fraction, PowerStep step)
    {
        var parts = step.ClicksPerStop();
        var clicks = -Math.Log2(fraction) * parts;
        var click = Math.Round(clicks);
        if (Math.Abs(clicks - click) > OnTheClick)
        {
            return null;
        }

        var fullStops = Math.Ceiling(click / parts);
        var full = $"1/{Math.Pow(2, fullStops).ToString("0", CultureInfo.InvariantCulture)}";
        var added = (fullStops * parts) - click;
        return added == 0 ? full : string.Create(CultureInfo.InvariantCulture, $"{full} + {added:0}/{parts}");
    }

    private static IEnumerable<PowerStep> Steps(PowerStep own) => Others.Prepend(own).Distinct();
}
