using UnitsNet;

namespace StudioKit.Planning.Studio.Hardware;

/// <summary>What holds skirts, and what folded softboxes and flat modifiers are stuck and held with.</summary>
internal static class ClothHardware
{
    // A clip every 30 cm (common practice, no source).
    private const double ClipSpacing = 0.3;
    private static readonly Length TapeWidth = Length.FromMillimeters(12);
    private static readonly Length BandWidth = Length.FromMillimeters(10);

    public static IEnumerable<HardwareLine> Of(HardwareInputs inputs)
    {
        yield return new HardwareLine
        {
            Kind = HardwareKind.SkirtClip,
            Places = [.. inputs.Parts.Where(part => part.Kind == SheetPartKind.Skirt).Select(part => new HardwarePlace(part.Purpose, part.Count * ((int)Math.Ceiling((part.Width.Meters / ClipSpacing) - 1e-9) + 1)))],
            Grips = [inputs.Pipe],
            Diameter = inputs.Pipe,
            PriceEach = inputs.Kit.Stock.ClipPrice,
            MassEach = PanelHardware.UsualClip,
        };
        yield return new HardwareLine
        {
            Kind = HardwareKind.FlapTape,
            Places = [.. inputs.Softboxes.Select(box => new HardwarePlace(box.Modifier, 1, Seams(box))), .. inputs.Parts.Where(part => part.Kind == SheetPartKind.FlatModifier).Select(part => new HardwarePlace(part.Label, part.Count, 2 * (part.Width + part.Height)))],
            Width = TapeWidth,
        };
        foreach (var box in inputs.Softboxes)
        {
            yield return new HardwareLine
            {
                Kind = HardwareKind.HeadBand,
                For = box.Modifier,
                Places = [new HardwarePlace(box.Modifier, 1)],
                Width = BandWidth,
                Length = 2 * (box.HeadWidth + box.HeadHeight),
                MassEach = Mass.FromGrams(5),
            };
        }
    }

    // Four seams between the sides, and all round the front.
    private static Length Seams(FoldedSoftbox box) => (4 * box.Seam) + (2 * (box.FrontWidth + box.FrontHeight));
}
