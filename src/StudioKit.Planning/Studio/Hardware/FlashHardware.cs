using UnitsNet;

namespace StudioKit.Planning.Studio.Hardware;

/// <summary>What holds the flashes under the panel.</summary>
internal static class FlashHardware
{
    public static IEnumerable<HardwareLine> Of(HardwareInputs inputs)
    {
        var hung = inputs.LowerFlashes.Where(flash => flash.Support is FlashSupport.Cradle or FlashSupport.SharedCradle).ToList();
        yield return new HardwareLine
        {
            Kind = HardwareKind.CradleClamp,
            Places = [.. hung.GroupBy(flash => flash.Flash, StringComparer.Ordinal).Select(flash => new HardwarePlace(string.Join(" or ", flash.Select(one => one.CradleJoint).Distinct(StringComparer.Ordinal)), 1))],
            Diameter = inputs.Pipe,
            PriceEach = inputs.Kit.Stock.ClampPrice,
            MassEach = ClampMass,
        };
        yield return new HardwareLine
        {
            Kind = HardwareKind.LowStand,
            Places = [.. inputs.LowerFlashes.Where(flash => flash.Support == FlashSupport.OwnStand).Select(flash => flash.Flash).Distinct(StringComparer.Ordinal).Select(flash => new HardwarePlace(flash, 1))],
            MassEach = Mass.FromGrams(400),
        };
    }

    /// <summary>Mass of a small ball joint with its shoe (common practice, no source).</summary>
    public static Mass ClampMass { get; } = Mass.FromGrams(150);
}
