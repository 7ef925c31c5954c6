using StudioKit.Physics.Light.Obstacles;
using StudioKit.Physics.Light;
using StudioKit.Physics;

namespace StudioKit.Planning.Studio.Lights;

/// <summary>Keeps what was lit, by the value of its scene, so that nothing is lit twice.</summary>
internal sealed class LightStore
{
    private readonly Kept<(LightPanel, LightSurround, ValueList<Obstacle>, ValueList<Emitter>), LitPanel> _lit = new();

    /// <summary>A scene lit.</summary>
    public LitPanel Lit(LightScene scene) => _lit.Get(
        (scene.Panel, scene.Surround with { Frame = [] }, [.. scene.Surround.Frame], [.. scene.Emitters]), _ => new LitPanel(scene));
}
