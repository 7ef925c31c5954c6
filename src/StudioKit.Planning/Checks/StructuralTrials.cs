using StudioKit.Kits;
using StudioKit.Physics.Structure;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning.Changes;
using UnitsNet;

namespace StudioKit.Planning.Checks;

/// <summary>Changes worth trying for a structural check that fails, the least trouble first.</summary>
internal static class StructuralTrials
{
    // Pegs are spread evenly over four feet.
    private const int Feet = 4;
    private const int MostPegs = 16;
    private const double ElbowStep = 5;

    public static IEnumerable<StructuralChange> For(StructuralCheck check, KitSpec kit) => check.Kind switch
    {
        StructuralCheckKind.PanelSag or StructuralCheckKind.PanelStress or StructuralCheckKind.PanelStressUnderElbow => Sheets(kit),
        StructuralCheckKind.SweepBentCold => Sweeps(check),
        StructuralCheckKind.SheetGrowth => check.Remedy?.Size is { } room ? [new StructuralChange.EdgeRoom(room)] : [],
        StructuralCheckKind.RailSag or StructuralCheckKind.RailStress => Pipes(kit),
        StructuralCheckKind.LegBuckling or StructuralCheckKind.Sway => [.. Stretchers(kit), .. Guys(kit), .. Pipes(kit)],
        StructuralCheckKind.Cords => Pegs(kit),
        StructuralCheckKind.PipeWarmth => [new StructuralChange.Shaded(), .. Pipes(kit)],
        StructuralCheckKind.Tipping or StructuralCheckKind.Sliding => Ballast(check),
        _ => throw new ArgumentOutOfRangeException(nameof(check), check.Kind, "Not a structural check that a plan knows."),
    };

    /// <summary>Lighter pushes of an elbow, the hardest first, for a check on which one bears; nothing is bought for them, but the hand is held back.</summary>
    public static IReadOnlyList<StructuralChange> Pushes(StructuralCheck check, KitSpec kit) =>
        check.Kind is StructuralCheckKind.PanelStressUnderElbow or StructuralCheckKind.RailStress or StructuralCheckKind.LegBuckling ? [.. Elbows(kit)] : [];

    private static IEnumerable<StructuralChange> Sheets(KitSpec kit) =>
        (kit.Frame.PanelRests == PanelRests.AllEdges ? [] : new StructuralChange[] { new StructuralChange.AllEdgesRest() })
        .Concat(SoldThickness.Over(kit.Panel.Thickness).Select(thickness => new StructuralChange.OtherSheet(thickness)));

    // Rounded up to whole centimetres, as a curve is drawn.
    private static IEnumerable<StructuralChange> Sweeps(StructuralCheck check) => check.Remedy?.Size is { } radius
        ? [new StructuralChange.OtherSweep(WholeLengths.UpToCentimetre(radius))]
        : [];

    private static IEnumerable<StructuralChange> Pipes(KitSpec kit) => StockedPipe.Embedded
        .Where(stocked => stocked.Pipe != kit.Frame.Pipe && stocked.Pipe.OutsideDiameter >= kit.Frame.Pipe.OutsideDiameter)
        .OrderBy(stocked => PipeMass.PerMetre(Studio.Frames.FrameDesign.PipeOf(stocked.Pipe)))
        .Select(stocked => new StructuralChange.OtherPipe(stocked));

    private static IEnumerable<StructuralChange> Stretchers(KitSpec kit) =>
        kit.Frame.Stretchers == FrameStretchers.Always ? [] : [new StructuralChange.Stretched()];

    private static IEnumerable<StructuralChange> Guys(KitSpec kit) => kit.Frame.Pegs.Guys || kit.Frame.Pegs.Hold <= Mass.Zero
        ? []
        : PegCounts(Math.Max(Feet, kit.Frame.Pegs.Count)).Select(pegs => new StructuralChange.WithGuys(pegs));

    private static IEnumerable<StructuralChange> Pegs(KitSpec kit) => PegCounts(kit.Frame.Pegs.Count + 1).Select(pegs => new StructuralChange.Pegged(pegs));

    private static IEnumerable<int> PegCounts(int least) => Enumerable.Range(1, MostPegs / Feet).Select(each => each * Feet).Where(count => count >= least);

    private static IEnumerable<StructuralChange> Ballast(StructuralCheck check) => check.Remedy?.Ballast is { } need
        ? [new StructuralChange.Weighted(need.Hung + need.UnderMiddle)]
        : [];

    private static IEnumerable<StructuralChange> Elbows(KitSpec kit)
    {
        var steps = (int)Math.Ceiling((kit.Panel.ElbowLoad.Newtons / ElbowStep) - 1e-9);
        return Enumerable.Range(1, Math.Max(0, steps)).Select(step => new StructuralChange.LighterElbow(Force.FromNewtons(ElbowStep * (steps - step))));
    }
}
