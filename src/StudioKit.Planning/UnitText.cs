using System.Globalization;
using UnitsNet;

namespace StudioKit.Planning;

/// <summary>The words for a value in the units in which all is told just now.</summary>
internal static class UnitText
{
    // A length that the kit gives in inches is said in its own words.
    public static string OfLength(Length length, string metric, Func<double, string> inches)
    {
        var (units, written) = PlanUnits.Current;
        return written.Of(length.Millimeters) is { } own
            ? units == TextUnits.Inches ? own : $"{own} ({metric})"
            : Of(metric, () => inches(length.Millimeters));
    }

    public static string Of(string metric, Func<string> other) => PlanUnits.Current.Units switch
    {
        TextUnits.Metric => metric,
        TextUnits.Inches => other(),
        _ => $"{metric} ({other()})",
    };

    // As many decimals as two digits of the uncertainty have.
    public static string AsSureAs(double value, double uncertainty)
    {
        var step = uncertainty == 0 ? 0.001 : Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(uncertainty))) - 1);
        return Number(Math.Round(value / step) * step, "0.###");
    }

    public static string Number(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
