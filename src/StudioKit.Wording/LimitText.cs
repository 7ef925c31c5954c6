using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Flashes;
using StudioKit.Physics.Exposure.SetUps;
using StudioKit.Planning;

namespace StudioKit.Wording;

/// <summary>A limit that an exposure misses, as a sentence.</summary>
public static class LimitText
{
    /// <summary>What stands in the way, and by how much.</summary>
    public static string Of(MissedLimit limit)
    {
        ArgumentNullException.ThrowIfNull(limit);
        return limit switch
        {
            MissedLimit.IsoConflict range => $"{Need(range)} to {range.Needed.Nominal}, but {Bar(range)} {range.Allowed.Nominal}.",
            MissedLimit.FlashTooWeak weak => weak.Most.Power == FlashPower.Full
                ? $"Full power of the {weak.Flash} is {By(weak)} short."
                : $"{weak.Most.Nominal} power of the {weak.Flash}, the most allowed, is {By(weak)} short.",
            MissedLimit.FlashTooStrong strong => $"The lowest power of the {strong.Flash}, {strong.Least.Nominal}, is {By(strong)} too much.",
            MissedLimit.RecyclesSlowly slow => $"The {slow.Flash} takes {MeasureFormat.Seconds(slow.Takes)} to recycle at {slow.Power.Nominal}, longer than {MeasureFormat.Seconds(slow.Longest)}.",
            MissedLimit.BurnsLong burns => FormattableString.Invariant(
                $"The {burns.Flash} burns 1/{1 / burns.Burns.Seconds:0} s at {burns.Power.Nominal}, longer than 1/{1 / burns.Longest.Seconds:0} s, which freezes the subject."),
            MissedLimit.Veils veils => $"The brightest visible point lies {veils.Brightest} stops over clipping, more than the {veils.Highest} that the veil allows.",
            MissedLimit.AmbientTooBright bright => $"The light of the place is {By(bright)} too bright for {bright.Aperture.Nominal}, the sync speed {bright.Shutter.Nominal} and {bright.Iso.Nominal}.",
            MissedLimit.AmbientTooDim dim => $"The light of the place is {By(dim)} too dim for {dim.Aperture.Nominal}, {dim.Shutter.Nominal} and {dim.Iso.Nominal}.",
            MissedLimit.LightsBackground lit => $"The flash lights the background {DistanceFormat.Metres(lit.Behind)} behind to {lit.Level} stops, not {lit.Wanted}.",
            MissedLimit.Smears smears => FormattableString.Invariant($"Smear over {smears.Smear:0.#} pixels, where {smears.Most:0.#} pass for sharp."),
            _ => "What the camera would see of the panel cannot be worked out: mend the flash's place or the camera's angle first.",
        };
    }

    private static string By(MissedLimit limit) => FormattableString.Invariant($"{limit.By!.Value.Value:0.0} stops");

    private static string Need(MissedLimit.IsoConflict range) => range.NeededFor switch
    {
        IsoBound.FlashTooWeak when range.NeedingFlash is { } flash => flash.HighestPower == FlashPower.Full
            ? $"At full power the {flash.Name} asks for the ISO raised"
            : $"At {new DialMark(flash.HighestPower, flash.PowerStep).Nominal} power, the most allowed, the {flash.Name} asks for the ISO raised",
        IsoBound.Camera => "The camera goes down",
        _ => "The light asks for the ISO raised",
    };

    private static string Bar(MissedLimit.IsoConflict range) => range.AllowedBy switch
    {
        IsoBound.Ambient => "the light of the place allows no more than",
        IsoBound.FlashTooStrong when range.BarringFlash is FlashCase flash => $"the {flash.Name} at its lowest power allows no more than",
        _ => "the camera's highest is",
    };
}
