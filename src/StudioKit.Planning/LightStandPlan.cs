using StudioKit.Kits.Lighting;
using StudioKit.Kits.SetUps;
using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light.Standing;
using StudioKit.Planning.Standing;
using UnitsNet;

namespace StudioKit.Planning;

/// <summary>Where one light about the subject stands in one exposure, what holds it there, and what it does besides exposing.</summary>
public sealed record LightStandPlan
{
    /// <summary>Name of the set-up.</summary>
    public required string SetUp { get; init; }

    /// <summary>Name of the framing.</summary>
    public required string Framing { get; init; }

    /// <summary>Name of the flash.</summary>
    public required string Flash { get; init; }

    /// <summary>Name of the modifier before it; none where it is bare.</summary>
    public string? Modifier { get; init; }

    /// <summary>What it does.</summary>
    public required LightRole Role { get; init; }

    /// <summary>Its place in the set-up's list of lights, from 0 [1].</summary>
    public required int Place { get; init; }

    /// <summary>From where it comes.</summary>
    public required LightDirection From { get; init; }

    /// <summary>Bright window to subject.</summary>
    public required Length Distance { get; init; }

    /// <summary>To the right of the subject, as the camera sees it.</summary>
    public required Length Right { get; init; }

    /// <summary>Beyond the subject, away from the camera.</summary>
    public required Length Back { get; init; }

    /// <summary>Over the subject.</summary>
    public required Length Up { get; init; }

    /// <summary>Its middle over the ground.</summary>
    public required Length OverGround { get; init; }

    /// <summary>Width of its bright window or of the front before it.</summary>
    public required Length Width { get; init; }

    /// <summary>Height of the same.</summary>
    public required Length Height { get; init; }

    /// <summary>Depth of head and modifier behind that front.</summary>
    public required Length Depth { get; init; }

    /// <summary>Angle that its width fills, seen from the subject.</summary>
    public required Angle AngleAcross { get; init; }

    /// <summary>Angle that its height fills.</summary>
    public required Angle AngleUp { get; init; }

    /// <summary>How soft it is.</summary>
    public required Softness Softness { get; init; }

    /// <summary>Lit against shaded; none where nothing else lights the shadow.</summary>
    public Stops? ShadowDepth { get; init; }

    /// <summary>What its direction costs; 0 stops or less.</summary>
    public required Stops DirectionLoss { get; init; }

    /// <summary>Greatest share of it that the lens hides from the subject, over the camera's angles [1].</summary>
    public required double LensCovers { get; init; }

    /// <summary>Camera angle at which the lens hides most of it.</summary>
    public required Angle LensCoversAt { get; init; }

    /// <summary>The sheet by its light alone against clipping; none where it does not shine on one.</summary>
    public Stops? SheetLevel { get; init; }

    /// <summary>Its mirror image in the sheet against clipping; none where none is seen.</summary>
    public Stops? GlareLevel { get; init; }

    /// <summary>What holds it; none where the kit leaves it to a free hand.</summary>
    public string? Holder { get; init; }

    /// <summary>What kind of holder that is.</summary>
    public required HolderKind HeldBy { get; init; }

    /// <summary>Where the holder is fastened or stands, and the way from there to the light: places counted from the subject; empty for the ground.</summary>
    public ValueList<StandPoint> HolderLine { get; init; } = [];

    /// <summary>How far the holder must reach, and for a stand its boom.</summary>
    public Length ReachNeeded { get; init; }

    /// <summary>Whether it can be held there: with a free hand, from the camera.</summary>
    public bool WithinReach { get; init; } = true;

    /// <summary>What is wrong with where it stands.</summary>
    public ValueList<LightFault> Faults { get; init; } = [];
}
