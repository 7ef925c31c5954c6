using StudioKit.Kits.SetUps;
using StudioKit.Physics.Light;
using UnitsNet;

namespace StudioKit.Planning.Firing;

/// <summary>How far the flashes of a set-up stand from the camera and from each other, over all its framings and angles.</summary>
/// <param name="plan">The plan.</param>
/// <param name="setUp">The set-up.</param>
internal sealed class FlashWays(Plan plan, SetUpSpec setUp)
{
    private readonly List<ExposurePlan> _exposures = [.. plan.Exposures.Where(exposure => exposure.SetUp == setUp.Name)];

    /// <summary>The longest straight way from the camera to a light.</summary>
    public Length FromCamera(LightPlan light) => Length.FromMeters(
        (from exposure in _exposures
         from pitch in exposure.CameraPitches
         select Way(PlaceOf(exposure, light), Camera(exposure.Framing.SubjectToSensor.Meters, pitch.Radians))).DefaultIfEmpty(0).Max());

    /// <summary>The longest straight way from one light to another.</summary>
    public Length Between(LightPlan one, LightPlan other) => Length.FromMeters(_exposures.Select(exposure => Way(PlaceOf(exposure, one), PlaceOf(exposure, other))).DefaultIfEmpty(0).Max());

    private static Position Camera(double distance, double pitch) => new(0, -distance * Math.Cos(pitch), distance * Math.Sin(pitch));

    // From the subject: right, beyond, up.
    private Position PlaceOf(ExposurePlan exposure, LightPlan light)
    {
        if (plan.LightStands.FirstOrDefault(stand => stand.SetUp == setUp.Name && stand.Framing == exposure.Framing.Name && stand.Place == light.Place) is { } stand)
        {
            return new Position(stand.Right.Meters, stand.Back.Meters, stand.Up.Meters);
        }

        var behindSheet = setUp.Lights[light.Place];
        return behindSheet.Role == LightRole.Behind
            ? new Position(behindSheet.OffsetRight.Meters, (setUp.BackgroundDistance + light.Distance).Meters, behindSheet.OffsetUp.Meters)
            : new Position(behindSheet.OffsetRight.Meters, behindSheet.OffsetBack.Meters, -light.Distance.Meters);
    }

    private static double Way(Position one, Position other) => Math.Sqrt(Math.Pow(one.X - other.X, 2) + Math.Pow(one.Y - other.Y, 2) + Math.Pow(one.Z - other.Z, 2));
}
