using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Physics;

namespace StudioKit.Field.Calibration.Drift;

/// <summary>Cards whose sheet is lit by one flash through one thing before it, so that their white margin depends on the same figures.</summary>
/// <param name="Flash">Name of the flash below or behind.</param>
/// <param name="Modifier">Name of its dome, softbox or diffuser; empty where it is bare.</param>
public sealed record LitCards(string Flash, string Modifier)
{
    /// <summary>All cards of a kit that have a white background.</summary>
    /// <param name="kit">The kit.</param>
    public static ValueList<LitCards> Of(KitSpec kit)
    {
        ArgumentNullException.ThrowIfNull(kit);
        return [.. kit.SetUps.SelectMany(setUp => setUp.Lights).Where(light => light.Role.IsBackground()).Select(light => new LitCards(light.Flash, light.Modifier ?? "")).Distinct()];
    }
}
