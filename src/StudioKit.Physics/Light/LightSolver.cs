using StudioKit.Physics.Light.Checks;
using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Light;

/// <summary>Light from flashes on the underside of the panel: straight, and by way of skirts, ground and the panel itself.</summary>
public static class LightSolver
{
    /// <summary>Luminous exposure over the panel.</summary>
    /// <remarks>
    /// Every surface is an ideal diffuser; frame and flash bodies are black. The bodies of the flashes shade straight and
    /// interreflected light alike. Who solves more than one scene of a panel keeps the <see cref="LightBox"/>.
    /// </remarks>
    /// <param name="scene">Panel, surround and flashes.</param>
    /// <param name="grid">Points of the panel to work out.</param>
    /// <returns>Luminous exposure at every point [lx·s].</returns>
    /// <exception cref="ArgumentException">The geometry is impossible; <see cref="SceneCheck"/> says beforehand how.</exception>
    [Source("Goral1984", "radiosity between diffuse patches")]
    [Source("Howell", "configurations C-13, C-15, B-3 and B-4")]
    public static LightMap Solve(LightScene scene, PanelGrid grid)
    {
        ArgumentNullException.ThrowIfNull(scene);
        ArgumentNullException.ThrowIfNull(grid);
        SceneCheck.Refuse(SceneCheck.Problems(scene));
        return LightBox.Prepare(scene.Panel, scene.Surround, grid).Illuminate(scene.Emitters);
    }
}
