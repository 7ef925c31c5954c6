using StudioKit.Physics.Exposure.Flashes;

namespace StudioKit.Physics.Exposure.SetUps;

/// <summary>Keeps flashes to the power that recycles soon enough and freezes the subject.</summary>
internal static class PowerCap
{
    public static FlashCase Apply(FlashCase flash, SetUpLimits limits)
    {
        if (limits.LongestRecycle is null && limits.LongestFlash is null)
        {
            return flash;
        }

        var cap = Math.Min(flash.HighestPower.Fraction, Math.Min(ByRecycle(flash, limits), ByDuration(flash, limits)));
        return flash with { HighestPower = new FlashPower(Math.Max(cap, flash.LowestPower.Fraction)) };
    }

    /// <summary>Limits that a flash misses even where the cap put it; empty where it keeps both.</summary>
    public static IEnumerable<MissedLimit> Broken(LightSolution light, SetUpLimits limits)
    {
        const double allowance = 1 + 1e-6;
        if (limits.LongestRecycle is { } wait && light.RecycleTime.Seconds > wait.Seconds * allowance)
        {
            yield return new MissedLimit.RecyclesSlowly(
                light.Flash.Name, light.Power.Mark, light.RecycleTime, wait, Stops.FromRatio(light.RecycleTime / wait));
        }

        if (limits.LongestFlash is { } freeze && light.FlashDuration.Seconds > freeze.Seconds * allowance)
        {
            yield return new MissedLimit.BurnsLong(
                light.Flash.Name, light.Power.Mark, light.FlashDuration, freeze, Stops.FromRatio(light.FlashDuration / freeze));
        }
    }

    private static double ByRecycle(FlashCase flash, SetUpLimits limits) => limits.LongestRecycle is { } wait
        ? Guard.Positive(wait.Seconds, nameof(limits.LongestRecycle)) / Guard.Positive(flash.RecycleTime.Seconds, nameof(flash.RecycleTime))
        : 1;

    // Quenched flash: t_c = −τ·ln(1 − P), so P = 1 − e^(−t/τ); at full power the whole decay counts, t0.1 = τ·ln 10.
    private static double ByDuration(FlashCase flash, SetUpLimits limits)
    {
        if (limits.LongestFlash is not { } freeze)
        {
            return 1;
        }

        var share = Guard.Positive(freeze.Seconds, nameof(limits.LongestFlash))
            / Guard.Positive(flash.FullPowerDuration.Seconds, nameof(flash.FullPowerDuration));
        return share >= 1 ? 1 : 1 - Math.Pow(10, -share);
    }
}
