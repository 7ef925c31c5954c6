using StudioKit.Physics.Structure;
using StudioKit.Planning.Changes;

namespace StudioKit.Planning.Checks;

/// <summary>What makes a structural check pass, with the keys of the kit that do it.</summary>
internal static class StructureRemedies
{
    /// <summary>The remedy that a change of the kit is; a smaller studio where no single change was found.</summary>
    public static CheckRemedy Of(StructuralChange? change, StructuralCheck check) => change switch
    {
        null => new CheckRemedy(CheckRemedyKind.SmallerStudio) { Keys = ["panel.width", "panel.depth", "frame.height"] },
        StructuralChange.AllEdgesRest => new CheckRemedy(CheckRemedyKind.RestOnAllEdges) { Keys = ["frame.panel-rests"] },
        StructuralChange.OtherSheet sheet => new CheckRemedy(CheckRemedyKind.SheetOfThickness) { Amount = new CheckAmount.Measure(sheet.Thickness), Keys = ["panel.thickness"] },
        StructuralChange.OtherSweep sweep => new CheckRemedy(CheckRemedyKind.WiderSweep) { Amount = new CheckAmount.Measure(sweep.Radius), Keys = ["panel.sweep-radius"] },
        StructuralChange.EdgeRoom edge => new CheckRemedy(CheckRemedyKind.MoreEdgeRoom) { Amount = new CheckAmount.Measure(edge.Room), Keys = ["frame.edge-clearance"] },
        StructuralChange.OtherPipe pipe => new CheckRemedy(CheckRemedyKind.OtherPipe) { Parts = [pipe.Stocked.Pipe.Name], Keys = ["frame.pipe", "frame.fittings"] },
        StructuralChange.Stretched => new CheckRemedy(CheckRemedyKind.Stretchers) { Keys = ["frame.stretchers"] },
        StructuralChange.WithGuys guys => new CheckRemedy(CheckRemedyKind.Guys) { Amount = new CheckAmount.HowMany(guys.Pegs), Keys = ["frame.pegs.guys", "frame.pegs.count"] },
        StructuralChange.Pegged pegs => new CheckRemedy(CheckRemedyKind.MorePegs) { Amount = new CheckAmount.HowMany(pegs.Pegs), Keys = ["frame.pegs.count"] },
        StructuralChange.Weighted => Ballast(check),
        StructuralChange.Shaded => new CheckRemedy(CheckRemedyKind.Shade) { Keys = ["site.sun-warming"] },
        StructuralChange.LighterElbow elbow => new CheckRemedy(CheckRemedyKind.LighterElbow) { Amount = new CheckAmount.Measure(elbow.Push), Keys = ["panel.elbow-load"] },
        _ => throw new ArgumentOutOfRangeException(nameof(change), change, "Not a change that a remedy is known for."),
    } with
    { Change = change };

    private static CheckRemedy Ballast(StructuralCheck check)
    {
        var need = check.Remedy!.Ballast!;
        var kind = check.Kind == StructuralCheckKind.Tipping ? CheckRemedyKind.BallastAgainstTipping : CheckRemedyKind.BallastAgainstSliding;
        return new CheckRemedy(kind) { Amount = new CheckAmount.AddedBallast(need.UnderMiddle, need.OnWindwardFeet, need.Hung), Keys = ["frame.ballast"] };
    }
}
