namespace StudioKit.Physics.Tests.Light.Covers;

/// <summary>Photons that go by chance through a stack of parallel faces: an independent route to what it passes.</summary>
internal static class PlayedPhotons
{
    /// <summary>Share that leaves at the far side.</summary>
    /// <param name="photons">How many are played.</param>
    /// <param name="indices">Refractive indices, from before the stack to behind it.</param>
    /// <param name="incidence">Angle before the stack [rad].</param>
    /// <param name="seed">Seed of chance.</param>
    public static double Passed(int photons, IReadOnlyList<double> indices, double incidence, int seed)
    {
        var chance = new Random(seed);
        var angles = indices.Select(n => Math.Asin(Math.Sin(incidence) * indices[0] / n)).ToList();
        var passed = 0;
        for (var photon = 0; photon < photons; photon++)
        {
            var isAcross = chance.NextDouble() < 0.5;
            var (layer, step) = (0, 1);
            while (layer + step >= 0 && layer < indices.Count - 1)
            {
                (layer, step) = chance.NextDouble() < TurnedBack(angles[layer], angles[layer + step], isAcross) ? (layer, -step) : (layer + step, step);
            }

            passed += layer == indices.Count - 1 ? 1 : 0;
        }

        return (double)passed / photons;
    }

    /// <summary>Fresnel's formulae in sines and tangents: sin²(θ − θ′)/sin²(θ + θ′) across the plane of incidence, tan² of the same along it.</summary>
    public static double TurnedBack(double before, double behind, bool isAcross) => isAcross
        ? Math.Pow(Math.Sin(before - behind) / Math.Sin(before + behind), 2)
        : Math.Pow(Math.Tan(before - behind) / Math.Tan(before + behind), 2);
}
