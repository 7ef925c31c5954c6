using StudioKit.Physics.Structure;
using StudioKit.Planning;
using StudioKit.Planning.Checks;
using StudioKit.Planning.Studio;
using UnitsNet;

namespace StudioKit.Wording;

/// <summary>What structural checks take for given, in words.</summary>
internal static class LoadText
{
    /// <summary>All that a check takes for given, as one line.</summary>
    public static string Of(IReadOnlyList<StructuralLoad> loads) => string.Join(", ", loads.Select(Of));

    /// <summary>The wind, from its mean to its gust.</summary>
    public static string Of(SiteWind wind) => FormattableString.Invariant(
        $"Beaufort {wind.Beaufort}, mean to {MeasureFormat.Speed(wind.Mean)}, gust factor {wind.GustFactor:0.##}, gust {MeasureFormat.Speed(wind.Gust)}{(wind.Left < 1 ? $" behind the wind-break, which leaves {MeasureFormat.Percent(Math.Round(wind.Left, 2))}" : "")}");

    private static string Of(StructuralLoad load) => load.Kind switch
    {
        StructuralLoadKind.Sheet => $"the sheet's weight {Amount(load)}",
        StructuralLoadKind.Subject => $"subject in its box {Amount(load)}",
        StructuralLoadKind.Elbow => $"an elbow's push {Amount(load)}",
        StructuralLoadKind.Standing => $"all that stands {Amount(load)}",
        StructuralLoadKind.Ballast => $"ballast {Amount(load)}",
        StructuralLoadKind.Gust => $"gust {Amount(load)}",
        StructuralLoadKind.PegHold => $"a peg's hold {Amount(load)}",
        StructuralLoadKind.StakeHold => $"a stake's hold {MeasureFormat.Kilograms(Mass.FromKilograms(((Force)load.Value).Newtons / PanelSag.Gravity))} at {DistanceFormat.Centimetres(Length.FromCentimeters(30))}",
        StructuralLoadKind.FeetBallast => $"on the feet {Amount(load)}",
        StructuralLoadKind.Air => $"air {Amount(load)}",
        StructuralLoadKind.SunWarming => FormattableString.Invariant($"warmed by the sun {((TemperatureDelta)load.Value).Kelvins:0.#} K"),
        StructuralLoadKind.Built => $"built at {Amount(load)}",
        _ => throw new ArgumentOutOfRangeException(nameof(load), load.Kind, "A load without words."),
    };

    private static string Amount(StructuralLoad load) => AmountText.Of(new CheckAmount.Measure(load.Value));
}
