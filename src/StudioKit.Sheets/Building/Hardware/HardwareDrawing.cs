using StudioKit.Planning.Studio.Hardware;
using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Building.Hardware;

/// <summary>A small part in its outline at full size; of what is long, its section and a shortened length.</summary>
internal static class HardwareDrawing
{
    /// <summary>A small picture of what has no shape of its own.</summary>
    public static Drawing Sketch(HardwareLine line) => new($"Part: {HardwareText.Brief(line)}", $"{HardwareText.Name(line)}, not at its size", SoftOutline.Of(line.Kind));

    /// <summary>The drawing; none of what has no shape of its own, as a bag, a cloth, a tube of glue.</summary>
    public static Drawing? Of(HardwareLine line)
    {
        IReadOnlyList<Primitive> marks = line.Kind switch
        {
            HardwareKind.Pin => PinOutline.Of(line),
            HardwareKind.Foot => FootOutline.Of(line),
            HardwareKind.PanelClip or HardwareKind.SheetClip or HardwareKind.SkirtClip => ClipOutline.Of(line),
            HardwareKind.PipeClip => ClipOutline.Crossed(line),
            HardwareKind.Peg => RodOutline.Peg(line),
            HardwareKind.PolePeg => RodOutline.Stake(line),
            HardwareKind.LedgeScrew => RodOutline.Screw(line),
            HardwareKind.GuyCord or HardwareKind.BallastCord or HardwareKind.SafetyCord => RodOutline.Cord(line),
            HardwareKind.CradleClamp or HardwareKind.FlashJoint => RodOutline.Stub(line),
            HardwareKind.PadStrip => StripOutline.Flat(line.Width!.Value.Millimeters, line.Thickness!.Value.Millimeters),
            HardwareKind.LedgeStrip => StripOutline.Angle(line.Width!.Value.Millimeters, line.Thickness!.Value.Millimeters),
            _ => [],
        };
        return marks.Count == 0 ? null : new Drawing($"Part: {HardwareText.Brief(line)}", $"{HardwareText.Name(line)}, at full size", marks);
    }
}
