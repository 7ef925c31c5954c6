using StudioKit.Physics;
using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Obstacles;
using StudioKit.Physics.Light.Standing;
using StudioKit.Planning.Framing;
using StudioKit.Planning.Studio.Lights;

namespace StudioKit.Planning.Standing;

/// <summary>The camera at one of its angles before the subject: its view and the lens that may stand in the light's way.</summary>
/// <param name="View">What it takes in.</param>
/// <param name="Lens">Lens and camera as a round body.</param>
internal sealed record SeenSubject(CameraView View, BarrelObstacle Lens)
{
    /// <summary>The camera at one angle.</summary>
    /// <param name="view">What it takes in.</param>
    /// <param name="framing">The framing.</param>
    /// <param name="subject">Middle of the subject.</param>
    public static SeenSubject Of(CameraView view, PlannedFraming framing, Position subject) => new(view, LensShade.Body(framing, view.Pitch, subject));

    /// <summary>Share of a light that the lens hides, at the worst of some points of the subject [1].</summary>
    public double Covers(StandingLight light, ValueList<Position> points) => points.Max(point => LightCover.Share(light.Front, point, [Lens]));
}
