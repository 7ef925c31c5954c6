using StudioKit.Kits.Quantities;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Optics;
using UnitsNet;

namespace StudioKit.Kits;

/// <summary>Quantities as a kit file writes them, so that they read back as what they were.</summary>
public static class WrittenQuantity
{
    // What a value may lose that is written in another unit [mm, °]: nobody sets a flash or an edge up as finely (common practice, no source).
    private const double Finest = 0.005;

    // As many as numbers are written with.
    private const int MostDecimals = 6;

    private static readonly UnitDimension[] Restyled = [UnitDimension.Length, UnitDimension.Angle];

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

    /// <summary>A length or an angle written as the one was that it takes the place of: in its unit, the last one where there are several, and with how far off it may be still behind it.</summary>
    /// <param name="before">What stands in the kit, e.g. <c>45 cm ± 1 cm</c>.</param>
    /// <param name="value">What is to stand there, e.g. <c>470 mm</c>.</param>
    /// <returns>E.g. <c>47 cm ± 1 cm</c>; the value itself where the two are not of one kind, or the unit is too large for it.</returns>
    public static string Like(string before, string value)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(value);
        var (head, sign, spread) = PlusMinus.Split(before);
        var dimension = Array.Find(Restyled, dimension => NumberText.Quantity(head, dimension).IsGood && NumberText.Quantity(value, dimension).IsGood);
        return (dimension is null ? value : InUnitOf(head, NumberText.Quantity(value, dimension).Value, dimension) ?? value) + (sign is null ? "" : $" {sign} {spread}");
    }

    // None where the unit is so large that the value would lose something in it, as in kilometres.
    private static string? InUnitOf(string before, double value, UnitDimension dimension)
    {
        var unit = UnitTable.AtEnd(before, dimension)!;
        var number = before[..^unit.Symbol.Length];
        var gap = number[number.TrimEnd().Length..];
        var decimals = Math.Max(0, (int)Math.Ceiling(Math.Log10(unit.Factor / Finest)));
        // Adding nought takes the sign off a nought that has one.
        return decimals > MostDecimals ? null : NumberText.Write(Math.Round(value / unit.Factor, decimals) + 0.0) + gap + unit.Symbol;
    }

    private static string WriteDuration(Duration duration) => duration.Seconds >= 120 && duration.Seconds % 60 == 0
        ? $"{NumberText.Write(duration.Minutes)} min"
        : Kinds.Duration.Write(OwnUnits.Of(duration));
}
