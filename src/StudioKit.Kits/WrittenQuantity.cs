using StudioKit.Kits.Quantities;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Optics;
using UnitsNet;

namespace StudioKit.Kits;

/// <summary>Quantities as a kit file writes them, so that they read back as what they were.</summary>
public static class WrittenQuantity
{
    /// <summary>A quantity with its unit.</summary>
    /// <param name="value">A length, mass, angle, duration, number of stops, f-number, ISO speed, shutter speed, flash power, magnification or plain number.</param>
    /// <returns>The text; none where it is no quantity that can be written, or stands at the nought that means "not given".</returns>
    public static string? Of(object? value) => value switch
    {
        Length length when length > Length.Zero => Kinds.Length.Write(OwnUnits.Of(length)),
        Mass mass when mass > Mass.Zero => Kinds.Mass.Write(OwnUnits.Of(mass)),
        Angle { Degrees: not 0 } angle => Kinds.Angle.Write(OwnUnits.Of(angle)),
        Duration duration when duration > Duration.Zero => WriteDuration(duration),
        Stops stops => Kinds.Stops.Write(stops.Value),
        FNumber { Value: > 0 } number => Kinds.FNumber.Write(number.Value),
        IsoSpeed { Value: > 0 } speed => Kinds.Iso.Write(speed.Value),
        ShutterSpeed { Seconds: > 0 } speed => Kinds.Shutter.Write(speed.Seconds),
        FlashPower { Fraction: > 0 } power => Kinds.Power.Write(power.Fraction),
        Magnification { Value: > 0 } magnification => Kinds.Magnification.Write(magnification.Value),
        double number when double.IsFinite(number) => NumberText.Write(number),
        _ => null,
    };

    private static string WriteDuration(Duration duration) => duration.Seconds >= 120 && duration.Seconds % 60 == 0
        ? $"{NumberText.Write(duration.Minutes)} min"
        : Kinds.Duration.Write(OwnUnits.Of(duration));
}
