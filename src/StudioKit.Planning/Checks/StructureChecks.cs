using StudioKit.Physics.Structure;
using StudioKit.Planning.Frames;
using UnitsNet;

namespace StudioKit.Planning.Checks;

/// <summary>Whether panel and frame bear what is asked of them on the site.</summary>
internal static class StructureChecks
{
    // Subjects weigh little; the box that holds one counts for more (common practice, no source).
    private static readonly Mass SubjectInItsBox = Mass.FromGrams(200);

    // What a bare head with its cells weighs where the kit does not say (common practice, no source).
    private static readonly Mass UsualFlash = Mass.FromGrams(450);

    /// <summary>Every structural check of a plan with a frame.</summary>
    public static IEnumerable<PlanCheck> Of(Plan plan, FramePlan frame) =>
        StudioChecks.All(CaseOf(plan, frame)).Select(check => new PlanCheck
        {
            Name = check.Name,
            Passed = check.Holds,
            Demand = Amount(check.Demand),
            Capacity = Amount(check.Capacity),
            Ratio = check.Ratio,
            SourceKey = check.SourceKey,
            SourceLocator = check.Locator,
            Remedy = check.Mend,
            Caveats = check.Caveats,
        });

    private static StudioCheckCase CaseOf(Plan plan, FramePlan frame) => new()
    {
        Frame = frame.Geometry,
        Pipe = FramePlanner.PipeOf(plan.Kit.Frame.Pipe),
        Sheet = new Sheet
        {
            Thickness = plan.Panel.Thickness,
            Density = plan.Kit.Panel.Density,
            YoungsModulus = plan.Kit.Panel.YoungsModulus,
            PoissonRatio = plan.Kit.Panel.PoissonRatio,
            LongTermStress = plan.Kit.Panel.LongTermStress,
            ThermalExpansion = plan.Kit.Panel.ThermalExpansion,
            ColdBendRatio = plan.Kit.Panel.ColdBendRatio,
        },
        PanelWidth = plan.Panel.Width,
        PanelDepth = plan.Panel.Depth - plan.Panel.SweptLength,
        SweepRadius = plan.Panel.SweepRadius,
        StandingMass = frame.Mass + plan.Panel.Mass + (frame.Geometry.Cradle is null ? Mass.Zero : UsualFlash),
        Gust = plan.Kit.Site.Wind,
        Air = plan.Kit.Site.Temperature,
        Subject = SubjectInItsBox,
        SkirtHeight = plan.Kit.Panel.Skirts ? plan.Kit.Frame.Height : Length.Zero,
    };

    private static string Amount(IQuantity amount) => amount switch
    {
        Length length => PlanFormat.Millimetres(length),
        Pressure pressure => $"{PlanFormat.ThreeDigits(pressure.Megapascals)} MPa",
        Force force => $"{PlanFormat.ThreeDigits(force.Newtons)} N",
        Mass mass => PlanFormat.Mass(mass),
        Speed speed => $"{PlanFormat.ThreeDigits(speed.MetersPerSecond)} m/s",
        Torque torque => $"{PlanFormat.ThreeDigits(torque.NewtonMeters)} N·m",
        Temperature temperature => $"{PlanFormat.ThreeDigits(temperature.DegreesCelsius)} °C",
        Ratio ratio => PlanFormat.ThreeDigits(ratio.DecimalFractions),
        _ => amount.ToString(System.Globalization.CultureInfo.InvariantCulture),
    };
}
