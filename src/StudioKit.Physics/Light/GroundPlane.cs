namespace StudioKit.Physics.Light;

/// <summary>How high places lie over the ground under an upright sheet.</summary>
internal static class GroundPlane
{
    /// <summary>Height of a place over the ground [m]; negative inside it.</summary>
    public static double Over(LightPanel panel, GroundBeside ground, Position place)
    {
        var (sin, cos) = Math.SinCos(ground.Lean.Radians);
        var meets = new PanelSurface(panel).FrontY - ground.Under.Meters;
        return ((place.Y - meets) * cos) + ((place.Z - panel.Height.Meters) * sin);
    }
}
