using StudioKit.Planning.Studio.Uprights;
using UnitsNet;

namespace StudioKit.Planning.Studio.Hardware;

/// <summary>Small parts of the upright sheets.</summary>
internal static class UprightHardware
{
    // Two bags on each foot, before and behind its pole.
    private const int Bags = 4;
    private static readonly Length SoftCord = Length.FromMeters(2);

    public static IEnumerable<HardwareLine> Of(HardwareInputs inputs) => inputs.Uprights.SelectMany(upright => Of(inputs, upright));

    private static IEnumerable<HardwareLine> Of(HardwareInputs inputs, UprightStandPlan upright)
    {
        var place = new HardwarePlace(upright.Name, 1);
        yield return new HardwareLine
        {
            Kind = HardwareKind.SheetClip,
            For = upright.Name,
            Places = [place with { Count = upright.SheetClips }],
            Grips = [upright.PipeDiameter, inputs.Kit.Uprights.First(one => one.Name == upright.Name).Sheet.Thickness],
            Diameter = upright.PipeDiameter,
            PriceEach = inputs.Kit.Stock.ClipPrice,
            MassEach = PanelHardware.UsualClip,
        };
        yield return HolderHardware.PipeClips(inputs, [place with { Count = upright.PipeClips }], upright.Name);
        if (upright.Cords > 0)
        {
            yield return HoldingHardware.Pegs(inputs, [place with { Count = upright.Cords }], upright.PegHold, upright.Name);
            yield return HoldingHardware.Cords(inputs, [place with { Count = upright.Cords, Length = upright.CordLength }], upright.Name);
            yield return HoldingHardware.Rags([place with { Count = upright.Cords }], upright.Name);
        }

        if (upright.Ballast > Mass.Zero)
        {
            yield return HoldingHardware.Bags([place with { Count = Bags }], upright.Ballast / Bags, inputs, upright.Name);
        }

        if (upright.Assembly.Contains(UprightStep.LookOver))
        {
            yield return new HardwareLine { Kind = HardwareKind.PlantCord, For = upright.Name, Places = [place], Length = SoftCord, MassEach = Mass.FromGrams(10) };
        }
    }
}
