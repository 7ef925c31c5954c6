using StudioKit.Physics;
using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Views;

namespace StudioKit.Planning.Studio.Lights;

/// <summary>Keeps what was lit by the value of what it was lit from: the box by panel and surround, its light by where the flashes stand, what is seen of it by the view.</summary>
internal sealed class LightStore
{
    private static readonly PanelGrid Grid = new(24, 24);

    // A box is megabytes of form factors, the light in it a few kilobytes: advice that moves a flash asks for the light of many boxes, and for hardly a box again.
    private const int MostBoxes = 4;

    private readonly Kept<(LightPanel Panel, LightSurround Bare), LatestBox> _latest = new(MostBoxes);
    private readonly Kept<(LightPanel Panel, LightSurround Surround), LightBox> _boxes = new(MostBoxes);
    private readonly Kept<(LightPanel Panel, LightSurround Surround, ValueList<Emitter> Flashes), LightMap> _maps = new();
    private readonly Kept<(LightMap Map, CameraView View), SeenPanel> _seen = new(512);
    private readonly Kept<LightScene, LitPanel> _lit = new();
    private readonly Func<LightScene, LightMap> _light;

    /// <summary>A store that lights each scene as a plan does.</summary>
    public LightStore() => _light = Exact;

    /// <summary>A store for one look at something that is being moved.</summary>
    /// <param name="light">How its scene is lit, each flash at an axial intensity·time of 1 cd·s.</param>
    public LightStore(Func<LightScene, LightMap> light) => _light = light;

    /// <summary>A scene lit; nothing is worked out before somebody looks.</summary>
    public LitPanel Lit(LightScene scene) => _lit.Get(scene, of => new LitPanel(of, this));

    /// <summary>Light on the panel of a scene without problems, each flash at an axial intensity·time of 1 cd·s.</summary>
    public LightMap UnitMapOf(LightScene scene) => _light(scene);

    /// <summary>The box of a scene without problems, before a flash is put there.</summary>
    public LightBox BoxOf(LightScene scene) => BoxOf(scene.Panel, scene.Surround);

    /// <summary>What a possible view sees of it.</summary>
    public SeenPanel SeenIn(LightMap unitMap, CameraView view) => _seen.Get((unitMap, view), static of => SeenPanel.Of(of.Map, of.View));

    private LightBox BoxOf(LightPanel panel, LightSurround surround) => _boxes.Get((panel, surround), Framed);

    private LightMap Exact(LightScene scene) =>
        _maps.Get((scene.Panel, scene.Surround, [.. scene.Emitters.Select(flash => flash with { AxialIntensityTime = 1 })]), of => BoxOf(of.Panel, of.Surround).Illuminate(of.Flashes));

    // Another frame in the same box: only the pipes that were not in the one before are worked out.
    private LightBox Framed((LightPanel Panel, LightSurround Surround) of)
    {
        var latest = _latest.Get((of.Panel, of.Surround with { Frame = [] }), static _ => new LatestBox());
        return latest.Box = latest.Box?.WithFrame(of.Surround.Frame) ?? LightBox.Prepare(of.Panel, of.Surround, Grid);
    }

    private sealed class LatestBox
    {
        public LightBox? Box { get; set; }
    }
}
