namespace StudioKit.Physics.Light.Solving;

/// <summary>Light at a set of points: flash by flash and by reflection [lx·s], and where it went.</summary>
internal sealed record PointLight(double[][] Direct, double[] Interreflected, LightBalance? Balance)
{
    /// <summary>The light of flashes, each scaled to its axial intensity·time [cd·s]: light grows in step with it.</summary>
    public static PointLight Of(IReadOnlyList<UnitLight> flashes, IReadOnlyList<double> intensities)
    {
        var interreflected = new double[flashes[0].Interreflected.Length];
        for (var flash = 0; flash < flashes.Count; flash++)
        {
            for (var i = 0; i < interreflected.Length; i++)
            {
                interreflected[i] += intensities[flash] * flashes[flash].Interreflected[i];
            }
        }

        double[][] direct = [.. flashes.Zip(intensities, (flash, intensity) => Array.ConvertAll(flash.Direct, value => intensity * value))];
        return new PointLight(direct, interreflected, Sum(flashes, intensities));
    }

    private static LightBalance? Sum(IReadOnlyList<UnitLight> flashes, IReadOnlyList<double> intensities)
    {
        if (flashes[0].Balance is null)
        {
            return null;
        }

        double Total(Func<LightBalance, double> part) => flashes.Zip(intensities, (flash, intensity) => intensity * part(flash.Balance!)).Sum();
        return new LightBalance(
            Total(balance => balance.Emitted),
            Total(balance => balance.PanelAbsorbed),
            Total(balance => balance.SkirtsAbsorbed),
            Total(balance => balance.FloorAbsorbed));
    }
}
