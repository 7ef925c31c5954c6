namespace StudioKit.Physics.Light.Covers;

/// <summary>The layers between a flat face of a cover and a point inside it.</summary>
internal static class CoverWindow
{
    /// <summary>Layers from the face to the point: the wall, and the air or water behind it.</summary>
    public static IReadOnlyList<WindowLayer> Behind(CoverCase cover, CoverFace face, Position inside)
    {
        var (wall, n) = (cover.Wall.Meters, cover.RefractiveIndex);
        var deep = face switch
        {
            CoverFace.Water => Math.Max(0, cover.Water.Meters - inside.Z),
            CoverFace.Top => Math.Max(0, cover.Height.Meters - inside.Z),
            CoverFace.Left or CoverFace.Right => Math.Max(0, (cover.Width.Meters / 2) - Math.Abs(inside.X)),
            _ => Math.Max(0, (cover.Depth.Meters / 2) - Math.Abs(inside.Y)),
        };
        var filling = new WindowLayer(deep, cover.Inside);
        return face == CoverFace.Water ? [filling] : [new WindowLayer(wall, n), filling];
    }

    /// <summary>How far before the face a point outside stands, and how far aside of the one inside.</summary>
    public static (double Ahead, double Aside) Before(CoverFace face, Position outside, Position inside, double behind)
    {
        var (x, y, z) = (outside.X - inside.X, outside.Y - inside.Y, outside.Z - inside.Z);
        return face switch
        {
            CoverFace.Water or CoverFace.Top => (z - behind, double.Hypot(x, y)),
            CoverFace.Left or CoverFace.Right => (Math.Abs(x) - behind, double.Hypot(y, z)),
            _ => (Math.Abs(y) - behind, double.Hypot(x, z)),
        };
    }
}
