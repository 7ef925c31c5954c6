namespace StudioKit.Kits.SetUps;

/// <summary>What the roles of lights have in common.</summary>
public static class LightRoles
{
    /// <summary>Whether a light of that role burns a sheet out to white, and does not shine on the subject.</summary>
    /// <param name="role">The role.</param>
    public static bool IsBackground(this LightRole role) => role is LightRole.Below or LightRole.Behind;

    /// <summary>Every light of one role, in the kit's order.</summary>
    /// <param name="setUp">The set-up.</param>
    /// <param name="role">The role.</param>
    /// <exception cref="ArgumentNullException">There is no set-up.</exception>
    public static IEnumerable<LightSpec> LightsOf(this SetUpSpec setUp, LightRole role)
    {
        ArgumentNullException.ThrowIfNull(setUp);
        return setUp.Lights.Where(light => light.Role == role);
    }
}
