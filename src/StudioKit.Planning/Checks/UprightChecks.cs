using StudioKit.Physics.Light;
using UnitsNet;

namespace StudioKit.Planning.Checks;

/// <summary>Whether the sheets that stand behind subjects fill the frames, and are lit from behind.</summary>
internal static class UprightChecks
{
    private const string Frustum = "camera's frustum cut with the sheet's plane, over all framings and pitches";

    // What no saw holds to.
    private static readonly Length Cut = Length.FromMillimeters(0.01);

    /// <summary>Size, ground and flashes of every upright sheet that a set-up uses.</summary>
    public static IEnumerable<PlanCheck> Of(Plan plan) => plan.Uprights.SelectMany(upright => new[]
    {
        Size(upright), Ground(upright), Flash(upright, [.. plan.UprightLights.Where(light => light.Upright == upright.Name)]),
    });

    private static PlanCheck Size(UprightPlan upright)
    {
        var enough = upright.Width >= upright.RequiredWidth - Cut && upright.Height >= upright.RequiredHeight - Cut;
        var required = new CheckAmount.TwoSides(upright.RequiredWidth, upright.RequiredHeight);
        return new PlanCheck
        {
            Kind = PlanCheckKind.UprightSize,
            Parts = [upright.Name],
            Passed = enough,
            Demand = required,
            Capacity = new CheckAmount.TwoSides(upright.Width, upright.Height),
            Ratio = Math.Max(ShareOf(upright.RequiredWidth, upright.Width), ShareOf(upright.RequiredHeight, upright.Height)),
            SourceKey = "Derived",
            SourceLocator = Frustum,
            Remedy = enough ? null : new CheckRemedy(CheckRemedyKind.LargerUpright)
            {
                Amount = required,
                Parts = [upright.Name, .. upright.Places.Select(place => place.SetUp)],
                Keys = ["uprights.width", "uprights.height", "set-ups.background-distance"],
            },
        };
    }

    // Nothing is asked of a sheet that no framing looks at.
    private static double ShareOf(Length required, Length given) => required > Length.Zero ? required / given : 0;

    private static PlanCheck Ground(UprightPlan upright) => new()
    {
        Kind = PlanCheckKind.UprightGround,
        Parts = [upright.Name],
        Passed = upright.SeenUnder.Count == 0,
        SourceKey = "Derived",
        SourceLocator = Frustum,
        Findings = [.. upright.SeenUnder.Select(gap => new CheckFinding.OfGap(gap))],
        Remedy = upright.SeenUnder.Count == 0 ? null : new CheckRemedy(CheckRemedyKind.LevelCamera)
        {
            Parts = [upright.Name, .. upright.SeenUnder.Select(gap => gap.SetUp).Distinct(StringComparer.Ordinal)],
            Keys = ["set-ups.camera-pitch", "set-ups.background-distance", "uprights.over-ground"],
        },
    };

    private static PlanCheck Flash(UprightPlan upright, IReadOnlyList<UprightLightPlan> lights)
    {
        List<CheckFinding.OfUpright> findings = [.. lights.SelectMany(light => light.Problems.Select(problem => new CheckFinding.OfUpright(light.SetUp, light.FlashOf(problem), problem)))];
        return new PlanCheck
        {
            Kind = PlanCheckKind.FlashBehind,
            Parts = [upright.Name],
            Passed = findings.Count == 0,
            SourceKey = "Derived",
            SourceLocator = "geometry of the sheet and the ground",
            Findings = [.. findings],
            Remedy = (from light in lights
                      from problem in light.Problems
                      where problem is { Kind: LightProblemKind.InsideFloor, Flash: not null }
                      select Raised(light, problem.Flash!.Value - 1)).FirstOrDefault(),
        };
    }

    // Up until its window clears the ground however it is tilted then, and not onto it: what fits exactly may miss by rounding.
    private static CheckRemedy Raised(UprightLightPlan light, int flash)
    {
        var missing = (light.Sheet.Flashes[flash].WindowHeight / 2) - light.Flashes[flash].OverGround;
        return new(CheckRemedyKind.RaiseFlashBehind)
        {
            Amount = new CheckAmount.Measure(WholeLengths.BeyondMillimetre(missing)),
            Parts = [light.Flashes[flash].Flash, light.SetUp],
            Keys = ["set-ups.lights.offset-up", "set-ups.height-over-ground"],
        };
    }
}
