using StudioKit.Kits.Lighting;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Light.Standing;
using StudioKit.Planning;
using StudioKit.Planning.Standing;
using UnitsNet;

namespace StudioKit.Sheets.Tests;

/// <summary>A light about the subject with invented numbers.</summary>
internal static class SampleStand
{
    /// <summary>A flash of 20 cm by 15 cm at a distance, with no light lost, on a stand half a metre under the subject.</summary>
    public static LightStandPlan Of(LightDirection from, double centimetres)
    {
        var (way, distance) = (from.Towards, Length.FromCentimeters(centimetres));
        return new LightStandPlan
        {
            SetUp = "white",
            Framing = "55 mm at 1:2",
            Flash = "willow",
            Role = LightRole.Above,
            Place = 1,
            From = from,
            Distance = distance,
            Right = way.X * distance,
            Back = way.Y * distance,
            Up = way.Z * distance,
            OverGround = Length.FromCentimeters(78),
            Width = Length.FromCentimeters(20),
            Height = Length.FromCentimeters(15),
            Depth = Length.FromCentimeters(17),
            AngleAcross = Angle.FromDegrees(28),
            AngleUp = Angle.FromDegrees(21),
            Softness = Softness.Soft,
            DirectionLoss = default,
            LensCovers = 0,
            LensCoversAt = default,
            HeldBy = HolderKind.Stand,
            HolderLine = [new(way.X * distance, way.Y * distance, Length.FromMeters(-0.5)), new(way.X * distance, way.Y * distance, way.Z * distance)],
        };
    }
}
