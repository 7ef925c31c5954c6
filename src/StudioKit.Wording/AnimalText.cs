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
    public static string Range(Length over, Length upTo) => over > Length.Zero ? $"{Figure(over)} to {Figure(upTo)}" : $"up to {Figure(upTo)}";

    // A column that heads both units would be twice as wide: there millimetres do.
    private static string Figure(Length length) => PlanFormat.InInches ? InchText.AtMostFigure(length.Millimeters) : Metric(length);

    private static string Metric(Length length)
    {
        var step = length.Millimeters < 10 ? 0.5 : 1;
        return (Math.Floor((length.Millimeters / step) + Hair) * step).ToString("0.#", CultureInfo.InvariantCulture);
    }
}
