namespace StudioKit.Physics.Exposure.Flashes;

/// <summary>Turns a wanted level into a click of the power dial.</summary>
internal static class PowerDial
{
    // Round-off must not cost a click.
    private const double SameClick = 1e-9;

    // The lowest mark is itself rounded (1/13 for 1/12.7), so it counts as the click it names.
    private const double MarkTolerance = 0.25;

    public static PowerSolution Solve(double levelAtFull, double target, FlashCase flash, PowerRounding rounding)
    {
        var exact = Guard.Finite(target) - Guard.Finite(levelAtFull);
        var wanted = Click(-3 * exact, rounding);
        var first = FirstClick(flash);
        var last = LastClick(flash);
        var click = Math.Clamp(wanted, first, last);
        var limit = wanted < first ? PowerLimit.FullPower : wanted > last ? PowerLimit.LowestPower : PowerLimit.None;

        return new PowerSolution(
            FlashPower.FromStopsBelowFull(click / 3), new Stops(levelAtFull - (click / 3)), new Stops(target), new Stops(exact), limit);
    }

    /// <summary>Clicks from full power down to the highest setting allowed.</summary>
    public static double FirstClick(FlashCase flash) =>
        Math.Min(LastClick(flash), Math.Ceiling((3 * flash.HighestPower.StopsBelowFull) - MarkTolerance));

    /// <summary>Clicks from full power down to the lowest setting.</summary>
    public static double LastClick(FlashCase flash) => Math.Floor((3 * flash.LowestPower.StopsBelowFull) + MarkTolerance);

    private static double Click(double thirdsBelowFull, PowerRounding rounding) => rounding switch
    {
        PowerRounding.Brighter => Math.Floor(thirdsBelowFull + SameClick),
        PowerRounding.Darker => Math.Ceiling(thirdsBelowFull - SameClick),
        _ => Math.Round(thirdsBelowFull, MidpointRounding.AwayFromZero),
    };
}
