using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light.Checks;
using StudioKit.Physics.Light.Views;
using StudioKit.Physics.Light;

namespace StudioKit.Planning.Studio.Lights;

/// <summary>A panel over its flashes at full power: lit once, looked at by every framing.</summary>
/// <param name="scene">Panel, surround and flashes.</param>
/// <param name="store">Where its light is kept.</param>
internal sealed class LitPanel(LightScene scene, LightStore store)
{
    private readonly Lazy<LightMap?> _map = new(() => SceneCheck.Problems(scene).Count > 0 ? null : store.MapOf(scene));

    private readonly Kept<CameraView, SeenPanel?> _seen = new(512);

    /// <summary>Panel, flashes, frame and ground.</summary>
    public LightScene Scene { get; } = scene;

    /// <summary>The light map at full power; none where a flash stands where it cannot.</summary>
    public LightMap? Map => _map.Value;

    /// <summary>Margins over the frame of one view, flashes below at full power; none where the view or the map is impossible.</summary>
    public WhiteMarginMap? Seen(CameraView view, CameraCase camera) => _seen.Get(view, Look)?.With(camera);

    private SeenPanel? Look(CameraView view) =>
        Map is { } map && SceneCheck.ViewProblems(map.Panel, view).Count == 0 ? SeenPanel.Of(map, view) : null;
}
