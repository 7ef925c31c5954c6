using System.Globalization;
using StudioKit.Physics.Light;
using UnitsNet;

namespace StudioKit.Planning;

/// <summary>Numbers as a person reads them: with their unit, rounded to what the inputs know.</summary>
public static class PlanFormat
{
    /// <summary>A length in millimetres, three significant digits below 100 mm and whole millimetres above.</summary>
    public static string Millimetres(Length length) => $"{ThreeDigits(length.Millimeters)} mm";

    /// <summary>A length in millimetres with its uncertainty, to two digits (JCGM 100:2008, 7.2.6), where that is a fiftieth of it or more.</summary>
    public static string GiveOrTake(Length length, Length uncertainty) => uncertainty.Meters >= Math.Abs(length.Meters) / 50
        ? $"{Millimetres(length)} ± {TwoDigits(uncertainty.Millimeters)} mm"
        : Millimetres(length);

    /// <summary>Zoom of a flash head, e.g. <c>zoom 35 mm</c>.</summary>
    public static string Zoom(Length? zoom) => zoom is { } set ? $"zoom {Millimetres(set)}" : "zoom as the guide number's";

    /// <summary>A length in centimetres for distances set by hand, to the half centimetre.</summary>
    public static string Centimetres(Length length) =>
        $"{CentimetreFigure(length)} cm";

    /// <summary>The same without its unit, for a place that sets the unit apart.</summary>
    public static string CentimetreFigure(Length length) => Invariant(Math.Round(length.Centimeters * 2) / 2, "0.#");

    /// <summary>A small length in micrometres, to three significant digits.</summary>
    public static string Micrometres(Length length) => $"{ThreeDigits(length.Micrometers)} µm";

    /// <summary>A rectangle in millimetres.</summary>
    public static string Rectangle(Length width, Length height) => $"{Sides(width, height)} mm";

    /// <summary>The three sides of a box, e.g. "120 × 100 × 60 mm".</summary>
    public static string Box(Length width, Length depth, Length height) => $"{Sides(width, depth)} × {ThreeDigits(height.Millimeters)} mm";

    /// <summary>The two sides of a rectangle without their unit, for a column that names it.</summary>
    public static string Sides(Length width, Length height) => $"{ThreeDigits(width.Millimeters)} × {ThreeDigits(height.Millimeters)}";

    /// <summary>A place on the panel as seen from the subject's foot, in whole millimetres.</summary>
    public static string PanelPlace(PanelLightPlan light, PanelPlace place) => PanelPlace(light, place, " mm");

    /// <summary>The same without its unit, for a column that names it.</summary>
    public static string PanelPlaceFigures(PanelLightPlan light, PanelPlace place) => PanelPlace(light, place, "");

    private static string PanelPlace(PanelLightPlan light, PanelPlace place, string unit)
    {
        ArgumentNullException.ThrowIfNull(light);
        var back = (place.AlongSheet - light.SubjectFromFront).Millimeters;
        var across = place.Across.Millimeters;
        return FormattableString.Invariant(
            $"{Math.Abs(across):0}{unit} {(across < 0 ? "left" : "right")}, {Math.Abs(back):0}{unit} {(light.Upright is null ? back < 0 ? "before" : "behind" : back < 0 ? "below" : "above")}");
    }

    /// <summary>A mass: grams below a kilogram, two decimals of a kilogram above.</summary>
    public static string Mass(Mass mass) => mass.Grams < 999.5
        ? $"{Invariant(mass.Grams, "0")} g"
        : $"{Invariant(mass.Kilograms, "0.00")} kg";

    /// <summary>An angle in whole degrees.</summary>
    public static string Degrees(Angle angle) => $"{Invariant(angle.Degrees, "0.#")}°";

    /// <summary>A short time as a fraction of a second, a long one in seconds.</summary>
    public static string Seconds(Duration duration) => duration.Seconds < 0.3
        ? $"1/{ThreeDigits(1 / duration.Seconds)} s"
        : $"{Invariant(duration.Seconds, "0.#")} s";

    /// <summary>A wait in seconds, to the tenth above.</summary>
    public static string Wait(Duration duration) => $"{Invariant(Math.Ceiling((duration.Seconds * 10) - 1e-6) / 10, "0.0")} s";

    /// <summary>A span of a session: seconds under two minutes, else minutes to the half.</summary>
    public static string Minutes(Duration duration) => duration.Seconds < 119.5
        ? $"{Invariant(duration.Seconds, "0")} s"
        : $"{Invariant(Math.Ceiling(duration.Minutes * 2) / 2, "0.#")} min";

    /// <summary>A share as a percentage.</summary>
    public static string Percent(double share) => $"{Invariant(share * 100, "0.#")} %";

    /// <summary>A small share as a percentage, to the hundredth.</summary>
    public static string FinePercent(double share) => $"{Invariant(share * 100, "0.##")} %";

    /// <summary>A number to three significant digits, or all digits before the point.</summary>
    public static string ThreeDigits(double value)
    {
        var size = Math.Abs(value);
        return Invariant(value, size switch { >= 99.95 => "0", >= 9.995 => "0.#", >= 0.9995 => "0.##", _ => "0.###" });
    }

    private static string TwoDigits(double value)
    {
        var step = value == 0 ? 1 : Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(value))) - 1);
        return Invariant(Math.Round(value / step) * step, "0.####");
    }

    /// <summary>An illuminance as finely as a scene is known: two significant digits, without the unit.</summary>
    public static string IlluminanceFigure(Illuminance illuminance)
    {
        var lux = illuminance.Lux;
        var step = lux > 0 ? Math.Pow(10, Math.Floor(Math.Log10(lux)) - 1) : 1;
        return Invariant(Math.Round(lux / step) * step, "0.##");
    }

    private static string Invariant(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
