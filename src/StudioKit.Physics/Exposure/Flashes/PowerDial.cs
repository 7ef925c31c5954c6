namespace StudioKit.Physics.Exposure.Flashes;

/// <summary>Turns a wanted level into a click of the power dial.</summary>
internal static class PowerDial
{
    // Round-off must not cost a click.
    private const double SameClick = 1e-9;

    // Marks are themselves rounded (1/13 for 1/12.7, 1/11 for 1/11.3), so the lowest one counts as the click it names [stops].
    private const double MarkTolerance = 1.0 / 12;

    public static PowerSolution Solve(double levelAtFull, double target, FlashCase flash, PowerRounding rounding)
    {
        var exact = Guard.Finite(target) - Guard.Finite(levelAtFull);
        var perStop = flash.PowerStep.ClicksPerStop();
        var wanted = Click(-perStop * exact, rounding);
        var first = FirstClick(flash);
        var last = LastClick(flash);
        var below = Math.Clamp(wanted, first, last) / perStop;
        var limit = wanted < first ? PowerLimit.FullPower : wanted > last ? PowerLimit.LowestPower : PowerLimit.None;

        return new PowerSolution(
            new DialMark(FlashPower.FromStopsBelowFull(below), flash.PowerStep), new Stops(levelAtFull - below), new Stops(target), new Stops(exact), limit);
    }

    /// <summary>The highest setting allowed [stops below full].</summary>
    public static double LeastBelowFull(FlashCase flash) => FirstClick(flash) / flash.PowerStep.ClicksPerStop();

    /// <summary>The lowest setting [stops below full].</summary>
    public static double MostBelowFull(FlashCase flash) => LastClick(flash) / flash.PowerStep.ClicksPerStop();

    // The highest is no mark but where recycling or blur sets its limit, which no click may pass.
    private static double FirstClick(FlashCase flash) =>
        Math.Min(LastClick(flash), Math.Ceiling((flash.HighestPower.StopsBelowFull * flash.PowerStep.ClicksPerStop()) - SameClick));

    private static double LastClick(FlashCase flash) =>
        Math.Floor((flash.LowestPower.StopsBelowFull + MarkTolerance) * flash.PowerStep.ClicksPerStop());

    private static double Click(double clicksBelowFull, PowerRounding rounding) => rounding switch
    {
        PowerRounding.Brighter => Math.Floor(clicksBelowFull + SameClick),
        PowerRounding.Darker => Math.Ceiling(clicksBelowFull - SameClick),
        _ => Math.Round(clicksBelowFull, MidpointRounding.AwayFromZero),
    };
}
