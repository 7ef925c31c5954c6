using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;

namespace StudioKit.Planning.SetUps;

/// <summary>How much the fill gives.</summary>
internal static class FillLevels
{
    // Less of a fill is not seen (common practice, no source).
    private static readonly Stops Least = new(-4);

    /// <summary>Ambient light on the subject against the background's; none where it was not metered apart.</summary>
    public static Stops? ShadeOf(SetUpSpec setUp) =>
        setUp is { SubjectAmbient: { } subject, Ambient: { } background } ? new Stops(subject.AtIso100 - background.AtIso100) : null;

    /// <summary>Level against correct exposure: the set-up's own; where the subject is metered apart, what its own light lacks once the background is exposed; else the usual.</summary>
    /// <param name="setUp">The set-up.</param>
    /// <param name="sheltered">Stops that the subject loses by what is put up over it, and its background does not.</param>
    public static Stops Of(SetUpSpec setUp, Stops sheltered) => setUp.FillLevel
        ?? (ShadeOf(setUp) is { } shade ? CombinedLight.Missing(shade - sheltered, Least)
            : sheltered.Value > 0 ? CombinedLight.Missing(-sheltered, Least)
            : SetUpSpec.UsualFill);
}
