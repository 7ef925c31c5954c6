using StudioKit.Physics.Light;

namespace StudioKit.Physics.Tests.Light;

/// <summary>Light of a small flash behind an upright sheet, photon by photon, in a room whose ground is level: an independent route.</summary>
internal static class PhotonsBehindASheet
{
    /// <summary>Luminous exposure of each ninth of the sheet's back, rows from the lower edge [lx·s], the flash's axial intensity·time being 1 cd·s.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="ground">The ground.</param>
    /// <param name="flash">Place of a flash that faces the sheet squarely and throws I·cos θ, as the sheet lies on its back.</param>
    /// <param name="photons">How many are played.</param>
    /// <param name="seed">Seed of chance.</param>
    public static double[,] Play(LightPanel sheet, GroundBeside ground, Position flash, int photons, int seed)
    {
        var chance = new Random(seed);
        var (lean, width, height) = (ground.Lean.Radians, sheet.Width.Meters, sheet.Depth.Meters);
        var low = ground.Under.Meters * Math.Cos(lean);

        // In the room: x to the right, y away from the camera, z up. The sheet goes up along u from its lower edge; n looks at the flash.
        (double X, double Y, double Z) u = (0, Math.Sin(lean), Math.Cos(lean)), n = (0, Math.Cos(lean), -Math.Sin(lean)), foot = (0, 0, low);
        var (along, behind) = (flash.Y + (height / 2), sheet.Height.Meters - flash.Z);
        (double X, double Y, double Z) start = (flash.X, foot.Y + (u.Y * along) + (n.Y * behind), foot.Z + (u.Z * along) + (n.Z * behind));
        var hits = new double[3, 3];
        for (var i = 0; i < photons; i++)
        {
            var (place, ray) = (start, Scattered((-n.X, -n.Y, -n.Z), chance));
            while (true)
            {
                var ahead = (ray.X * n.X) + (ray.Y * n.Y) + (ray.Z * n.Z);
                var off = ((place.X - foot.X) * n.X) + ((place.Y - foot.Y) * n.Y) + ((place.Z - foot.Z) * n.Z);
                var toSheet = ahead < 0 ? -off / ahead : double.PositiveInfinity;
                var toGround = ray.Z < 0 ? -place.Z / ray.Z : double.PositiveInfinity;
                if (double.IsPositiveInfinity(Math.Min(toSheet, toGround)))
                {
                    break;
                }

                var far = Math.Min(toSheet, toGround);
                place = (place.X + (ray.X * far), place.Y + (ray.Y * far), place.Z + (ray.Z * far));
                if (toGround < toSheet)
                {
                    // Beyond its edges the ground that counts ends, as it does for the calculation.
                    var reach = place.Y - (foot.Y - (low * Math.Tan(lean)));
                    if (Math.Abs(place.X) > (width / 2) + ground.Beyond.Meters || reach > sheet.Height.Meters / Math.Cos(lean) || chance.NextDouble() >= ground.Reflectance)
                    {
                        break;
                    }

                    ray = Scattered((0, 0, 1), chance);
                    continue;
                }

                var up = ((place.Y - foot.Y) * u.Y) + ((place.Z - foot.Z) * u.Z);
                if (Math.Abs(place.X) >= width / 2 || up < 0 || up >= height)
                {
                    break;
                }

                hits[(int)(up / height * 3), (int)(((place.X / width) + 0.5) * 3)]++;
                if (chance.NextDouble() >= sheet.UndersideReflectance)
                {
                    break;
                }

                ray = Scattered(n, chance);
            }
        }

        // A Lambertian emitter of axial intensity 1 sends out π.
        var lightOfOne = Math.PI / photons / (width * height / 9);
        for (var i = 0; i < 9; i++)
        {
            hits[i / 3, i % 3] *= lightOfOne;
        }

        return hits;
    }

    // A way chosen by the cosine law about an axis.
    private static (double X, double Y, double Z) Scattered((double X, double Y, double Z) axis, Random chance)
    {
        var (share, turn) = (chance.NextDouble(), 2 * Math.PI * chance.NextDouble());
        var (out1, up) = (Math.Sqrt(share), Math.Sqrt(1 - share));
        (double X, double Y, double Z) across = (1, 0, 0), other = (0, -axis.Z, axis.Y);
        var (a, b) = (out1 * Math.Cos(turn), out1 * Math.Sin(turn));
        return ((axis.X * up) + (across.X * a) + (other.X * b), (axis.Y * up) + (across.Y * a) + (other.Y * b), (axis.Z * up) + (across.Z * a) + (other.Z * b));
    }
}
