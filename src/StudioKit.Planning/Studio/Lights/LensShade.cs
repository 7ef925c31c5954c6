using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Lobes;
using StudioKit.Physics.Light.Obstacles;
using StudioKit.Physics.Light.Standing;
using StudioKit.Planning.Framing;
using UnitsNet;

namespace StudioKit.Planning.Studio.Lights;

/// <summary>The lens with its hood between a light and the subject.</summary>
internal static class LensShade
{
    // Nearer than this, lens and subject touch, which another check says.
    private const double Nearest = 0.001;

    private const double ShortestBody = 0.05;

    // A light that is hidden whole still lights a little by what is about; ten stops stand for that.
    private const double LeastShare = 1.0 / 1024;

    /// <summary>Lens and camera as a round body before a subject.</summary>
    /// <param name="framing">The framing.</param>
    /// <param name="pitch">Angle of the line of sight under the horizontal.</param>
    /// <param name="subject">Middle of the subject.</param>
    public static BarrelObstacle Body(PlannedFraming framing, Angle pitch, Position subject)
    {
        var towards = LightDirection.OfCamera(pitch).Towards;
        var front = Math.Max(Nearest, (framing.Plan.WorkingDistance - framing.Lens.Hood).Meters);
        var back = Math.Max(front + ShortestBody, framing.Plan.SubjectToSensor.Meters);
        return new BarrelObstacle(subject.Along(towards, front), subject.Along(towards, back), framing.Lens.FrontDiameter);
    }

    /// <summary>What of a light's exposure is lost at the middle of the subject because the lens hides part of its face, as a mean over the camera's angles that one exposure is for.</summary>
    /// <param name="kit">The kit.</param>
    /// <param name="setUp">The set-up.</param>
    /// <param name="framing">The framing.</param>
    /// <param name="light">One of the set-up's lights.</param>
    /// <returns>Mean of −log₂ of the share that is seen [stops]; 0 for a light below, or one that nothing hides.</returns>
    public static Stops Loss(KitSpec kit, SetUpSpec setUp, PlannedFraming framing, LightSpec light)
    {
        if (light.From is not { } from)
        {
            return default;
        }

        var (subject, flash) = (new Position(0, 0, 0), LightingCases.Flash(kit, light));
        var centre = from.PlaceFrom(subject, light.Distance);
        var face = new Emitter
        {
            Centre = centre,
            Orientation = Orientation.AimedAt(centre, subject),
            Width = flash.HeadWidth,
            Height = flash.HeadHeight,
            Lobe = CosineLobe.Lambertian,
            AxialIntensityTime = 1,
        };
        return new Stops(setUp.CameraPitches.Average(pitch => -Math.Log2(Math.Max(LeastShare, 1 - LightCover.Share(face, subject, [Body(framing, pitch, subject)])))));
    }
}
