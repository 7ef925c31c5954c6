using StudioKit.Physics;
using StudioKit.Physics.Structure.Frames;
using UnitsNet;

namespace StudioKit.Planning.Studio.Hardware;

/// <summary>Pegs, cords and ballast of the frame.</summary>
internal static class HoldingHardware
{
    // A turn round the pipe, a knot and a slide (common practice, no source).
    private static readonly Length Knots = Length.FromCentimeters(40);
    private static readonly Length CordDiameter = Length.FromMillimeters(3);

    /// <summary>A cord's mass by its length, 6 g a metre at 3 mm (common practice, no source).</summary>
    public static Mass CordMass(Length length) => Mass.FromGrams(6 * length.Meters);

    public static IEnumerable<HardwareLine> Of(HardwareInputs inputs)
    {
        if (inputs.Frame is not { } frame)
        {
            yield break;
        }

        var (pegs, corners) = (inputs.Kit.Frame.Pegs, TopCorners(frame));
        if (pegs.Count > 0)
        {
            yield return Pegs(inputs, Shared(pegs.Count, pegs.Guys || frame.Feet.Count == 0 ? [.. corners.Select(corner => corner.Label)] : [.. frame.Feet.Select(foot => foot.Joint)]), pegs.Hold, null);
            if (pegs.Guys)
            {
                var places = Shared(pegs.Count, [.. corners.Select(corner => corner.Label)]);
                yield return Cords(inputs, [.. places.Select(place => place with { Length = GuyLength(corners.First(corner => corner.Label == place.Where).Position) })], null);
                yield return Rags(places, null);
            }
        }

        if (inputs.Kit.Frame.Ballast > Mass.Zero)
        {
            yield return Bags([new HardwarePlace("under the middle", 1)], inputs.Kit.Frame.Ballast, inputs, null);
            yield return new HardwareLine
            {
                Kind = HardwareKind.BallastCord,
                Places = [.. corners.Select(corner => new HardwarePlace(corner.Label, 1, BallastLength(corner.Position)))],
                Diameter = CordDiameter,
                PriceEach = inputs.Kit.Stock.CordPrice,
                MassEach = CordMass(Length.FromMeters(corners.Average(corner => BallastLength(corner.Position).Meters))),
            };
        }
    }

    /// <summary>Pegs for a hold: 18 cm for 5 kg, longer with its square root, in the lengths that are sold (common practice, no source).</summary>
    public static HardwareLine Pegs(HardwareInputs inputs, ValueList<HardwarePlace> places, Mass hold, string? belongsTo)
    {
        int[] sold = [180, 230, 300, 400];
        var needed = 180 * Math.Sqrt(Math.Max(1, hold.Kilograms / 5));
        var length = sold.Where(one => one >= needed - 1e-6).DefaultIfEmpty(sold[^1]).First();
        return new HardwareLine
        {
            Kind = HardwareKind.Peg,
            For = belongsTo,
            Places = places,
            Diameter = Length.FromMillimeters(6),
            Length = Length.FromMillimeters(length),
            Holds = hold,
            PriceEach = inputs.Kit.Stock.PegPrice,
            MassEach = Mass.FromGrams(0.15 * length),
        };
    }

    /// <summary>Cords to pegs.</summary>
    public static HardwareLine Cords(HardwareInputs inputs, ValueList<HardwarePlace> places, string? belongsTo) => new()
    {
        Kind = HardwareKind.GuyCord,
        For = belongsTo,
        Places = places,
        Diameter = CordDiameter,
        PriceEach = inputs.Kit.Stock.CordPrice,
        MassEach = CordMass(Length.FromMeters(places.Sum(place => place.Count * place.Length!.Value.Meters) / places.Sum(place => place.Count))),
    };

    /// <summary>A rag for every cord.</summary>
    public static HardwareLine Rags(ValueList<HardwarePlace> places, string? belongsTo) => new() { Kind = HardwareKind.CordRag, For = belongsTo, Places = places, MassEach = Mass.FromGrams(2) };

    /// <summary>Bags to fill, each with as much.</summary>
    public static HardwareLine Bags(ValueList<HardwarePlace> places, Mass each, HardwareInputs inputs, string? belongsTo) => new()
    {
        Kind = HardwareKind.BallastBag,
        For = belongsTo,
        Places = places,
        Holds = each,
        PriceEach = inputs.Kit.Stock.BagPrice,
        MassEach = Mass.FromGrams(100),
    };

    /// <summary>The corner of the frame that is highest in each quarter.</summary>
    public static IReadOnlyList<FrameJoint> TopCorners(FrameResult frame)
    {
        var middle = (frame.Joints.Min(joint => joint.Position.Back) + frame.Joints.Max(joint => joint.Position.Back)) / 2;
        return [.. frame.Joints.GroupBy(joint => (joint.Position.Right > 0, joint.Position.Back > middle))
            .Select(quarter => quarter.MaxBy(joint => joint.Position.Up + (1e-3 * (Math.Abs(joint.Position.Right) + Math.Abs(joint.Position.Back - middle))))!)];
    }

    private static Length GuyLength(FramePoint corner) => Length.FromMeters(corner.Up * Math.Sqrt(2)) + Knots;

    // The bag hangs half as high as the corners are.
    private static Length BallastLength(FramePoint corner) =>
        Length.FromMeters(Math.Sqrt((corner.Right * corner.Right) + (corner.Back * corner.Back) + (corner.Up * corner.Up / 4))) + Knots;

    private static ValueList<HardwarePlace> Shared(int count, IReadOnlyList<string> places) =>
        [.. places.Select((place, i) => new HardwarePlace(place, (count / places.Count) + (i < count % places.Count ? 1 : 0))).Where(place => place.Count > 0)];
}
