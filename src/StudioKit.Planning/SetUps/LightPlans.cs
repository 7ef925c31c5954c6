using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Flashes;
using StudioKit.Physics.Exposure.SetUps;
using StudioKit.Physics.Packing;
using StudioKit.Planning.Studio.Lights;

namespace StudioKit.Planning.SetUps;

/// <summary>What the plan says of the flashes of an exposure.</summary>
internal static class LightPlans
{
    /// <summary>The flashes that were solved for, and those that fire along at the power of the first.</summary>
    public static IReadOnlyList<LightPlan> Of(SetUpAtFraming at, SetUpResult result)
    {
        var specs = at.Planner.InOrder(at.SetUp);
        return [
            .. result.Lights.Select((solution, place) => LightOf(at, specs[place], solution)),
            .. at.Planner.Alongside(at.SetUp).Select(light => Beside(at, light, result.Lights[specs.TakeWhile(spec => spec.Role != light.Role).Count()])),
        ];
    }

    /// <summary>What the reader must know of the flashes and of their part in the set-up.</summary>
    public static IEnumerable<string> Caveats(SetUpAtFraming at)
    {
        var used = at.Planner.InOrder(at.SetUp).Concat(at.Planner.Alongside(at.SetUp)).ToList();
        return at.SetUp.Lights.SelectMany(light => LightingCases.Caveats(at.Kit, light))
            .Concat(at.SetUp.Lights
                .Where(light => !used.Contains(light))
                .Select(light => $"{light.Flash}: a light of this role has no part in this way of lighting and is left out."))
            .Concat(at.Planner.Alongside(at.SetUp).Any() ? ["All flashes of one sheet fire at the same power; the light map counts them all."] : [])
            .Distinct(StringComparer.Ordinal);
    }

    private static LightPlan Beside(SetUpAtFraming at, LightSpec light, LightSolution first)
    {
        var flash = at.Flash(light);
        var sameLight = DialMark.NotUnder(first.Power.Power, flash.PowerStep).Power;
        var set = flash with { Power = sameLight.Fraction > flash.LowestPower.Fraction ? sameLight : flash.LowestPower };
        return LightOf(at, light, first with
        {
            Flash = set,
            Power = first.Power with { Mark = set.Mark },
            Panel = first.Panel! with { Flash = set },
        });
    }

    private static LightPlan LightOf(SetUpAtFraming at, LightSpec light, LightSolution solution)
    {
        var flash = LightingCases.FlashOf(at.Kit, light);
        return new LightPlan
        {
            Flash = solution.Flash.Name,
            Role = light.Role,
            Modifier = light.Modifier,
            Holder = at.Kit.Holders.FirstOrDefault(holder => holder.Name == light.Holder && holder.IsCarried)?.Name,
            Zoom = solution.Flash.Zoom,
            GuideNumber = solution.Flash.GuideNumber,
            Beam = LightingCases.Measured(at.Kit, light),
            ZoomDoubt = solution.Flash.ZoomDoubt,
            GuideNumberUncertainty = at.Known.Of(at.SetUp, light).GuideNumber,
            Distance = solution.Flash.Distance,
            Place = at.SetUp.Lights.TakeWhile(other => !ReferenceEquals(other, light)).Count(),
            Power = solution.Power.Power,
            PowerStep = flash.PowerStep,
            ExactPower = solution.Power.ExactStops,
            Metered = MeteredFlashes.Of(at, light, solution),
            FiredBy = Firings.Of(at.Kit, at.SetUp, light),
            CoverLoss = solution.Flash.CoverLoss,
            LensLoss = solution.Flash.LensLoss,
            Budget = solution.Budget,
            FlashDuration = solution.FlashDuration,
            RecycleTime = solution.RecycleTime,
            FlashesCarried = FlashBudget.For(0, FlashEnergy.ShareOfCells(solution.Power.Power), flash.FullPowerFlashes, 1 + flash.SpareSets).FlashesCarried,
        };
    }
}
