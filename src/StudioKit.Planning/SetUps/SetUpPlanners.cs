using StudioKit.Kits.SetUps;
using StudioKit.Planning.SetUps.DarkBackground;
using StudioKit.Planning.SetUps.DaylightFill;
using StudioKit.Planning.SetUps.LowLightFill;
using StudioKit.Planning.SetUps.WhiteBackground;

namespace StudioKit.Planning.SetUps;

/// <summary>The ways of lighting there are, a line each; nothing else asks which kind a set-up is.</summary>
internal static class SetUpPlanners
{
    private static readonly Dictionary<SetUpKind, SetUpPlanner> All = new()
    {
        [SetUpKind.WhiteBackground] = new WhiteBackgroundPlanner(LightRole.Below),
        [SetUpKind.DaylightFill] = new DaylightFillPlanner(),
        [SetUpKind.LowLightFill] = new LowLightFillPlanner(),
        [SetUpKind.DarkBackground] = new DarkBackgroundPlanner(),
    };

    private static readonly WhiteBackgroundPlanner Upright = new(LightRole.Behind);
    private static readonly WhiteBackgroundPlanner Level = new(LightRole.Below, LightRole.Behind);

    /// <summary>The way of lighting of a set-up.</summary>
    public static SetUpPlanner Of(SetUpSpec setUp) => setUp.Upright is null ? All[setUp.Kind] : setUp.IsBeforeUpright ? Upright : Level;
}
