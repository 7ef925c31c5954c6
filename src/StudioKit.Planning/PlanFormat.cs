using System.Globalization;
using StudioKit.Physics.Light;
using StudioKit.Planning.Cutting;
using UnitsNet;

namespace StudioKit.Planning;

/// <summary>Numbers as a person reads them: with their unit, rounded to what the inputs know.</summary>
public static class PlanFormat
{
    /// <summary>A length in millimetres, three significant digits below 100 mm and whole millimetres above.</summary>
    public static string Millimetres(Length length) => Length(length, $"{ThreeDigits(length.Millimeters)} mm", InchText.Length);

    /// <summary>A length that is worked out and known to two digits at best, as a sag or a depth of field.</summary>
    public static string RoughMillimetres(Length length) => Length(length, $"{TwoDigits(length.Millimeters)} mm", millimetres => $"{TwoDigits(millimetres / 25.4)} in");

    /// <summary>The same without the unit that heads its column.</summary>
    public static string RoughFigure(Length length) => Told(TwoDigits(length.Millimeters), () => TwoDigits(length.Inches));

    /// <summary>A length in whole millimetres, as it is set with a tape.</summary>
    public static string WholeMillimetres(Length length) => Length(length, $"{Invariant(length.Millimeters, "0")} mm", InchText.Length);

    /// <summary>A length to the tenth of a millimetre, for gaps and sags.</summary>
    public static string TenthMillimetres(Length length) => Length(length, $"{Invariant(length.Millimeters, "0.0")} mm", millimetres => $"{InchText.Decimals(millimetres)} in");

    /// <summary>A length to the half millimetre or the thirty-second of an inch, as it is marked and cut.</summary>
    public static string CutLength(Length length) => Length(length, $"{CutMillimetres(length)} mm", InchText.ByRule);

    /// <summary>The same without the unit that heads its column.</summary>
    public static string CutFigure(Length length) => Told(CutMillimetres(length), () => InchText.ByRuleFigure(length.Millimeters));

    /// <summary>Length to which a piece is cut, its ends in fittings or free: in inches the thirty-second below, so that no socket is filled beyond its stop.</summary>
    public static string PieceLength(Length length) => Length(length, $"{CutMillimetres(length)} mm", millimetres => InchText.ByRule(NoLonger(millimetres)));

    /// <summary>The same without the unit that heads its column.</summary>
    public static string PieceFigure(Length length) => Told(CutMillimetres(length), () => InchText.ByRuleFigure(NoLonger(length.Millimeters)));

    /// <summary>Where a piece ends on its bar, from the squared end; without the unit that heads its column.</summary>
    public static string MarkFigure(CutMark mark, CutMark inInches) => Told(CutMillimetres(mark.End), () => InchText.ByRuleFigure(inInches.End.Millimeters));

    /// <summary>What <see cref="PieceLength"/> leaves of a piece, in words; empty where nothing is told in inches.</summary>
    public static string PieceRule => PlanUnits.Current.Units == TextUnits.Metric ? ""
        : "In inches a piece is cut to the thirty-second below what is planned, and its mark lies at one: each comes out less than 1/32 in short and never long, so that every socket keeps its gap and every bar holds its pieces.";

    /// <summary>A length in metres, to the half, for what is paced out.</summary>
    public static string Metres(Length length) => Length(length, $"{Invariant(Math.Round(length.Meters * 10) / 10, "0.#")} m", InchText.Paced);

    /// <summary>A length of gear that the trade knows in millimetres alone, as a focal length or an extension tube.</summary>
    public static string GearMillimetres(Length length) => $"{ThreeDigits(length.Millimeters)} mm";

    /// <summary>A length in millimetres with its uncertainty, to two digits (JCGM 100:2008, 7.2.6), where that is a fiftieth of it or more.</summary>
    public static string GiveOrTake(Length length, Length uncertainty)
    {
        if (uncertainty.Meters < Math.Abs(length.Meters) / 50)
        {
            return Millimetres(length);
        }

        var metric = $"{AsSureAs(length.Millimeters, uncertainty.Millimeters)} mm ± {TwoDigits(uncertainty.Millimeters)} mm";
        return Told(metric, () => $"{AsSureAs(length.Inches, uncertainty.Inches)} in ± {TwoDigits(uncertainty.Inches)} in");
    }

    /// <summary>A distance that is set with a tape held in the hand, with how far off it may be where that is more than the tape.</summary>
    public static string DistanceByHand(Length length, Length uncertainty)
    {
        const double TapeCentimetres = 1;
        return uncertainty.Centimeters < TapeCentimetres
            ? Centimetres(length)
            : Told($"{AsSureAs(length.Centimeters, 10 * uncertainty.Centimeters)} cm ± {Invariant(Math.Ceiling(uncertainty.Centimeters), "0")} cm",
                () => $"{AsSureAs(length.Inches, 10 * uncertainty.Inches)} in ± {Invariant(Math.Max(1, Math.Ceiling(uncertainty.Inches)), "0")} in");
    }

    /// <summary>Zoom of a flash head, e.g. <c>zoom 35 mm</c>.</summary>
    public static string Zoom(Length? zoom) => zoom is { } set ? $"zoom {GearMillimetres(set)}" : "zoom as the guide number's";

    /// <summary>A length in centimetres for distances set by hand, to the half centimetre or the quarter of an inch.</summary>
    public static string Centimetres(Length length) => Length(length, $"{HalfCentimetres(length)} cm", millimetres => $"{InchText.ByHandFigure(millimetres)} in");

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
    public static string CentimetreSides(Length width, Length height) => Told(
        $"{HalfCentimetres(width)} × {HalfCentimetres(height)} cm", () => $"{InchText.ByHandFigure(width.Millimeters)} × {InchText.ByHandFigure(height.Millimeters)} in");

    /// <summary>The sides of a box that is measured by hand.</summary>
    public static string CentimetreBox(Length length, Length width, Length depth) => Told(
        $"{HalfCentimetres(length)} × {HalfCentimetres(width)} × {HalfCentimetres(depth)} cm",
        () => $"{InchText.ByHandFigure(length.Millimeters)} × {InchText.ByHandFigure(width.Millimeters)} × {InchText.ByHandFigure(depth.Millimeters)} in");

    /// <summary>A force in newtons, to two digits.</summary>
    public static string Force(Force force) => Told($"{TwoDigits(force.Newtons)} N", () => InchText.Force(force.Newtons));

    /// <summary>A wind's speed in metres a second.</summary>
    public static string Speed(Speed speed) => Told($"{Invariant(speed.MetersPerSecond, "0.#")} m/s", () => InchText.Speed(speed.MetersPerSecond));

    /// <summary>A temperature in whole degrees.</summary>
    public static string Temperature(Temperature temperature) => Told($"{Invariant(temperature.DegreesCelsius, "0")} °C", () => InchText.Temperature(temperature.DegreesCelsius));

    /// <summary>A length as the shop sells it: as the kit has it, else in metric, with the other unit behind it where that is told.</summary>
    public static string AsSold(Length length)
    {
        var metric = $"{ThreeDigits(length.Millimeters)} mm";
        return PlanUnits.Current is { Units: not TextUnits.Metric, Written: var written } && written.Of(length.Millimeters) is null ? $"{metric} ({InchText.Length(length.Millimeters)})" : Millimetres(length);
    }

    /// <summary>Whether lengths are told in inches alone.</summary>
    public static bool InInches => PlanUnits.Current.Units == TextUnits.Inches;

    // A length that the kit gives in inches is said in its own words.
    private static string Length(Length length, string metric, Func<double, string> inches)
    {
        var (units, written) = PlanUnits.Current;
        return written.Of(length.Millimeters) is { } own
            ? units == TextUnits.Inches ? own : $"{own} ({metric})"
            : Told(metric, () => inches(length.Millimeters));
    }

    private static string Told(string metric, Func<string> other) => PlanUnits.Current.Units switch
    {
        TextUnits.Metric => metric,
        TextUnits.Inches => other(),
        _ => $"{metric} ({other()})",
    };

    private static double NoLonger(double millimetres) => WholeLengths.DownToThirtySecond(UnitsNet.Length.FromMillimeters(millimetres)).Millimeters;

    private static string CutMillimetres(Length length) => Invariant(Math.Round(length.Millimeters * 2, MidpointRounding.AwayFromZero) / 2, "0.#");

    private static string HalfCentimetres(Length length) => Invariant(Math.Round(length.Centimeters * 2) / 2, "0.#");

    /// <summary>A small length in micrometres, to two digits: pixels, light and lens know it no better.</summary>
    public static string Micrometres(Length length) => $"{TwoDigits(length.Micrometers)} µm";

    /// <summary>A rectangle in millimetres.</summary>
    public static string Rectangle(Length width, Length height) => Several(width, height);

    /// <summary>The three sides of a box, e.g. "120 × 100 × 60 mm".</summary>
    public static string Box(Length width, Length depth, Length height) => Several(width, depth, height);

    /// <summary>What a column of <see cref="Figure"/>, <see cref="WholeFigure"/>, <see cref="CutFigure"/> and <see cref="Sides"/> is headed with.</summary>
    public static string FigureUnit => PlanUnits.Current.Units switch { TextUnits.Metric => "mm", TextUnits.Inches => "in", _ => "mm (in)" };

    /// <summary>A length to three significant digits, without the unit that heads its column.</summary>
    public static string Figure(Length length) => Told(ThreeDigits(length.Millimeters), () => InchText.Decimals(length.Millimeters));

    /// <summary>The same in whole millimetres.</summary>
    public static string WholeFigure(Length length) => Told(Invariant(length.Millimeters, "0"), () => InchText.Decimals(length.Millimeters));

    /// <summary>The two sides of a rectangle, without the unit that heads their column.</summary>
    public static string Sides(Length width, Length height) => Told(
        $"{ThreeDigits(width.Millimeters)} × {ThreeDigits(height.Millimeters)}", () => $"{InchText.Decimals(width.Millimeters)} × {InchText.Decimals(height.Millimeters)}");

    // The unit stands once, where all sides have it.
    private static string Several(params Length[] sides)
    {
        var metric = $"{string.Join(" × ", sides.Select(side => ThreeDigits(side.Millimeters)))} mm";
        var (units, written) = PlanUnits.Current;
        if (units == TextUnits.Metric && !sides.Any(side => written.Of(side.Millimeters) is not null))
        {
            return metric;
        }

        var inches = string.Join(" × ", sides.Select(side => written.Of(side.Millimeters) ?? InchText.Length(side.Millimeters)));
        return units switch
        {
            TextUnits.Inches => inches,
            TextUnits.Metric => $"{inches} ({metric})",
            _ => $"{metric} ({inches})",
        };
    }

    /// <summary>A place on the panel as seen from the subject's foot, in whole millimetres.</summary>
    public static string PanelPlace(PanelLightPlan light, PanelPlace place) => PanelPlace(light, place, withUnit: true);

    /// <summary>The same without its unit, for a column that names it.</summary>
    public static string PanelPlaceFigures(PanelLightPlan light, PanelPlace place) => PanelPlace(light, place, withUnit: false);

    private static string PanelPlace(PanelLightPlan light, PanelPlace place, bool withUnit)
    {
        ArgumentNullException.ThrowIfNull(light);
        var back = place.AlongSheet - light.SubjectFromFront;
        return $"{Said(place.Across)} {(place.Across < UnitsNet.Length.Zero ? "left" : "right")}, "
            + $"{Said(back)} {(light.Upright is null ? back < UnitsNet.Length.Zero ? "before" : "behind" : back < UnitsNet.Length.Zero ? "below" : "above")}";

        string Said(Length side) => withUnit
            ? WholeMillimetres(UnitsNet.Length.FromMillimeters(Math.Abs(side.Millimeters)))
            : WholeFigure(UnitsNet.Length.FromMillimeters(Math.Abs(side.Millimeters)));
    }

    /// <summary>A mass: grams below a kilogram, two decimals of a kilogram above.</summary>
    public static string Mass(Mass mass) => Told(
        mass.Grams < 999.5 ? $"{Invariant(mass.Grams, "0")} g" : $"{Invariant(mass.Kilograms, "0.00")} kg", () => InchText.Mass(mass.Grams));

    /// <summary>A mass as a spring balance or a bag tells it: kilograms or pounds to the tenth.</summary>
    public static string Kilograms(Mass mass) => Told($"{Invariant(mass.Kilograms, "0.0")} kg", () => $"{Invariant(mass.Pounds, "0.0")} lb");

    /// <summary>A body's mass, in whole kilograms or pounds.</summary>
    public static string WholeKilograms(Mass mass) => Told($"{Invariant(mass.Kilograms, "0")} kg", () => $"{Invariant(mass.Pounds, "0")} lb");

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

    /// <summary>A value to two significant digits, as sure as most computed values are.</summary>
    public static string TwoDigits(double value)
    {
        var step = value == 0 ? 1 : Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(value))) - 1);
        return Invariant(Math.Round(value / step) * step, "0.####");
    }

    // As many decimals as two digits of the uncertainty have.
    private static string AsSureAs(double value, double uncertainty)
    {
        var step = uncertainty == 0 ? 0.001 : Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(uncertainty))) - 1);
        return Invariant(Math.Round(value / step) * step, "0.###");
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
