using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Covers;

namespace StudioKit.Physics.Tests.Light.Covers;

/// <summary>Photons traced out of a box with real walls, face by face: an independent route to what a tub passes.</summary>
internal static class TubOfPhotons
{
    // Half the width of the cone about the lens, as a share of its distance.
    private const double Cone = 0.01;

    /// <summary>Share that leaves the wall they first come to on its outer side.</summary>
    public static double Passed(CoverCase tub, Position subject, Position lens, int photons, int seed)
    {
        var chance = new Random(seed);
        var passed = 0;
        for (var photon = 0; photon < photons; photon++)
        {
            double[] ray = [lens.X - subject.X, lens.Y - subject.Y, lens.Z - subject.Z];
            var size = Math.Sqrt((ray[0] * ray[0]) + (ray[1] * ray[1]) + (ray[2] * ray[2]));
            for (var axis = 0; axis < 3; axis++)
            {
                ray[axis] += size * Cone * ((2 * chance.NextDouble()) - 1);
            }

            passed += Leaves(Angle(tub, subject, ray), tub.RefractiveIndex, chance) ? 1 : 0;
        }

        return (double)passed / photons;
    }

    // Of the inner faces the one that is met first; the angle from its normal.
    private static double Angle(CoverCase tub, Position from, double[] ray)
    {
        double[] start = [from.X, from.Y, from.Z];
        double[] far = [tub.Width.Meters / 2, tub.Depth.Meters / 2, tub.Height.Meters];
        var first = Enumerable.Range(0, 3).Where(axis => ray[axis] != 0 && (axis < 2 || ray[axis] > 0))
            .MinBy(axis => ((Math.Sign(ray[axis]) * far[axis]) - start[axis]) / ray[axis]);
        return Math.Acos(Math.Abs(ray[first]) / Math.Sqrt((ray[0] * ray[0]) + (ray[1] * ray[1]) + (ray[2] * ray[2])));
    }

    private static bool Leaves(double incidence, double index, Random chance)
    {
        var isAcross = chance.NextDouble() < 0.5;
        var refracted = Math.Asin(Math.Sin(incidence) / index);
        if (chance.NextDouble() < PlayedPhotons.TurnedBack(incidence, refracted, isAcross))
        {
            return false;
        }

        // Within the wall it is thrown to and fro until it leaves on one side.
        var isOutward = true;
        while (chance.NextDouble() < PlayedPhotons.TurnedBack(refracted, incidence, isAcross))
        {
            isOutward = !isOutward;
        }

        return isOutward;
    }
}
