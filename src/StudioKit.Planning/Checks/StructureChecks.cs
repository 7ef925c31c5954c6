using StudioKit.Physics.Structure;
using StudioKit.Planning.Frames;
using UnitsNet;

namespace StudioKit.Planning.Checks;

/// <summary>Whether panel and frame bear what is asked of them on the site.</summary>
internal static class StructureChecks
{
    /// <summary>Every structural check of a plan with a frame.</summary>
    public static IEnumerable<PlanCheck> Of(Plan plan, FramePlan frame) =>
        StudioChecks.All(FrameLoads.CaseOf(plan.Kit, plan.Panel, frame.Geometry, frame.StandingMass)).Select(check => new PlanCheck
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
