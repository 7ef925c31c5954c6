using StudioKit.Physics;
using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Views;

namespace StudioKit.Planning.Studio.Lights;

/// <summary>Keeps what was lit by the value of what it was lit from: the box by panel and surround, its light by where the flashes stand, what is seen of it by the view.</summary>
internal sealed class LightStore
{
    private static readonly PanelGrid Grid = new(24, 24);

    private readonly Kept<(LightPanel Panel, LightSurround Bare), LightBox> _bare = new();
    private readonly Kept<(LightPanel Panel, LightSurround Surround), LightBox> _boxes = new();
    private readonly Kept<(LightBox Box, ValueList<Emitter> Flashes), LightMap> _maps = new();
    private readonly Kept<(LightMap Map, CameraView View), SeenPanel> _seen = new(512);
    private readonly Kept<LightScene, LitPanel> _lit = new();

    /// <summary>A scene lit; nothing is worked out before somebody looks.</summary>
    public LitPanel Lit(LightScene scene) => _lit.Get(scene, of => new LitPanel(of, this));

    /// <summary>Light on the panel of a scene without problems, each flash at an axial intensity·time of 1 cd·s.</summary>
    public LightMap UnitMapOf(LightScene scene)
    {
        var box = _boxes.Get((scene.Panel, scene.Surround), Framed);
        return _maps.Get((box, [.. scene.Emitters.Select(flash => flash with { AxialIntensityTime = 1 })]), static of => of.Box.Illuminate(of.Flashes));
    }

    /// <summary>What a possible view sees of it.</summary>
    public SeenPanel SeenIn(LightMap unitMap, CameraView view) => _seen.Get((unitMap, view), static of => SeenPanel.Of(of.Map, of.View));

    // Another frame in the same box: only the pipes that were not there before are worked out.
    private LightBox Framed((LightPanel Panel, LightSurround Surround) of) =>
        _bare.Get((of.Panel, of.Surround with { Frame = [] }), static bare => LightBox.Prepare(bare.Panel, bare.Bare, Grid)).WithFrame(of.Surround.Frame);
}
