using StudioKit.Physics.Structure;

namespace StudioKit.Planning.Checks;

/// <summary>What would make a structural check pass, with the keys of the kit that do it.</summary>
internal static class StructureRemedies
{
    /// <summary>The same remedy among those of a plan's checks.</summary>
    public static CheckRemedy Of(StructuralRemedy remedy)
    {
        var (kind, keys) = KindAndKeys(remedy.Kind);
        return new CheckRemedy(kind) { Amount = AmountOf(remedy), Keys = keys };
    }

    private static CheckAmount AmountOf(StructuralRemedy remedy) => remedy switch
    {
        { Ballast: { } ballast } => new CheckAmount.AddedBallast(ballast.UnderMiddle, ballast.OnWindwardFeet, ballast.Hung),
        { Size: { } size } => new CheckAmount.Measure(size),
        _ => CheckAmount.Unmeasured,
    };

    private static (CheckRemedyKind Kind, IReadOnlyList<string> Keys) KindAndKeys(StructuralRemedyKind kind) => kind switch
    {
        StructuralRemedyKind.SheetOfThickness => (CheckRemedyKind.SheetOfThickness, ["panel.thickness"]),
        StructuralRemedyKind.ThickerSheet => (CheckRemedyKind.ThickerSheet, ["panel.thickness"]),
        StructuralRemedyKind.WiderSweep => (CheckRemedyKind.WiderSweep, ["panel.sweep-radius", "panel.thickness"]),
        StructuralRemedyKind.MoreEdgeRoom => (CheckRemedyKind.MoreEdgeRoom, ["frame.edge-clearance"]),
        StructuralRemedyKind.LargerPipeOrLeg => (CheckRemedyKind.LargerPipeOrLeg, ["frame.pipe"]),
        StructuralRemedyKind.LargerPipeAndNoElbows => (CheckRemedyKind.LargerPipeAndNoElbows, ["frame.pipe", "panel.elbow-load"]),
        StructuralRemedyKind.StifferLegs => (CheckRemedyKind.StifferLegs, ["frame.stretchers", "frame.height", "frame.pipe", "frame.joint-stiffness", "frame.pegs.guys"]),
        StructuralRemedyKind.StifferJoints => (CheckRemedyKind.StifferJoints, ["frame.joint-stiffness", "frame.stretchers", "frame.pegs.guys"]),
        StructuralRemedyKind.MorePegs => (CheckRemedyKind.MorePegs, ["frame.pegs.count", "frame.pegs.hold"]),
        StructuralRemedyKind.Shade => (CheckRemedyKind.Shade, ["site.sun-warming", "frame.pipe"]),
        StructuralRemedyKind.BallastAgainstTipping => (CheckRemedyKind.BallastAgainstTipping, ["frame.ballast", "frame.pegs.count"]),
        StructuralRemedyKind.BallastAgainstSliding => (CheckRemedyKind.BallastAgainstSliding, ["frame.ballast", "frame.pegs.count"]),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a structural remedy that a plan knows."),
    };
}
