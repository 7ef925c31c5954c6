using UnitsNet;

namespace StudioKit.Planning;

/// <summary>Distances as they are set by hand or paced out, with a tape or in a plot.</summary>
public static class DistanceFormat
{
    /// <summary>A length in metres, to the half, for what is paced out.</summary>
    public static string Metres(Length length) => UnitText.OfLength(length, $"{UnitText.Number(Math.Round(length.Meters * 10) / 10, "0.#")} m", InchText.Paced);

    /// <summary>A distance that is set with a tape held in the hand, with how far off it may be where that is more than the tape.</summary>
    public static string DistanceByHand(Length length, Length uncertainty)
    {
        const double TapeCentimetres = 1;
        return uncertainty.Centimeters < TapeCentimetres
            ? Centimetres(length)
            : UnitText.Of($"{UnitText.AsSureAs(length.Centimeters, 10 * uncertainty.Centimeters)} cm ± {UnitText.Number(Math.Ceiling(uncertainty.Centimeters), "0")} cm",
                () => $"{UnitText.AsSureAs(length.Inches, 10 * uncertainty.Inches)} in ± {UnitText.Number(Math.Max(1, Math.Ceiling(uncertainty.Inches)), "0")} in");
    }

    /// <summary>A length in centimetres for distances set by hand, to the half centimetre or the quarter of an inch.</summary>
    public static string Centimetres(Length length) => UnitText.OfLength(length, $"{HalfCentimetres(length)} cm", millimetres => $"{InchText.ByHandFigure(millimetres)} in");

    /// <summary>The same without its unit, for a place that sets the unit apart; in centimetres where both units are told.</summary>
    public static string CentimetreFigure(Length length) => InInches ? InchText.ByHandFigure(length.Millimeters) : HalfCentimetres(length);

    /// <summary>The unit of <see cref="CentimetreFigure"/>.</summary>
    public static string CentimetreUnit => InInches ? "in" : "cm";

    /// <summary>The figure in inches that stands under <see cref="CentimetreFigure"/> where both units are told; else nothing.</summary>
    public static string? UnderCentimetres(Length length) => PlanUnits.Current.Units == TextUnits.Both ? InchText.ByHandFigure(length.Millimeters) : null;

    /// <summary>What stands beside <see cref="CentimetreFigure"/> where both units are told; else nothing.</summary>
    public static string BesideCentimetres(Length length) => PlanUnits.Current.Units == TextUnits.Both ? $" ({InchText.ByHandFigure(length.Millimeters)} in)" : "";

    /// <summary>The unit of <see cref="PlotLength"/>.</summary>
    public static string PlotUnit => InInches ? "in" : "mm";

    /// <summary>A length as a plot counts it: millimetres, or inches where these are told alone.</summary>
    public static double PlotLength(Length length) => InInches ? length.Inches : length.Millimeters;

    /// <summary>A distance as a plot counts it: centimetres, or inches where these are told alone; its unit is <see cref="CentimetreUnit"/>.</summary>
    public static double PlotDistance(Length length) => InInches ? length.Inches : length.Centimeters;

    /// <summary>The sides of a rectangle that is cleared or held by hand.</summary>
    public static string CentimetreSides(Length width, Length height) => UnitText.Of(
        $"{HalfCentimetres(width)} × {HalfCentimetres(height)} cm", () => $"{InchText.ByHandFigure(width.Millimeters)} × {InchText.ByHandFigure(height.Millimeters)} in");

    /// <summary>The sides of a box that is measured by hand.</summary>
    public static string CentimetreBox(Length length, Length width, Length depth) => UnitText.Of(
        $"{HalfCentimetres(length)} × {HalfCentimetres(width)} × {HalfCentimetres(depth)} cm",
        () => $"{InchText.ByHandFigure(length.Millimeters)} × {InchText.ByHandFigure(width.Millimeters)} × {InchText.ByHandFigure(depth.Millimeters)} in");

    /// <summary>Whether lengths are told in inches alone.</summary>
    public static bool InInches => PlanUnits.Current.Units == TextUnits.Inches;

    private static string HalfCentimetres(Length length) => UnitText.Number(Math.Round(length.Centimeters * 2) / 2, "0.#");
}
