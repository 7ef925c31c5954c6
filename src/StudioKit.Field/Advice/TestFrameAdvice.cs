using StudioKit.Field.Analysis;
using StudioKit.Field.Ladders;
using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Metering;
using StudioKit.Physics.Sources;
using StudioKit.Planning.Expected;
using UnitsNet;

namespace StudioKit.Field.Advice;

/// <summary>Turns what a test frame misses into what to turn on the flash beneath the panel.</summary>
public static class TestFrameAdvice
{
    private const double Third = 1.0 / 3;

    // What lies further over clipping washes the subject out; without a kit the usual limit and the usual glare are taken.
    private static readonly Stops UsualVeil = VeilOf(new FrameLimits());


    /// <summary>Advises after one frame.</summary>
    /// <param name="analysis">The frame.</param>
    /// <param name="flash">How the flash beneath stood.</param>
    /// <param name="targetMargin">Margin over clipping that the darkest background should have, in stops [1]; ≥ 0.</param>
    /// <remarks>
    /// What is missing is counted in thirds of a stop, rounded up, since a stop too little shows and a third too much does not, up to where the brightest place would veil; power goes to the
    /// click of the flash's own dial that is not darker. Distance follows the inverse square, d·2^(−s/2), unless a plan says what it does to the
    /// darkest place; a frame after the change tells. An all-white frame does not show how far it lies over clipping, so only a power ladder can
    /// advise less.
    /// </remarks>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The target is negative or not finite.</exception>
    [Source("Derived", "inverse square law")]
    public static WhiteAdvice After(FrameAnalysis analysis, BeneathFlash flash, double targetMargin)
    {
        ArgumentNullException.ThrowIfNull(analysis);
        ArgumentNullException.ThrowIfNull(flash);
        Guard.NonNegative(targetMargin);
        if (analysis.Doubt is not null)
        {
            return new WhiteAdvice(0, null, null, 0, ["No advice from a frame whose background is not sure."]);
        }

        if (analysis.StopsMissing == 0)
        {
            return new WhiteAdvice(0, null, null, 0, ["The whole background is white: leave the lower flash as it is."]);
        }

        var change = ThirdsUp(analysis.StopsMissing + targetMargin);
        var brightest = change - analysis.StopsMissing + analysis.UnevennessStops;
        if (brightest > UsualVeil.Value)
        {
            return new WhiteAdvice(0, null, null, 0, [TooUneven(change, brightest, analysis.UnevennessIsLeast)]);
        }

        return Change(change, flash, analysis.Regions.MaxBy(region => region.StopsMissing)!.Name);
    }

    /// <summary>Advises after a power ladder: up or down to where the darkest cell has the target margin.</summary>
    /// <param name="map">The measured map.</param>
    /// <param name="flash">How the flash beneath stands now.</param>
    /// <param name="targetMargin">Margin over clipping that the darkest cell should have, in stops [1]; ≥ 0.</param>
    /// <returns>Advice; none where the map knows nothing.</returns>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The target is negative or not finite.</exception>
    [Source("Derived", "inverse square law")]
    public static WhiteAdvice? After(MeasuredMarginMap map, BeneathFlash flash, double targetMargin)
    {
        ArgumentNullException.ThrowIfNull(map);
        ArgumentNullException.ThrowIfNull(flash);
        Guard.NonNegative(targetMargin);
        if (map.WholeFrameClipsAtStops is not { } clips)
        {
            return null;
        }

        var change = ThirdsUp(clips + targetMargin + flash.Power.StopsBelowFull);
        var brightest = change - clips - flash.Power.StopsBelowFull + (map.Spread?.Value ?? 0);
        return brightest > UsualVeil.Value ? new WhiteAdvice(0, null, null, 0, [TooUneven(change, brightest, map.SpreadIsLeast)])
            : change == 0 ? new WhiteAdvice(0, null, null, 0, ["The lower flash is right as it is."])
            : Change(change, flash, "darkest cell");
    }

    private static Stops VeilOf(FrameLimits limits) => Veil.HighestMargin(limits.VeilLimit, limits.GlareIndex, 1, new Stops(SensorExposure.MidToneUnderClipping));

    private static string TooUneven(double change, double brightest, bool isLeast) => FormattableString.Invariant(
        $"{Alone(change)}, the brightest place lies {(isLeast ? "at least " : "")}{brightest:0.0} stops over clipping, where the veil allows {UsualVeil.Value:0.0}. Make the light more even first: the flash further off, or a dome or diffuser before it; with --kit the plan says which.");

    private static string Alone(double change) => Math.Round(change / Third) switch
    {
        > 0 => $"More light alone will not do: {new Stops(change).CountIn(PowerStep.Third)} up",
        < 0 => $"Less light alone will not do: {new Stops(-change).CountIn(PowerStep.Third)} down, where the darkest place is only just white",
        _ => "No power will do: as it is",
    };

    // A hundredth of a stop over a third is still that third: no flash is truer than that.
    private static double ThirdsUp(double stops) => Math.Ceiling((stops - 0.01) / Third) * Third;

    private static WhiteAdvice Change(double change, BeneathFlash flash, string place)
    {
        var power = PowerAfter(change, flash);
        var distance = flash.DarkestAt is { } darkestAt
            ? MovedFlash.ByPlan(flash.Distance, change, flash.ShortestDistance, darkestAt)
            : MovedFlash.ByInverseSquare(flash.Distance, change, flash.ShortestDistance);
        return new WhiteAdvice(change, power, distance, change, [.. Sentences(change, flash, power, distance, place)]);
    }

    private static DialMark? PowerAfter(double change, BeneathFlash flash)
    {
        var below = flash.Power.StopsBelowFull - change;
        if (below < -1e-9)
        {
            return null;
        }

        var mark = DialMark.NotUnder(FlashPower.FromStopsBelowFull(Math.Max(0, below)), flash.PowerStep);
        return mark.Power.StopsBelowFull <= flash.LowestPower.StopsBelowFull + 1e-9 ? mark : null;
    }

    private static IEnumerable<string> Sentences(double change, BeneathFlash flash, DialMark? power, Length? distance, string place)
    {
        var (way, stops) = (change > 0 ? "up" : "down", new Stops(change).CountIn(PowerStep.Third));
        yield return power is { } mark ? ByPower(mark, flash, place) : $"The {place} needs the lower flash {way} {stops}, which its power range does not reach.";
        if (distance is { } to)
        {
            var centimetres = Math.Abs((flash.Distance - to).Centimeters);
            yield return FormattableString.Invariant($"Or move it {centimetres:0} cm {(change > 0 ? "closer" : "away")}, to {to.Centimeters:0} cm.");
        }

        yield return $"Or ISO {way} {stops}, and the flashes above {(change > 0 ? "down" : "up")} by as much.";
    }

    private static string ByPower(DialMark mark, BeneathFlash flash, string place)
    {
        var turned = new Stops(flash.Power.StopsBelowFull - mark.Power.StopsBelowFull);
        return Math.Abs(turned.Value) < 1e-9
            ? $"Lower flash: leave it at {mark}, the next click down is too little for the {place}."
            : $"Lower flash {(turned.Value > 0 ? "up" : "down")} {turned.CountIn(flash.PowerStep)}, to {mark}, for the {place}.";
    }
}
