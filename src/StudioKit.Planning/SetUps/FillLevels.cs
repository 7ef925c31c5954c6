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
    public static Stops Of(SetUpSpec setUp) => setUp.FillLevel ?? (ShadeOf(setUp) is { } shade ? CombinedLight.Missing(shade, Least) : SetUpSpec.UsualFill);
}
