using StudioKit.Physics.Light;
using StudioKit.Physics.Optics;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning.Covers;
using StudioKit.Planning.Cutting;
using StudioKit.Planning.Features;
using StudioKit.Planning.Firing;
using StudioKit.Planning.Packing;
using StudioKit.Planning.Standing;
using StudioKit.Planning.Studio.Uprights;

namespace StudioKit.Planning.Checks;

/// <summary>What stands in the way of a check; one of the forms below.</summary>
public abstract record CheckFinding
{
    private CheckFinding()
    {
    }

    /// <summary>Why a lens does not come to a magnification.</summary>
    /// <param name="Limit">As the framing has it.</param>
    public sealed record OutOfReach(ReachLimit Limit) : CheckFinding;

    /// <summary>An exposure that does not work, or only at the edge.</summary>
    /// <param name="Exposure">The exposure with its verdict.</param>
    public sealed record OfExposure(ExposurePlan Exposure) : CheckFinding;

    /// <summary>A feature that no exposure shows, as it is seen best.</summary>
    /// <param name="Feature">As the plan has it.</param>
    public sealed record OfFeature(FeaturePlan Feature) : CheckFinding;

    /// <summary>A view that a cover spoils.</summary>
    /// <param name="Cover">As the plan has it.</param>
    /// <param name="Framing">The framing.</param>
    /// <param name="View">The view with its faults.</param>
    public sealed record OfCover(CoverPlan Cover, CoveredFraming Framing, CoveredView View) : CheckFinding;

    /// <summary>Why no frame can be drawn.</summary>
    /// <param name="Obstacle">As the frame has it.</param>
    public sealed record OfNoFrame(FrameObstacle Obstacle) : CheckFinding;

    /// <summary>What stops a frame being built or packed.</summary>
    /// <param name="Problem">As the frame has it.</param>
    public sealed record OfFrame(FrameProblem Problem) : CheckFinding;

    /// <summary>Why a frame does not carry a flash.</summary>
    /// <param name="Fault">As the frame has it.</param>
    public sealed record OfCradle(CradleFault Fault) : CheckFinding;

    /// <summary>What is impossible about the place of the flashes below, or of the camera over them.</summary>
    /// <param name="SetUp">Name of the set-up.</param>
    /// <param name="Flash">Name of the flash that it is about; none where it is about none.</param>
    /// <param name="Problem">As the light has it.</param>
    public sealed record OfLight(string SetUp, string? Flash, LightProblem Problem) : CheckFinding;

    /// <summary>What is impossible about the place of a flash behind an upright sheet, or of the camera before it.</summary>
    /// <param name="SetUp">Name of the set-up.</param>
    /// <param name="Flash">Name of the flash that it is about; none where it is about none.</param>
    /// <param name="Problem">As the light has it.</param>
    public sealed record OfUpright(string SetUp, string? Flash, LightProblem Problem) : CheckFinding;

    /// <summary>A view that sees the ground under an upright sheet.</summary>
    /// <param name="Gap">As the plan of the sheet has it.</param>
    public sealed record OfGap(UprightGap Gap) : CheckFinding;

    /// <summary>What is wrong with where a light about the subject stands.</summary>
    /// <param name="Stand">The light where it is worst.</param>
    /// <param name="Fault">What is wrong there.</param>
    public sealed record OfStand(LightStandPlan Stand, LightFault Fault) : CheckFinding;

    /// <summary>Why a flash is not fired.</summary>
    /// <param name="Fault">What is wrong.</param>
    public sealed record OfTrigger(TriggerFault Fault) : CheckFinding;

    /// <summary>Pieces that can't be cut.</summary>
    /// <param name="Piece">As the cut plan has them.</param>
    public sealed record NotCut(UncutPiece Piece) : CheckFinding;

    /// <summary>A thing that no bag takes.</summary>
    /// <param name="Misfit">As the pack has it.</param>
    public sealed record NoPlace(Misfit Misfit) : CheckFinding;
}
