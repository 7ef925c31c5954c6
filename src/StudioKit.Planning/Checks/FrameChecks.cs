using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning.Studio;
using UnitsNet;

namespace StudioKit.Planning.Checks;

/// <summary>Whether a frame can be drawn and built, and carries the flashes below.</summary>
internal static class FrameChecks
{
    /// <summary>The failing check of a frame that cannot even be drawn.</summary>
    public static PlanCheck Room(FrameObstacle obstacle) => new()
    {
        Kind = PlanCheckKind.FrameRoom,
        Passed = false,
        SourceKey = "Derived",
        SourceLocator = "centre lines of rails within panel and height",
        Findings = [new CheckFinding.OfNoFrame(obstacle)],
        Remedy = RemedyOf(obstacle),
    };

    /// <summary>Whether all its pipes go together and go into the pack, and a check of each flash that it is to carry.</summary>
    public static IEnumerable<PlanCheck> Of(FramePlan frame) =>
        frame.LowerFlashes.Where(flash => flash.Support != FlashSupport.Ground || flash.Fault?.Kind is CradleFaultKind.BodyOutsideLegs or CradleFaultKind.BodyInGround).Select(Cradle).Prepend(Fit(frame.Geometry));

    private static PlanCheck Fit(FrameResult frame) => new()
    {
        Kind = PlanCheckKind.FrameFit,
        Passed = frame.GoesTogether,
        SourceKey = "Derived",
        SourceLocator = "centre lines less take-offs and gaps",
        Findings = [.. frame.Problems.Select(problem => new CheckFinding.OfFrame(problem))],
        Remedy = frame.GoesTogether ? null : RemedyOf(frame.Problems),
        Caveats = [.. frame.Caveats.Select(caveat => new CheckCaveat.OfFrame(caveat))],
    };

    private static PlanCheck Cradle(FlashBelow flash) => new()
    {
        Kind = PlanCheckKind.Cradle,
        Parts = [flash.Flash, .. flash.SetUps],
        Passed = flash.Fault is null,
        Demand = new CheckAmount.Measure(flash.BelowPanel),
        SourceKey = "Derived",
        SourceLocator = "tees of lower rails on legs, heads between them",
        Findings = flash.Fault is { } fault ? [new CheckFinding.OfCradle(fault)] : [],
        Remedy = flash.Fault is null ? null : RemedyOf(flash.Moves),
    };

    private static CheckRemedy RemedyOf(FrameObstacle obstacle) => obstacle.Kind switch
    {
        FrameObstacleKind.NarrowPanel => new CheckRemedy(CheckRemedyKind.WiderThanRails)
        {
            Amount = new CheckAmount.Measure(obstacle.Size),
            Keys = ["panel.width", "panel.depth", "frame.pipe"],
        },
        FrameObstacleKind.FittingsUnderGround => Raise(obstacle.Size),
        _ => new CheckRemedy(CheckRemedyKind.ClearJoint) { Keys = ["set-ups.lights.distance", "set-ups.lights.offset-right", "set-ups.lights.offset-back", "panel.width", "panel.depth"] },
    };

    // The first that is wrong is mended first: without legs, or in pieces that go into no bag, the rest does not matter.
    private static CheckRemedy RemedyOf(IReadOnlyList<FrameProblem> problems) => problems[0].Kind switch
    {
        FrameProblemKind.NoRoomForLegs => Raise(problems[0].Limit - problems[0].Size),
        FrameProblemKind.PieceTooLong => new CheckRemedy(CheckRemedyKind.LongerPieces)
        {
            Amount = new CheckAmount.Measure(WholeLengths.BeyondMillimetre(problems.Where(problem => problem.Kind == FrameProblemKind.PieceTooLong).Max(problem => problem.Size))),
            Keys = ["frame.longest-piece", "pack.bags.inside"],
        },
        _ => new CheckRemedy(CheckRemedyKind.OtherFrameSize) { Keys = ["frame.height", "panel.width", "panel.depth"] },
    };

    private static CheckRemedy Raise(Length by) =>
        new(CheckRemedyKind.RaiseFrame) { Amount = new CheckAmount.Measure(WholeLengths.BeyondMillimetre(by)), Keys = ["frame.height", "frame.kind"] };

    private static CheckRemedy RemedyOf(IReadOnlyList<CradleMove> moves) => moves.Count == 0
        ? new CheckRemedy(CheckRemedyKind.OwnStand)
        : new CheckRemedy(CheckRemedyKind.MoveFlash) { Amount = new CheckAmount.NearestMoves(moves), Keys = [.. moves.Select(move => KeyOf(move.Kind)).Distinct(StringComparer.Ordinal)] };

    private static string KeyOf(CradleMoveKind kind) => kind switch
    {
        CradleMoveKind.Up or CradleMoveKind.Down => "set-ups.lights.distance",
        CradleMoveKind.Left or CradleMoveKind.Right => "set-ups.lights.offset-right",
        CradleMoveKind.Front or CradleMoveKind.Back => "set-ups.lights.offset-back",
        _ => "frame.height",
    };
}
