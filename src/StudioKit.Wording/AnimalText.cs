using System.Globalization;
using StudioKit.Planning;
using UnitsNet;

namespace StudioKit.Wording;

/// <summary>Lengths of animals, to be held against a rule beside the animal: whole millimetres, under 10 mm halves, or eighths of an inch; never more than there is.</summary>
public static class AnimalText
{
    private const double Hair = 1e-6;

    /// <summary>The length with its unit.</summary>
    public static string Of(Length length) => PlanUnits.Current.Units switch
    {
        TextUnits.Metric => $"{Metric(length)} mm",
        TextUnits.Inches => $"{InchText.AtMostFigure(length.Millimeters)} in",
        _ => $"{Metric(length)} mm ({InchText.AtMostFigure(length.Millimeters)} in)",
    };

    /// <summary>A range of lengths without the unit that heads its column.</summary>
    public static string Range(Length over, Length upTo)
    {
        var (metric, inches) = (Range(over, upTo, Metric), Range(over, upTo, length => InchText.AtMostFigure(length.Millimeters)));
        return PlanUnits.Current.Units switch { TextUnits.Metric => metric, TextUnits.Inches => inches, _ => $"{metric} ({inches})" };
    }

    private static string Range(Length over, Length upTo, Func<Length, string> figure) => over > Length.Zero ? $"{figure(over)} to {figure(upTo)}" : $"up to {figure(upTo)}";

    private static string Metric(Length length)
    {
        var step = length.Millimeters < 10 ? 0.5 : 1;
        return (Math.Floor((length.Millimeters / step) + Hair) * step).ToString("0.#", CultureInfo.InvariantCulture);
    }
}
