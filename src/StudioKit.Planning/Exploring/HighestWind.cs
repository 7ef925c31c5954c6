using StudioKit.Physics.Structure;
using StudioKit.Planning.Studio.Frames;
using UnitsNet;

namespace StudioKit.Planning.Exploring;

/// <summary>The highest mean wind of the site in which all that is built stands.</summary>
internal static class HighestWind
{
    private const double StepMetersPerSecond = 0.1;
    private const int Steps = 400;

    /// <summary>The wind, by the checks of the plan itself, rounded down to a tenth of a metre a second; none where nothing is built.</summary>
    /// <remarks>Nothing that a wind does grows less in a stronger one, so the last that all checks pass in is found by halving.</remarks>
    public static Speed? Of(Plan plan)
    {
        var uprights = plan.Workshop?.Uprights.Select(upright => upright.HighestMean).ToList() ?? [];
        var winds = plan.Frame is { } frame ? uprights.Prepend(OfFrame(plan, frame)).ToList() : uprights;
        return winds.Count == 0 ? null : winds.Min();
    }

    private static Speed OfFrame(Plan plan, FramePlan frame)
    {
        var sail = FrameSails.Of(frame.Workshop.Uprights);
        var (stands, falls) = (0, Steps + 1);
        while (falls - stands > 1)
        {
            var middle = (stands + falls) / 2;
            (stands, falls) = Stands(Speed.FromMetersPerSecond(middle * StepMetersPerSecond)) ? (middle, falls) : (stands, middle);
        }

        return Speed.FromMetersPerSecond(stands * StepMetersPerSecond);

        bool Stands(Speed wind)
        {
            var kit = plan.Kit with { Site = plan.Kit.Site with { Wind = wind } };
            return StudioChecks.All(FrameLoads.WithSail(FrameLoads.CaseOf(kit, plan.Panel, frame.Geometry, frame.StandingMass), kit, plan.Panel, sail)).All(check => check.Holds);
        }
    }
}
