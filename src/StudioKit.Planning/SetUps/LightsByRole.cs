using StudioKit.Kits.SetUps;

namespace StudioKit.Planning.SetUps;

/// <summary>The lights of a set-up by what they do.</summary>
internal static class LightsByRole
{
    /// <summary>Every light of one role, in the kit's order.</summary>
    public static IEnumerable<LightSpec> LightsOf(this SetUpSpec setUp, LightRole role) => setUp.Lights.Where(light => light.Role == role);
}
