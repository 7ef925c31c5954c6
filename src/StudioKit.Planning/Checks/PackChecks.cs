using StudioKit.Physics.Packing;
using StudioKit.Planning.Frames;
using StudioKit.Planning.Packing;

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

        foreach (var check in plan.Pack.LongPieces.Select(LongPiece)
            .Concat(plan.Pack.Bags.Count > 0 ? [Places(plan.Pack)] : [])
            .Concat(plan.Pack.Bags.Where(bag => bag.HighestLoad is not null).Select(Load))
            .Concat(plan.Pack.Bags.Select(bag => Room(plan, bag)))
            .Concat(plan.Pack.People.Select(person => Share(plan, person))))
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
            Name = "Longest piece of the frame",
            Passed = longest <= allowed,
            Demand = PlanFormat.Millimetres(longest),
            Capacity = PlanFormat.Millimetres(allowed),
            Ratio = longest / allowed,
            SourceKey = Practice,
            SourceLocator = "longest piece asked for",
            Remedy = longest <= allowed ? "" : "Split the longest pieces with a coupling.",
        };
    }

    private static PlanCheck LongPiece(LongPiece piece) => new()
    {
        Name = $"{char.ToUpperInvariant(piece.Name[0])}{piece.Name[1..]} on {piece.Bag}",
        Passed = !piece.SticksOut,
        Demand = PlanFormat.Millimetres(piece.Length),
        Capacity = piece.Placement switch
        {
            LongItemPlacement.AlongBag => $"inside, up to {PlanFormat.Millimetres(piece.LongestInside)}",
            LongItemPlacement.CornerToCorner => $"inside corner to corner, up to {PlanFormat.Millimetres(piece.LongestInside)}",
            _ => $"strapped outside, inside only up to {PlanFormat.Millimetres(piece.LongestInside)}",
        },
        Ratio = piece.LongestInside.Meters > 0 ? piece.Length / piece.LongestInside : null,
        SourceKey = "Derived",
        SourceLocator = "rod and sheet in a box; more than a tenth over the bag catches on things",
        Remedy = piece.SticksOut ? "A longer bag, a coupling in the pipe, or a smaller panel." : "",
        Caveats = piece.Caveats,
    };

    private static PlanCheck Places(PackPlan pack) => new()
    {
        Name = "Everything has its place",
        Passed = pack.Misfits.Count == 0,
        Demand = $"{pack.Items.Count} lines",
        Capacity = $"{pack.Items.Count - pack.Misfits.Count} in or on a bag",
        SourceKey = "Derived",
        SourceLocator = "box inside a box along its sides",
        Remedy = string.Join(" ", pack.Misfits),
    };

    private static PlanCheck Load(BagLoad bag) => new()
    {
        Name = $"Load of {bag.Name}",
        Passed = bag.Mass <= bag.HighestLoad!.Value,
        Demand = PlanFormat.Mass(bag.Mass),
        Capacity = PlanFormat.Mass(bag.HighestLoad.Value),
        Ratio = bag.Mass / bag.HighestLoad.Value,
        SourceKey = Practice,
        SourceLocator = "the bag's own limit",
        Remedy = bag.Mass <= bag.HighestLoad.Value ? "" : "No way to share things out is lighter on it: leave some at home ('target-mass:' says which).",
    };

    private static PlanCheck Room(Plan plan, BagLoad bag) => new()
    {
        Name = $"Room in {bag.Name}",
        Passed = bag.VolumeShare <= 1,
        Demand = $"{PlanFormat.Percent(Math.Round(bag.VolumeShare, 2))} of the usable volume",
        Capacity = "100 %",
        Ratio = bag.VolumeShare,
        SourceKey = Practice,
        SourceLocator = $"things of odd sizes fill {PlanFormat.Percent(plan.Kit.Pack.PackingFactor)} of a bag",
        Remedy = bag.VolumeShare <= 1 ? "" : "A larger bag, or leave things at home.",
    };

    private static PlanCheck Share(Plan plan, PersonLoad person)
    {
        var limit = plan.Kit.Pack.HighestShare;
        return new PlanCheck
        {
            Name = $"Load on {person.Person}",
            Passed = person.Share <= limit,
            Demand = $"{PlanFormat.Mass(person.Mass)}, {PlanFormat.Percent(Math.Round(person.Share, 3))} of body mass, {Words(person.Band)}",
            Capacity = PlanFormat.Percent(limit),
            Ratio = person.Share / limit,
            SourceKey = person.Band == LoadBand.Refused ? "Genitrini2022" : "Simpson2011",
            SourceLocator = "share of body mass: a fifth already changes posture; over two fifths for nobody",
            Remedy = person.Share <= limit ? "" : "Share the load with more people, or leave things at home ('target-mass:' says which).",
        };
    }

    private static string Words(LoadBand band) => band switch
    {
        LoadBand.Comfortable => "comfortable",
        LoadBand.Demanding => "demanding",
        LoadBand.TooHeavy => "too heavy",
        _ => "not to be carried",
    };

    private static PlanCheck Target(PackPlan pack, UnitsNet.Mass target) => new()
    {
        Name = "Mass asked for",
        Passed = pack.Total <= target,
        Demand = PlanFormat.Mass(pack.Total),
        Capacity = PlanFormat.Mass(target),
        Ratio = pack.Total / target,
        SourceKey = Practice,
        SourceLocator = "the kit's own target",
        Remedy = pack.LeaveAtHome is { } home ? HomeRemedy(home) : "",
    };

    private static string HomeRemedy(LeaveAtHomePlan home) => home.Left.Count == 0
        ? "Nothing in the kit can stay at home."
        : $"Leave at home: {string.Join(", ", home.Left)}; that loses {home.Lost.Count} of the set-ups at framings.";
}
