using StudioKit.Kits.SetUps;
using StudioKit.Physics;
using StudioKit.Physics.Light;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning.Changes;
using StudioKit.Planning.Checks;
using UnitsNet;

namespace StudioKit.Planning.Mending;

/// <summary>Flashes moved, aimed, zoomed and set so that cards hold.</summary>
internal static class LightMends
{
    /// <summary>What the advice of the first exposure that does not work says; where all work, of the first at the edge.</summary>
    public static IEnumerable<ValueList<KitChange>> Exposed(PlanCheck check, Plan plan)
    {
        var exposures = check.Findings.OfType<CheckFinding.OfExposure>().Select(finding => finding.Exposure).ToList();
        var first = exposures.Find(exposure => !exposure.IsUsable) ?? exposures.FirstOrDefault();
        return first is null ? [] : plan.Advice.Mending(first).Where(advice => advice.Changes.Count > 0).Select(advice => advice.Changes);
    }

    /// <summary>The zoom nearest to the one in use for which the guide number is known.</summary>
    public static IEnumerable<ValueList<KitChange>> KnownZoom(PlanCheck check, Plan plan)
    {
        var flash = plan.Kit.Flashes.First(one => one.Name == check.Parts[0]);
        return check.Capacity is not CheckAmount.KnownTo used ? [] : flash.Zooms.Prepend(flash.GuideNumber).Select(number => number.Zoom).OfType<Length>()
            .OrderBy(zoom => Math.Abs(Math.Log(zoom / used.Zoom)))
            .Select(zoom => (ValueList<KitChange>)[new KitChange.Zoom(flash.Name, zoom)]);
    }

    /// <summary>A flash below, moved by as much as it stands wrong.</summary>
    public static IEnumerable<ValueList<KitChange>> FlashPlaced(PlanCheck check, Plan plan) =>
        check.Findings.OfType<CheckFinding.OfLight>().Select(finding => Placed(finding, plan)).FirstOrDefault(moves => moves.Count > 0) ?? [];

    /// <summary>The moves that a frame proposes for a flash that it does not carry, made in each of its set-ups.</summary>
    public static IEnumerable<ValueList<KitChange>> Carried(PlanCheck check, Plan plan) => check.Remedy?.Amount is not CheckAmount.NearestMoves moves
        ? []
        : moves.Choices.Select(move => move.Kind == CradleMoveKind.RaisePanel
            ? (ValueList<KitChange>)[new KitChange.FrameHeight(plan.Kit.Frame.Height + move.By)]
            : [.. Below(plan, check.Parts[0]).Where(light => check.Parts.Skip(1).Contains(light.SetUp.Name)).Select(light => Moved(light, move))]);

    private static IReadOnlyList<ValueList<KitChange>> Placed(CheckFinding.OfLight finding, Plan plan)
    {
        if (Below(plan, finding.Flash).Where(light => light.SetUp.Name == finding.SetUp).Cast<Standing?>().FirstOrDefault() is not { } light)
        {
            return [];
        }

        return finding.Problem switch
        {
            { Kind: LightProblemKind.InsideFloor, By: { } by } => [[Distance(light, -WholeLengths.BeyondMillimetre(by))], [new KitChange.FrameHeight(plan.Kit.Frame.Height + WholeLengths.BeyondMillimetre(by))]],
            { Kind: LightProblemKind.AboveSheet, By: { } by } => [[Distance(light, WholeLengths.BeyondMillimetre(by))], [Upright(light)]],
            { Kind: LightProblemKind.OutsideSkirts, By: { } by } => [[Inwards(light, WholeLengths.BeyondMillimetre(by), isAcross: true)], [Inwards(light, WholeLengths.BeyondMillimetre(by), isAcross: false)]],
            { Kind: LightProblemKind.AimedAway } => [[Upright(light)]],
            _ => [],
        };
    }

    private static IEnumerable<Standing> Below(Plan plan, string? flash) =>
        from setUp in PlanStages.OnPanel(plan.Kit)
        from light in setUp.Lights.Select((light, place) => new Standing(setUp, light, place))
        where light.Light.Role == LightRole.Below && (flash is null || light.Light.Flash == flash)
        select light;

    private static KitChange.Move Distance(Standing light, Length by) => new(light.SetUp.Name, light.Place, light.Light.Distance + by);

    private static KitChange.Upright Upright(Standing light) => new(light.SetUp.Name, light.Place);

    private static KitChange.Shift Inwards(Standing light, Length by, bool isAcross)
    {
        var offset = isAcross ? light.Light.OffsetRight : light.Light.OffsetBack;
        var moved = offset - (Math.Sign(offset.Meters) * UnitMath.Min(by, offset.Meters < 0 ? -offset : offset));
        return new KitChange.Shift(light.SetUp.Name, light.Place, isAcross ? moved : null, isAcross ? null : moved);
    }

    private static KitChange Moved(Standing light, CradleMove move) => move.Kind switch
    {
        CradleMoveKind.Up => Distance(light, -move.By),
        CradleMoveKind.Down => Distance(light, move.By),
        CradleMoveKind.Left => new KitChange.Shift(light.SetUp.Name, light.Place, light.Light.OffsetRight - move.By, null),
        CradleMoveKind.Right => new KitChange.Shift(light.SetUp.Name, light.Place, light.Light.OffsetRight + move.By, null),
        CradleMoveKind.Front => new KitChange.Shift(light.SetUp.Name, light.Place, null, light.Light.OffsetBack - move.By),
        CradleMoveKind.Back => new KitChange.Shift(light.SetUp.Name, light.Place, null, light.Light.OffsetBack + move.By),
        _ => throw new ArgumentOutOfRangeException(nameof(move), move.Kind, "Not a move of a flash."),
    };

    private readonly record struct Standing(SetUpSpec SetUp, LightSpec Light, int Place);
}
