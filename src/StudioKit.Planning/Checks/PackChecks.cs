using StudioKit.Physics.Packing;
using StudioKit.Planning.Packing;
using StudioKit.Planning.Studio.Frames;

namespace StudioKit.Planning.Checks;

/// <summary>Whether everything has its place and nobody carries too much.</summary>
internal static class PackChecks
{
    private const string Practice = "CommonPractice";

    /// <summary>Every check of a plan's pack.</summary>
    public static IEnumerable<PlanCheck> Of(Plan plan)
    {
        if (plan.Frame is { } frame && plan.Kit.Frame.LongestPiece is not null | plan.Pack.Bags.Count == 0)
        {
            yield return LongestAllowed(plan, frame);
        }

        foreach (var check in plan.Pack.LongPieces.Select(LongThing)
            .Concat(plan.Pack.Bags.Count > 0 ? [Places(plan.Pack)] : [])
            .Concat(plan.Pack.Bags.Where(bag => bag.HighestLoad is not null).Select(BagMass))
            .Concat(plan.Pack.Bags.Select(bag => BagRoom(plan, bag)))
            .Concat(plan.Pack.People.Select(person => Burden(plan, person))))
        {
            yield return check;
        }

        if (plan.Kit.Pack.TargetMass is { } target)
        {
            yield return Target(plan.Pack, target);
        }
    }

    private static PlanCheck LongestAllowed(Plan plan, FramePlan frame)
    {
        var longest = StudioInventory.LongestPipe(frame);
        var allowed = FrameDesign.LongestPiece(plan.Kit);
        return new PlanCheck
        {
            Kind = PlanCheckKind.LongestPiece,
            Passed = longest <= allowed,
            Demand = new CheckAmount.Measure(longest),
            Capacity = new CheckAmount.Measure(allowed),
            Ratio = longest / allowed,
            SourceKey = Practice,
            SourceLocator = "longest piece asked for",
            Remedy = longest <= allowed ? null : new CheckRemedy(CheckRemedyKind.Coupling) { Keys = ["frame.longest-piece"] },
        };
    }

    private static PlanCheck LongThing(LongPiece piece) => new()
    {
        Kind = PlanCheckKind.LongThing,
        Parts = [piece.Name, piece.Bag],
        Passed = !piece.SticksOut,
        Demand = new CheckAmount.Measure(piece.Length),
        Capacity = new CheckAmount.LongRoom(piece.LongestInside, piece.Placement),
        Ratio = piece.LongestInside.Meters > 0 ? piece.Length / piece.LongestInside : null,
        SourceKey = "Derived",
        SourceLocator = "rod and sheet in a box; more than a tenth over the bag catches on things",
        Remedy = piece.SticksOut ? new CheckRemedy(CheckRemedyKind.LongerBag) { Keys = ["pack.bags.inside", "frame.longest-piece", "panel.width", "panel.depth"] } : null,
        Caveats = [.. piece.Caveats.Select(caveat => new CheckCaveat.OfLongPiece(caveat))],
    };

    private static PlanCheck Places(PackPlan pack) => new()
    {
        Kind = PlanCheckKind.Places,
        Passed = pack.Misfits.Count == 0,
        Demand = new CheckAmount.HowMany(pack.Items.Count),
        Capacity = new CheckAmount.HowMany(pack.Items.Count - pack.Misfits.Count),
        SourceKey = "Derived",
        SourceLocator = "box inside a box along its sides",
        Findings = [.. pack.Misfits.Select(misfit => new CheckFinding.NoPlace(misfit))],
    };

    private static PlanCheck BagMass(BagLoad bag) => new()
    {
        Kind = PlanCheckKind.BagMass,
        Parts = [bag.Name],
        Passed = bag.Mass <= bag.HighestLoad!.Value,
        Demand = new CheckAmount.Measure(bag.Mass),
        Capacity = new CheckAmount.Measure(bag.HighestLoad.Value),
        Ratio = bag.Mass / bag.HighestLoad.Value,
        SourceKey = Practice,
        SourceLocator = "the bag's own limit",
        Remedy = bag.Mass <= bag.HighestLoad.Value ? null : new CheckRemedy(CheckRemedyKind.LighterBag) { Keys = ["pack.target-mass"] },
    };

    private static PlanCheck BagRoom(Plan plan, BagLoad bag) => new()
    {
        Kind = PlanCheckKind.BagRoom,
        Parts = [bag.Name],
        Passed = bag.VolumeShare <= 1,
        Demand = new CheckAmount.BagFill(bag.VolumeShare, plan.Kit.Pack.PackingFactor),
        Capacity = new CheckAmount.Portion(1),
        Ratio = bag.VolumeShare,
        SourceKey = Practice,
        SourceLocator = "volume of odd sizes in a bag",
        Remedy = bag.VolumeShare <= 1 ? null : new CheckRemedy(CheckRemedyKind.LargerBag) { Keys = ["pack.bags.inside", "pack.target-mass"] },
    };

    private static PlanCheck Burden(Plan plan, PersonLoad person)
    {
        var limit = plan.Kit.Pack.HighestShare;
        return new PlanCheck
        {
            Kind = PlanCheckKind.Burden,
            Parts = [person.Person],
            Passed = person.Share <= limit,
            Demand = new CheckAmount.OnBody(person.Mass, person.Share, person.Band),
            Capacity = new CheckAmount.Portion(limit),
            Ratio = person.Share / limit,
            SourceKey = person.Band == LoadBand.Refused ? "Genitrini2022" : "Simpson2011",
            SourceLocator = "share of body mass: a fifth already changes posture; over two fifths for nobody",
            Remedy = person.Share <= limit ? null : new CheckRemedy(CheckRemedyKind.ShareLoad) { Keys = ["pack.people", "pack.target-mass"] },
        };
    }

    private static PlanCheck Target(PackPlan pack, UnitsNet.Mass target) => new()
    {
        Kind = PlanCheckKind.TargetMass,
        Passed = pack.Total <= target,
        Demand = new CheckAmount.Measure(pack.Total),
        Capacity = new CheckAmount.Measure(target),
        Ratio = pack.Total / target,
        SourceKey = Practice,
        SourceLocator = "the kit's own target",
        Remedy = pack.LeaveAtHome is { } home ? Leave(home) : null,
    };

    private static CheckRemedy Leave(LeaveAtHomePlan home) => home.Left.Count == 0 && home.Lighter.Count == 0
        ? new CheckRemedy(CheckRemedyKind.NothingToLeave)
        : new CheckRemedy(CheckRemedyKind.LeaveAtHome) { Parts = home.Left, Amount = new CheckAmount.HowMany(home.Lost.Count), Home = home };
}
