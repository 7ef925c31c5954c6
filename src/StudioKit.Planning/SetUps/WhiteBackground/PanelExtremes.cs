using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;

namespace StudioKit.Planning.SetUps.WhiteBackground;

/// <summary>Darkest and brightest visible point of the panel, against the point straight above a bare flash.</summary>
/// <param name="Darkest">Stops of the darkest point; negative under that point.</param>
/// <param name="Brightest">Stops of the brightest point.</param>
internal sealed record PanelExtremes(Stops Darkest, Stops Brightest)
{
    /// <summary>Extremes over all camera angles of a framing; none where the geometry is impossible or none sees the panel.</summary>
    public static PanelExtremes? Of(SetUpAtFraming at)
    {
        var straightAbove = WhiteMargin.Level(StraightAbove(at));
        var seen = at.Light!.Seen(at.SetUp, at.Framing, at.Camera).Select(view => view.Margins).Where(margins => margins.Darkest is not null).ToList();
        return seen.Count == 0
            ? null
            : new PanelExtremes(
                new Stops(seen.Min(margins => margins.Darkest!.Margin.Value) - straightAbove.Value),
                new Stops(seen.Max(margins => margins.Brightest!.Margin.Value) - straightAbove.Value));
    }

    // The flash below at full power, seen by the camera, before fall-off over the panel is known.
    private static WhiteMarginCase StraightAbove(SetUpAtFraming at) => new()
    {
        Flash = at.Flash(at.SetUp.LightsOf(LightRole.Below).First()),
        Camera = at.Camera,
        Transmittance = at.Kit.Panel.Transmittance,
    };
}
