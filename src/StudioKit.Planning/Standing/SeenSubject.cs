using StudioKit.Physics;
using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Obstacles;
using StudioKit.Physics.Light.Standing;
using StudioKit.Planning.Framing;
using UnitsNet;

namespace StudioKit.Planning.Standing;

/// <summary>The camera at one of its angles before the subject: its view and the lens that may stand in the light's way.</summary>
/// <param name="View">What it takes in.</param>
/// <param name="Lens">Lens and camera as a round body.</param>
internal sealed record SeenSubject(CameraView View, BarrelObstacle Lens)
{
    // Nearer than this, lens and subject touch, which another check says.
    private const double Nearest = 0.001;

    private const double ShortestBody = 0.05;

    /// <summary>The camera at one angle.</summary>
    /// <param name="view">What it takes in.</param>
    /// <param name="framing">The framing.</param>
    /// <param name="subject">Middle of the subject.</param>
    public static SeenSubject Of(CameraView view, PlannedFraming framing, Position subject)
    {
        var towards = LightDirection.OfCamera(view.Pitch).Towards;
        var front = Math.Max(Nearest, (framing.Plan.WorkingDistance - framing.Lens.Hood).Meters);
        var back = Math.Max(front + ShortestBody, framing.Plan.SubjectToSensor.Meters);
        return new SeenSubject(view, new BarrelObstacle(subject.Along(towards, front), subject.Along(towards, back), framing.Lens.FrontDiameter));
    }

    /// <summary>Share of a light that the lens hides, at the worst of some points of the subject [1].</summary>
    public double Covers(StandingLight light, ValueList<Position> points) => points.Max(point => LightCover.Share(light.Front, point, [Lens]));
}
