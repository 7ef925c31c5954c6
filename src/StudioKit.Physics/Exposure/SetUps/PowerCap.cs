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

    /// <summary>The sentence for a flash that misses a limit even where the cap put it; none where it keeps both.</summary>
    public static string? Broken(LightSolution light, SetUpLimits limits)
    {
        const double allowance = 1 + 1e-6;
        if (limits.LongestRecycle is { } wait && light.RecycleTime.Seconds > wait.Seconds * allowance)
        {
            return FormattableString.Invariant(
                $"The {light.Flash.Name} takes {light.RecycleTime.Seconds:0.0} s to recycle at {light.Power.Mark}, longer than {wait.Seconds:0.0} s.");
        }

        if (limits.LongestFlash is { } freeze && light.FlashDuration.Seconds > freeze.Seconds * allowance)
        {
            return FormattableString.Invariant(
                $"The {light.Flash.Name} burns 1/{1 / light.FlashDuration.Seconds:0} s at {light.Power.Mark}, longer than 1/{1 / freeze.Seconds:0} s.");
        }

        return null;
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
