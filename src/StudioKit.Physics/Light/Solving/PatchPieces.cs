namespace StudioKit.Physics.Light.Solving;

/// <summary>A patch cut along a plane into triangles that lie wholly on one side of it.</summary>
internal static class PatchPieces
{
    // Nearer than this a corner counts as lying in the plane [m].
    private const double Touching = 1e-9;

    /// <summary>Whether a plane goes through the patch's inside.</summary>
    public static bool IsCut(in Patch patch, Position on, Direction normal)
    {
        var (a, b, c, d) = (normal.Dot(on, patch.A), normal.Dot(on, patch.B), normal.Dot(on, patch.C), normal.Dot(on, patch.D));
        return Math.Min(Math.Min(a, b), Math.Min(c, d)) < -Touching && Math.Max(Math.Max(a, b), Math.Max(c, d)) > Touching;
    }

    /// <summary>The triangles, each as a patch whose last two corners coincide.</summary>
    public static IReadOnlyList<Patch> Of(in Patch patch, Position on, Direction normal) =>
        [.. Side(patch, on, normal), .. Side(patch, on, -normal)];

    private static List<Patch> Side(in Patch patch, Position on, Direction normal)
    {
        Span<Position> kept = stackalloc Position[8];
        var count = PolygonFactor.Clip(on, normal, [patch.A, patch.B, patch.C, patch.D], kept);
        var triangles = new List<Patch>();
        for (var i = 2; i < count; i++)
        {
            triangles.Add(patch with { A = kept[0], B = kept[i - 1], C = kept[i], D = kept[i] });
        }

        return triangles;
    }
}
