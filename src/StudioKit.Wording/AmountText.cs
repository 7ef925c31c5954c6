using System.Globalization;
using StudioKit.Physics.Packing;
using StudioKit.Planning;
using StudioKit.Planning.Checks;
using UnitsNet;

namespace StudioKit.Wording;

/// <summary>Amounts of checks with their units.</summary>
internal static class AmountText
{
    public static string Of(CheckAmount amount) => amount switch
    {
        CheckAmount.Measure quantity => Of(quantity.Value),
        CheckAmount.HowMany count => count.Value.ToString(CultureInfo.InvariantCulture),
        CheckAmount.Portion share => MeasureFormat.Percent(share.Value),
        CheckAmount.TwoSides sides => PlanFormat.Rectangle(sides.Width, sides.Depth),
        CheckAmount.Enlargement enlargement => enlargement.Value.Nominal,
        CheckAmount.KnownTo known => FormattableString.Invariant($"±{known.Within.Value:0.0} stop{(known.Within.Value > 1 ? "s" : "")} at zoom {PlanFormat.GearMillimetres(known.Zoom)}"),
        CheckAmount.LongRoom room => $"{Words(room.Placement)} up to {PlanFormat.Millimetres(room.Longest)}",
        CheckAmount.BagFill fill => $"{MeasureFormat.Percent(Math.Round(fill.Filled, 2))} of the usable volume",
        CheckAmount.OnBody burden =>
            $"{MeasureFormat.Mass(burden.Mass)}, {MeasureFormat.Percent(Math.Round(burden.ShareOfBody, 3))} of body mass, {Words(burden.Band)}",
        CheckAmount.Directed directed => StandText.Direction(directed.From),
        CheckAmount.CellSets cells => FormattableString.Invariant($"{cells.Sets} {(cells.Sets == 1 ? "set" : "sets")}"),
        CheckAmount.Times times => DayText.Times(times.List),
        CheckAmount.Brightness { Range: { } light } => $"{AmbientText.Value(light.Darkest)} to {AmbientText.Figure(light.Brightest)}",
        CheckAmount.Brightness => "none",
        CheckAmount.Angles angles => CoverText.Ranges(angles.Ranges),
        CheckAmount.Dimmed dimmed => FormattableString.Invariant($"{Math.Ceiling(dimmed.Stops * 2) / 2:0.#} {(dimmed.Stops > 0.5 ? "stops" : "stop")}"),
        _ => "–",
    };

    private static string Of(IQuantity quantity) => quantity switch
    {
        Length { Unit: UnitsNet.Units.LengthUnit.Micrometer } length => PlanFormat.Micrometres(length),
        Length { Millimeters: < 10 } length => PlanFormat.RoughMillimetres(length),
        Length length => PlanFormat.Millimetres(length),
        Angle angle => MeasureFormat.Degrees(angle),
        Duration duration => MeasureFormat.Minutes(duration),
        Mass mass => MeasureFormat.Mass(mass),
        Pressure pressure => $"{MeasureFormat.ThreeDigits(pressure.Megapascals)} MPa",
        Force force => MeasureFormat.Force(force),
        Speed speed => MeasureFormat.Speed(speed),
        Torque torque => $"{MeasureFormat.ThreeDigits(torque.NewtonMeters)} N·m",
        Temperature temperature => MeasureFormat.Temperature(temperature),
        TemperatureDelta difference => $"{MeasureFormat.ThreeDigits(difference.Kelvins)} K",
        Ratio ratio => MeasureFormat.ThreeDigits(ratio.DecimalFractions),
        _ => quantity.ToString(CultureInfo.InvariantCulture),
    };

    private static string Words(LongItemPlacement placement) => placement switch
    {
        LongItemPlacement.AlongBag => "inside,",
        LongItemPlacement.CornerToCorner => "inside corner to corner,",
        _ => "strapped outside, inside only",
    };

    private static string Words(LoadBand band) => band switch
    {
        LoadBand.Comfortable => "comfortable",
        LoadBand.Demanding => "demanding",
        LoadBand.TooHeavy => "too heavy",
        _ => "not to be carried",
    };
}
