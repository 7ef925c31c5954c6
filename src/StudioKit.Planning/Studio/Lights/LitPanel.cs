using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Checks;
using StudioKit.Physics.Light.Views;

namespace StudioKit.Planning.Studio.Lights;

/// <summary>A panel over its flashes at full power: lit once, looked at by every framing.</summary>
internal sealed class LitPanel
{
    private readonly LightStore _store;
    private readonly Lazy<LightMap?> _unitMap;
    private readonly Lazy<LightMap?> _map;

    /// <param name="scene">Panel, surround and flashes.</param>
    /// <param name="store">Where its light is kept.</param>
    public LitPanel(LightScene scene, LightStore store)
    {
        (Scene, _store) = (scene, store);
        _unitMap = new(() => SceneCheck.Problems(scene).Count > 0 ? null : store.UnitMapOf(scene));
        _map = new(() => _unitMap.Value?.AtIntensities([.. scene.Emitters.Select(flash => flash.AxialIntensityTime)]));
    }

    /// <summary>Panel, flashes, frame and ground.</summary>
    public LightScene Scene { get; }

    /// <summary>The light map at full power; none where a flash stands where it cannot.</summary>
    public LightMap? Map => _map.Value;

    /// <summary>Margins over the frame of one view, flashes below at full power; none where the view or the map is impossible.</summary>
    public WhiteMarginMap? Seen(CameraView view, CameraCase camera) =>
        Map is { } map && SceneCheck.ViewProblems(map.Panel, view).Count == 0 ? _store.SeenIn(_unitMap.Value!, view).Under(map).With(camera) : null;
}
