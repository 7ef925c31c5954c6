using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light.Views;

namespace StudioKit.Planning.SetUps.WhiteBackground;

/// <summary>Darkest and brightest visible point of a sheet, against the point straight before a bare flash.</summary>
/// <param name="Darkest">Stops of the darkest point; negative under that point.</param>
/// <param name="Brightest">Stops of the brightest point.</param>
internal sealed record PanelExtremes(Stops Darkest, Stops Brightest)
{
    /// <summary>Extremes over all camera angles of a framing; none where the geometry is impossible or none sees the sheet.</summary>
    public static PanelExtremes? Of(SetUpAtFraming at, LightRole role)
    {
        var straight = WhiteMargin.Level(StraightBefore(at, role));
        var seen = Views(at, role).Where(margins => margins.Darkest is not null).ToList();
        return seen.Count == 0
            ? null
            : new PanelExtremes(
                new Stops(seen.Min(margins => margins.Darkest!.Margin.Value) - straight.Value),
                new Stops(seen.Max(margins => margins.Brightest!.Margin.Value) - straight.Value));
    }

    /// <summary>The sheet that the flashes of a role shine through.</summary>
    public static double TransmittanceOf(SetUpAtFraming at, LightRole role) =>
        role == LightRole.Behind && at.Kit.UprightOf(at.SetUp) is { } upright ? upright.Sheet.Transmittance : at.Kit.Panel.Transmittance;

    private static IEnumerable<WhiteMarginMap> Views(SetUpAtFraming at, LightRole role) =>
        (role == LightRole.Behind ? at.Light!.SeenUpright(at.SetUp, at.Framing, at.Camera) : at.Light!.Seen(at.SetUp, at.Framing, at.Camera)).Select(view => view.Margins);

    // The sheet's flash at full power, seen by the camera, before fall-off over the sheet is known.
    private static WhiteMarginCase StraightBefore(SetUpAtFraming at, LightRole role) => new()
    {
        Flash = at.Flash(at.SetUp.LightsOf(role).First()),
        Camera = at.Camera,
        Transmittance = TransmittanceOf(at, role),
    };
}
