using StudioKit.Physics.Exposure.Flashes;

namespace StudioKit.Physics.Exposure.SetUps;

/// <summary>Solves the flashes on a subject, whose levels together are to come to a goal.</summary>
internal static class SubjectLighting
{
    /// <summary>Level that each light must reach so that all together reach the goal.</summary>
    public static double Target(IReadOnlyList<SubjectLight> lights, SubjectLight light, double goal)
    {
        var sum = 0.0;
        for (var i = 0; i < lights.Count; i++)
        {
            sum += lights[i].Level.Ratio;
        }

        return goal + light.Level.Value - Math.Log2(sum);
    }

    /// <summary>Bounds the ISO speed by what one flash can give.</summary>
    /// <param name="window">The window to narrow.</param>
    /// <param name="flash">The flash, capped.</param>
    /// <param name="levelAtIso100">Its level at full power and ISO 100 [stops].</param>
    /// <param name="brightest">Highest level it must be able to reach [stops].</param>
    /// <param name="darkest">Lowest level it must be able to come down to [stops].</param>
    public static void Bound(ref IsoWindow window, FlashCase flash, double levelAtIso100, double brightest, double darkest)
    {
        window.AtLeast(brightest - levelAtIso100 + PowerDial.LeastBelowFull(flash), IsoBound.FlashTooWeak, flash);
        window.AtMost(darkest - levelAtIso100 + PowerDial.MostBelowFull(flash), IsoBound.FlashTooStrong, flash);
    }

    /// <summary>Level of a flash on the subject at full power and ISO 100 [stops].</summary>
    public static double AtIso100(FlashCase flash, CameraCase camera) =>
        SubjectExposure.AtFullPower(new SubjectExposureCase { Flash = flash, Camera = camera })
        - Math.Log2(camera.Iso.Value / 100);

    /// <summary>Sets one flash on the subject.</summary>
    public static LightSolution Set(FlashCase flash, CameraCase camera, double target, LightUncertainty known)
    {
        var subject = new SubjectExposureCase { Flash = flash, Camera = camera, Uncertainty = flash.Uncertainty ?? known };
        var power = PowerDial.Solve(SubjectExposure.AtFullPower(subject), target, flash, PowerRounding.Nearest);
        var set = flash with { Power = power.Power };
        return new LightSolution { Flash = set, Power = power, Subject = subject with { Flash = set } };
    }

    /// <summary>Level that flash must add so that it and the ambient light come to correct exposure together [stops].</summary>
    public static double Beside(double ambientLevel) => Math.Log2(1 - Math.Min(0.5, Math.Pow(2, ambientLevel)));

    /// <summary>All lights and the ambient light together.</summary>
    public static Stops Total(IEnumerable<LightSolution> lights, double ambientLevel) =>
        CombinedLight.Sum([.. lights.Select(light => light.Power.Level), new Stops(ambientLevel)]);

    /// <summary>What every flash misses, in their order; empty where all keep their level and limits.</summary>
    public static IEnumerable<MissedLimit> Broken(IEnumerable<LightSolution> lights, SetUpLimits limits) =>
        lights.SelectMany(light => MissedLimit.Any(OffTheDial(light)).Concat(PowerCap.Broken(light, limits)));

    private static MissedLimit? OffTheDial(LightSolution light) => light.Power.Limit switch
    {
        PowerLimit.FullPower => new MissedLimit.FlashTooWeak(light.Flash.Name, light.Power.Mark, light.Power.Target - light.Power.Level),
        PowerLimit.LowestPower => new MissedLimit.FlashTooStrong(light.Flash.Name, light.Power.Mark, light.Power.Level - light.Power.Target),
        _ => null,
    };
}
