using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning.Studio.Frames;
using UnitsNet;

namespace StudioKit.Planning.Studio.Hardware;

/// <summary>What the panel rests on and is held by, and what it travels in.</summary>
internal static class PanelHardware
{
    // Self-tapping screws of 2.9 mm, 9.5 mm long, every 15 cm of a ledge, in holes of 2.5 mm (common practice, no source).
    private static readonly Length ScrewDiameter = Length.FromMillimeters(2.9);
    private static readonly Length ScrewLength = Length.FromMillimeters(9.5);
    private static readonly Length ScrewHole = Length.FromMillimeters(2.5);
    private const double ScrewSpacing = 0.15;

    // Nearer than this to a rail's centre line a clip is on it.
    private const double OnLine = 1e-5;

    public static IEnumerable<HardwareLine> Of(HardwareInputs inputs)
    {
        if (inputs.Frame is not { } frame)
        {
            yield break;
        }

        var (ledge, over) = (frame.Ledge, frame.Ledge.Seat == PanelSeat.OverRails);
        yield return new HardwareLine
        {
            Kind = over ? HardwareKind.PadStrip : HardwareKind.LedgeStrip,
            Places = [.. ledge.Rests.Select(rest => new HardwarePlace(rest.Member, 1, rest.Length))],
            Width = over ? StripsToBuy.PadWidth : ledge.Bearing,
            Thickness = over ? ledge.Pad : StripsToBuy.LedgeThickness,
            PriceEach = inputs.Kit.Stock.PadPrice,
        };
        if (!over)
        {
            yield return new HardwareLine
            {
                Kind = HardwareKind.LedgeScrew,
                Places = [.. ledge.Rests.Select(rest => new HardwarePlace(rest.Member, Math.Max(2, (int)Math.Ceiling((rest.Length.Meters / ScrewSpacing) - 1e-9) + 1)))],
                Diameter = ScrewDiameter,
                Length = ScrewLength,
                Hole = ScrewHole,
                MassEach = Mass.FromGrams(1),
            };
        }

        yield return new HardwareLine
        {
            Kind = HardwareKind.PanelClip,
            Places = [.. ledge.ClipPoints.GroupBy(point => RailAt(frame, point), StringComparer.Ordinal).Select(rail => new HardwarePlace(rail.Key, rail.Count()))],
            Grips = over ? [inputs.Pipe, ledge.Pad, inputs.Panel.Thickness] : [inputs.Pipe],
            Diameter = inputs.Pipe,
            PriceEach = inputs.Kit.Stock.ClipPrice,
            MassEach = UsualClip,
        };
        foreach (var cloth in Cloths(inputs.Panel))
        {
            yield return cloth;
        }
    }

    /// <summary>Mass of a spring clip.</summary>
    public static Mass UsualClip { get; } = Mass.FromGrams(15);

    private static IEnumerable<HardwareLine> Cloths(PanelPlan panel) =>
    [
        new HardwareLine { Kind = HardwareKind.PanelCloth, Places = [new HardwarePlace("panel", 2)], Width = panel.Width, Length = panel.Depth, MassEach = Mass.FromKilograms(0.1 * panel.Width.Meters * panel.Depth.Meters) },
        new HardwareLine { Kind = HardwareKind.WipingCloth, Places = [new HardwarePlace("panel", 1)], MassEach = Mass.FromGrams(20) },
    ];

    private static string RailAt(FrameResult frame, FramePoint point)
    {
        var places = frame.Joints.ToDictionary(joint => joint.Label, joint => joint.Position, StringComparer.Ordinal);
        return frame.Members.MinBy(member => Math.Max(OnLine, Distance(places[member.From], places[member.To], point)))!.Label;
    }

    private static double Distance(FramePoint from, FramePoint to, FramePoint point)
    {
        var way = to - from;
        var share = Math.Clamp((((point.Right - from.Right) * way.Right) + ((point.Back - from.Back) * way.Back) + ((point.Up - from.Up) * way.Up)) / (way.Norm * way.Norm), 0, 1);
        return (point - (from + (share * way))).Norm;
    }
}
