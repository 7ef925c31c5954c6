using StudioKit.Kits;
using StudioKit.Physics.Structure.Fasteners;
using StudioKit.Physics.Structure.Frames;
using UnitsNet;

namespace StudioKit.Planning.Studio.Hardware;

/// <summary>Pins of the joints that are pulled, and the feet.</summary>
internal static class JointHardware
{
    /// <summary>What of a foot's screw stays in its nuts at its longest: five turns of a coarse thread of 8 mm and a nut's height, about (common practice, no source).</summary>
    public static readonly Length KeptInNuts = Length.FromMillimeters(15);

    // A pin a fifth as thick as the pipe, from 3 to 6 mm, in a hole half a millimetre wider; 10 mm to take hold of; sold by 5 mm. A fitting stands at least 3 mm proud (common practice, no source).
    private const double PinShare = 0.2;
    private const double PinPlay = 0.5;
    private const double PinGrip = 10;
    private const double LeastProud = 3;
    private const double Steel = 7850;

    public static IEnumerable<HardwareLine> Of(HardwareInputs inputs)
    {
        if (inputs.Frame is not { } frame)
        {
            yield break;
        }

        if (frame.Joints.Any(joint => joint.Pinned))
        {
            yield return Pins(inputs, frame);
        }

        if (frame.Feet.Count > 0)
        {
            yield return Feet(inputs, frame);
            yield return new HardwareLine { Kind = HardwareKind.NutGlue, Places = [.. frame.Feet.Select(foot => new HardwarePlace(foot.Joint, 1))] };
        }
    }

    /// <summary>The hole that is drilled for a pin, halfway into the shallowest socket that has one.</summary>
    public static PinHole PinHole(KitSpec kit, FrameResult frame)
    {
        var fittings = Frames.FrameDesign.CaseOf(kit.Frame.Fittings);
        var depth = frame.Joints.Where(joint => joint.Pinned).Min(joint => (fittings.Of(joint.Kind).SocketDepth - kit.Frame.InsertionGap).Millimeters);
        return new PinHole(Length.FromMillimeters(PinThickness(kit) + PinPlay), Length.FromMillimeters(Math.Floor(depth + 1e-6) / 2));
    }

    private static double PinThickness(KitSpec kit) => Math.Clamp(Math.Floor((kit.Frame.Pipe.OutsideDiameter.Millimeters * PinShare) + 1e-9), 3, 6);

    private static HardwareLine Pins(HardwareInputs inputs, FrameResult frame)
    {
        var frameSpec = inputs.Kit.Frame;
        var (diameter, hole) = (PinThickness(inputs.Kit), PinHole(inputs.Kit, frame));
        var outside = inputs.Pipe.Millimeters + (2 * Math.Max(LeastProud, frameSpec.Pad.Millimeters));
        var length = Math.Ceiling(((outside + PinGrip) / 5) - 1e-9) * 5;
        return new HardwareLine
        {
            Kind = HardwareKind.Pin,
            Places = [.. frame.Joints.Where(joint => joint.Pinned).Select(joint => new HardwarePlace(joint.Label, joint.Ports.Count(port => port.Member is not null)))],
            Diameter = Length.FromMillimeters(diameter),
            Length = Length.FromMillimeters(length),
            Hole = hole.Width,
            HoleFromMouth = hole.FromMouth,
            PriceEach = inputs.Kit.Stock.PinPrice,
            MassEach = Mass.FromKilograms(Steel * Rod(diameter / 1000) * length / 1000) + Mass.FromGrams(3),
        };
    }

    private static HardwareLine Feet(HardwareInputs inputs, FrameResult frame)
    {
        var screw = HexagonScrew.WithNutIn(inputs.Bore);
        var needed = frame.Feet.Max(foot => foot.LongestExtension.Millimeters) + KeptInNuts.Millimeters + screw.NutHeight.Millimeters;
        var length = ScrewLength.SoldFor(Length.FromMillimeters(needed)) ?? WholeLengths.UpToCentimetre(Length.FromMillimeters(needed));
        return new HardwareLine
        {
            Kind = HardwareKind.Foot,
            Places = [.. frame.Feet.Select(foot => new HardwarePlace(foot.Joint, 1))],
            Screw = screw,
            Diameter = screw.Diameter,
            Length = length,
            Hole = screw.Hole,
            Order = [FootPart.GluedNut, FootPart.CapFloor, FootPart.Washer, FootPart.LockNut, FootPart.ScrewHead, FootPart.RubberTip],
            PriceEach = inputs.Kit.Stock.FootPrice,
            MassEach = MassOf(screw, length),
        };
    }

    // Screw at nine tenths of its diameter for the thread, head, two nuts, washer, and 5 g of rubber.
    private static Mass MassOf(HexagonScrew screw, Length length)
    {
        var hexagon = Math.Sqrt(3) / 2 * Math.Pow(screw.AcrossFlats.Meters, 2);
        var volume = (Rod(0.9 * screw.Diameter.Meters) * length.Meters)
            + (hexagon * screw.HeadHeight.Meters)
            + (2 * (hexagon - Rod(screw.Diameter.Meters)) * screw.NutHeight.Meters)
            + ((Rod(screw.WasherDiameter.Meters) - Rod(screw.Diameter.Meters)) * screw.WasherThickness.Meters);
        return Mass.FromKilograms(Steel * volume) + Mass.FromGrams(5);
    }

    private static double Rod(double diameter) => Math.PI / 4 * diameter * diameter;
}
