using StudioKit.Kits;
using StudioKit.Kits.Lighting;
using StudioKit.Physics.Exposure.Flashes;
using StudioKit.Physics.Packing;

namespace StudioKit.Planning.Session;

/// <summary>Blocks of a session → what the day asks of each flash: the first round of each block and the following ones.</summary>
internal static class FlashUses
{
    /// <summary>One for each flash that is fired.</summary>
    public static IReadOnlyList<FlashUse> Of(KitSpec kit, IReadOnlyList<SessionBlock> blocks, IReadOnlyList<ExposurePlan> exposures)
    {
        var fired = from counted in blocks.SelectMany(block => block.Counted)
                    where counted.Step.Frames * counted.Times > 0
                    from light in exposures.First(exposure => exposure.SetUp == counted.Step.SetUp && exposure.Framing.Name == counted.Step.Framing).Lights
                    group (counted.Step.Frames * counted.Times, FlashEnergy.ShareOfCells(light.Power)) by light.Flash;
        return [.. fired.Select(of => UseOf(kit.Flashes.First(flash => flash.Name == of.Key), [.. of]))];
    }

    private static FlashUse UseOf(FlashSpec flash, IReadOnlyList<(int Frames, double Share)> fired)
    {
        var frames = fired.Sum(step => step.Frames);
        var meanShare = Math.Min(1, fired.Sum(step => step.Frames * step.Share) / frames);
        var sets = 1 + flash.SpareSets;
        var budget = FlashBudget.For(frames, meanShare, flash.FullPowerFlashes, sets);
        return new FlashUse
        {
            Flash = flash.Name,
            Flashes = frames,
            FullPowerFlashes = budget.FullPowerFlashes,
            SetsNeeded = budget.SetsNeeded,
            SetsCarried = sets,
            CellsPerSet = flash.Cell is null ? 0 : flash.CellCount,
            FlashesCarried = budget.FlashesCarried,
            Enough = budget.Enough,
        };
    }
}
