using UnitsNet;

namespace StudioKit.Planning.Studio.Hardware;

/// <summary>Small parts of the holders that are built of the frame's pipe.</summary>
internal static class HolderHardware
{
    // 30 cm in the ground and 20 cm in the pole, of hardwood (common practice, no source).
    private static readonly Length PegLength = Length.FromMillimeters(500);
    private static readonly Length SafetyCord = Length.FromMeters(1);
    private static readonly Length CordDiameter = Length.FromMillimeters(3);
    private const double Hardwood = 700;

    public static IEnumerable<HardwareLine> Of(HardwareInputs inputs) => inputs.Holders.SelectMany(holder => Of(inputs, holder));

    private static IEnumerable<HardwareLine> Of(HardwareInputs inputs, BuiltHolder holder)
    {
        var place = new HardwarePlace(holder.Holder, 1);
        yield return PipeClips(inputs, [place with { Count = holder.Clips }], holder.Holder);
        if (holder.OnPeg)
        {
            var diameter = Length.FromMillimeters(Math.Floor(inputs.Bore.Millimeters - 0.5));
            yield return new HardwareLine
            {
                Kind = HardwareKind.PolePeg,
                For = holder.Holder,
                Places = [place],
                Diameter = diameter,
                Length = PegLength,
                PriceEach = inputs.Kit.Stock.PegPrice,
                MassEach = Mass.FromKilograms(Hardwood * Math.PI / 4 * diameter.Meters * diameter.Meters * PegLength.Meters),
            };
        }

        yield return new HardwareLine
        {
            Kind = HardwareKind.FlashJoint,
            For = holder.Holder,
            Places = [place],
            Diameter = inputs.Pipe,
            PriceEach = inputs.Kit.Stock.ClampPrice,
            MassEach = FlashHardware.ClampMass,
        };
        yield return new HardwareLine
        {
            Kind = HardwareKind.SafetyCord,
            For = holder.Holder,
            Places = [place],
            Diameter = CordDiameter,
            Length = SafetyCord,
            PriceEach = inputs.Kit.Stock.CordPrice,
            MassEach = HoldingHardware.CordMass(SafetyCord),
        };
    }

    /// <summary>Clips that hold a pipe to another across it.</summary>
    public static HardwareLine PipeClips(HardwareInputs inputs, Physics.ValueList<HardwarePlace> places, string belongsTo) => new()
    {
        Kind = HardwareKind.PipeClip,
        For = belongsTo,
        Places = places,
        Grips = [inputs.Pipe, inputs.Pipe],
        Diameter = inputs.Pipe,
        PriceEach = inputs.Kit.Stock.ClipPrice,
        MassEach = PanelHardware.UsualClip,
    };
}
