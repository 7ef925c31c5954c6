using StudioKit.Kits;
using StudioKit.Kits.Lighting;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Obstacles;
using StudioKit.Physics.Light.Standing;
using StudioKit.Planning.Studio.Lights;
using UnitsNet;

namespace StudioKit.Planning.Standing;

/// <summary>One light about the subject as a thing in space: its bright front, its head, its axis through the subject.</summary>
/// <param name="From">From where it comes.</param>
/// <param name="Subject">Middle of the subject.</param>
/// <param name="Front">The bright front, aimed at the subject, at full power.</param>
/// <param name="Head">Modifier and head behind it.</param>
/// <param name="Depth">How far they reach behind the front.</param>
internal sealed record StandingLight(LightDirection From, Position Subject, Emitter Front, BoxObstacle Head, Length Depth)
{
    // A dome or a flat sheet before the head (common practice, no source).
    private static readonly Length ThinModifier = Length.FromMillimeters(25);

    // The front itself is bright, the body begins a hair behind it.
    private const double Hair = 0.001;

    /// <summary>Middle of the back of the head, where it is held.</summary>
    public Position Back => Front.Centre.Along(Front.Orientation.Axis, -Depth.Meters);

    /// <summary>Level direction from the subject outwards past the light; to the camera's right for one straight above.</summary>
    public Direction Outward => From.Towards is var way && double.Hypot(way.X, way.Y) > 1e-6 ? Direction.Of(way.X, way.Y, 0) : Direction.Right;

    /// <summary>A light of a set-up about a subject.</summary>
    /// <param name="kit">The kit.</param>
    /// <param name="light">The light, not one below.</param>
    /// <param name="subject">Middle of the subject.</param>
    public static StandingLight Of(KitSpec kit, LightSpec light, Position subject)
    {
        var from = light.From ?? throw new ArgumentException("A light below the panel stands in no direction from the subject.", nameof(light));
        var flash = LightingCases.Flash(kit, light);
        var centre = from.PlaceFrom(subject, light.Distance);
        var orientation = Orientation.AimedAt(centre, subject);
        var depth = DepthOf(kit, light);
        var front = new Emitter
        {
            Centre = centre,
            Orientation = orientation,
            Width = flash.HeadWidth,
            Height = flash.HeadHeight,
            Lobe = PanelScene.LobeOf(kit, light),
            AxialIntensityTime = PanelScene.FullPowerIntensityTime(flash),
        };
        return new StandingLight(from, subject, front, new BoxObstacle(centre.Along(orientation.Axis, -(depth.Meters / 2) - Hair), orientation, front.Width, front.Height, depth), depth);
    }

    private static Length DepthOf(KitSpec kit, LightSpec light) => LightingCases.FlashOf(kit, light).BodyHeight + LightingCases.ModifierOf(kit, light) switch
    {
        null => Length.Zero,
        { Kind: ModifierKind.Softbox } softbox => softbox.Reach,
        _ => ThinModifier,
    };
}
