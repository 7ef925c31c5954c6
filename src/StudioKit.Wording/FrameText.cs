using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning;
using UnitsNet;

namespace StudioKit.Wording;

/// <summary>What is the matter with a frame.</summary>
internal static class FrameText
{
    public static string Of(FrameObstacle obstacle) => obstacle.Kind switch
    {
        FrameObstacleKind.NarrowPanel => $"The panel is no wider than its two rails, {PlanFormat.Millimetres(obstacle.Size)}.",
        FrameObstacleKind.FittingsUnderGround => "The frame is so low that its fittings would lie under the ground.",
        FrameObstacleKind.CrowdedJoint => "More pipes would meet in one place than a fitting has sockets.",
        _ => throw new ArgumentOutOfRangeException(nameof(obstacle), obstacle.Kind, "An obstacle without words."),
    };

    public static string Of(FrameProblem problem) => problem switch
    {
        { Kind: FrameProblemKind.NoRoomForLegs } => $"A height of {PlanFormat.Millimetres(problem.Size)} leaves no room for legs.",
        { Kind: FrameProblemKind.SocketsNotFilled, Member: { } member } => FormattableString.Invariant(
            $"{member.Label}: {PlanFormat.TenthMillimetres(problem.Size)} of pipe is left between {member.From} and {member.To}, under the {PlanFormat.TenthMillimetres(problem.Limit)} that fills both sockets."),
        { Kind: FrameProblemKind.PieceTooLong, Member: { } member } => FormattableString.Invariant(
            $"{member.Label}: {PlanFormat.TenthMillimetres(problem.Size)} does not fit a pack for {PlanFormat.TenthMillimetres(problem.Limit)} and cannot be split further."),
        _ => throw new ArgumentOutOfRangeException(nameof(problem), problem.Kind, "A problem without words."),
    };

    public static string Of(FrameCaveat caveat) => caveat.Kind switch
    {
        FrameCaveatKind.WithoutLegs => $"The panel lies {Whole(caveat.Size)} over the ground, not {Whole(caveat.Against)}: there is no room for legs.",
        FrameCaveatKind.SlopeBeyondFeet =>
            $"The slope asks the feet for {Whole(caveat.Size)} of travel, more than their {Whole(caveat.Against)}: dig in the uphill feet.",
        FrameCaveatKind.FollowsSlope => "Without legs the frame follows the slope of the ground: level a place for it first.",
        FrameCaveatKind.FlashOnGround => $"A low frame carries no flash: stand it with its window {Whole(caveat.Size)} over the ground.",
        FrameCaveatKind.TakeOffs => "Take-offs differ from maker to maker: measure one fitting of each kind before cutting.",
        _ => throw new ArgumentOutOfRangeException(nameof(caveat), caveat.Kind, "A caveat without words."),
    };

    private static string Whole(Length? length) => length is { } given ? PlanFormat.WholeMillimetres(given) : "";
}
