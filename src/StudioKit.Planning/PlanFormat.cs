using StudioKit.Physics.Light;
using UnitsNet;

namespace StudioKit.Planning;

/// <summary>Lengths and places as a person reads them: with their unit, rounded to what the inputs know.</summary>
public static class PlanFormat
{
    /// <summary>A length in millimetres, three significant digits below 100 mm and whole millimetres above.</summary>
    public static string Millimetres(Length length) => UnitText.OfLength(length, $"{MeasureFormat.ThreeDigits(length.Millimeters)} mm", InchText.Length);

    /// <summary>A length that is worked out and known to two digits at best, as a sag or a depth of field.</summary>
    public static string RoughMillimetres(Length length) => UnitText.OfLength(length, $"{MeasureFormat.TwoDigits(length.Millimeters)} mm", millimetres => $"{MeasureFormat.TwoDigits(millimetres / 25.4)} in");

    /// <summary>A length in whole millimetres, as it is set with a tape.</summary>
    public static string WholeMillimetres(Length length) => UnitText.OfLength(length, $"{UnitText.Number(length.Millimeters, "0")} mm", InchText.Length);

    /// <summary>A length to the tenth of a millimetre, for gaps and sags.</summary>
    public static string TenthMillimetres(Length length) => UnitText.OfLength(length, $"{UnitText.Number(length.Millimeters, "0.0")} mm", millimetres => $"{InchText.Decimals(millimetres)} in");

    /// <summary>A length of gear that the trade knows in millimetres alone, as a focal length or an extension tube.</summary>
    public static string GearMillimetres(Length length) => $"{MeasureFormat.ThreeDigits(length.Millimeters)} mm";

    /// <summary>A length in millimetres with its uncertainty, to two digits (JCGM 100:2008, 7.2.6), where that is a fiftieth of it or more.</summary>
    public static string GiveOrTake(Length length, Length uncertainty)
    {
        if (uncertainty.Meters < Math.Abs(length.Meters) / 50)
        {
            return Millimetres(length);
        }

        var metric = $"{UnitText.AsSureAs(length.Millimeters, uncertainty.Millimeters)} mm ± {MeasureFormat.TwoDigits(uncertainty.Millimeters)} mm";
        return UnitText.Of(metric, () => $"{UnitText.AsSureAs(length.Inches, uncertainty.Inches)} in ± {MeasureFormat.TwoDigits(uncertainty.Inches)} in");
    }

    /// <summary>Zoom of a flash head, e.g. <c>zoom 35 mm</c>.</summary>
    public static string Zoom(Length? zoom) => zoom is { } set ? $"zoom {GearMillimetres(set)}" : "zoom as the guide number's";

    /// <summary>A length as the shop sells it: as the kit has it, else in metric, with the other unit behind it where that is told.</summary>
    public static string AsSold(Length length)
    {
        var metric = $"{MeasureFormat.ThreeDigits(length.Millimeters)} mm";
        return PlanUnits.Current is { Units: not TextUnits.Metric, Written: var written } && written.Of(length.Millimeters) is null ? $"{metric} ({InchText.Length(length.Millimeters)})" : Millimetres(length);
    }

    /// <summary>A small length in micrometres, to two digits: pixels, light and lens know it no better.</summary>
    public static string Micrometres(Length length) => $"{MeasureFormat.TwoDigits(length.Micrometers)} µm";

    /// <summary>A rectangle in millimetres.</summary>
    public static string Rectangle(Length width, Length height) => Several(width, height);

    /// <summary>The three sides of a box, e.g. "120 × 100 × 60 mm".</summary>
    public static string Box(Length width, Length depth, Length height) => Several(width, depth, height);

    // The unit stands once, where all sides have it.
    private static string Several(params Length[] sides)
    {
        var metric = $"{string.Join(" × ", sides.Select(side => MeasureFormat.ThreeDigits(side.Millimeters)))} mm";
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
            : FigureFormat.WholeFigure(UnitsNet.Length.FromMillimeters(Math.Abs(side.Millimeters)));
    }
}
