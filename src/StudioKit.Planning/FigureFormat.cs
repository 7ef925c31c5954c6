using UnitsNet;

namespace StudioKit.Planning;

/// <summary>Lengths in a column that is headed by their unit.</summary>
public static class FigureFormat
{
    /// <summary>A length that is worked out and known to two digits at best, without the unit that heads its column.</summary>
    public static string RoughFigure(Length length) => UnitText.Of(MeasureFormat.TwoDigits(length.Millimeters), () => MeasureFormat.TwoDigits(length.Inches));

    /// <summary>What a column of <see cref="Figure"/>, <see cref="WholeFigure"/>, <see cref="CutFormat.CutFigure"/> and <see cref="Sides"/> is headed with.</summary>
    public static string FigureUnit => PlanUnits.Current.Units switch { TextUnits.Metric => "mm", TextUnits.Inches => "in", _ => "mm (in)" };

    /// <summary>A length to three significant digits, without the unit that heads its column.</summary>
    public static string Figure(Length length) => UnitText.Of(MeasureFormat.ThreeDigits(length.Millimeters), () => InchText.Decimals(length.Millimeters));

    /// <summary>The same in whole millimetres.</summary>
    public static string WholeFigure(Length length) => UnitText.Of(UnitText.Number(length.Millimeters, "0"), () => InchText.Decimals(length.Millimeters));

    /// <summary>The two sides of a rectangle, without the unit that heads their column.</summary>
    public static string Sides(Length width, Length height) => UnitText.Of(
        $"{MeasureFormat.ThreeDigits(width.Millimeters)} × {MeasureFormat.ThreeDigits(height.Millimeters)}", () => $"{InchText.Decimals(width.Millimeters)} × {InchText.Decimals(height.Millimeters)}");
}
