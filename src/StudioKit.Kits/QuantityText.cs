using System.Diagnostics.CodeAnalysis;
using StudioKit.Kits.Cards;
using StudioKit.Kits.Description;
using StudioKit.Kits.Quantities;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Optics;
using UnitsNet;

namespace StudioKit.Kits;

/// <summary>Reads values as people write them, in kit files and on the command line alike.</summary>
/// <remarks>
/// Decimals take a point; fractions (<c>3/4 in</c>) and mixed fractions (<c>1 1/2 in</c>) are fine. A bare number where a unit is needed is refused with a guess.
/// Unit symbols come from one small table of our own: the first parse of a general unit library costs more than the rest of a run.
/// </remarks>
public static class QuantityText
{
    /// <summary>Reads a length, e.g. <c>305 mm</c>, <c>3/4 in</c>, <c>5 ft 3 in</c>.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="value">The value, where the text was read.</param>
    /// <param name="problem">Otherwise a sentence that says what is wrong and what would be accepted; empty where all is well.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryLength(string text, out Length value, out string problem)
    {
        var isGood = Try(Kinds.Length, text, out var read, out problem);
        value = isGood ? OwnUnits.Length(read) : default;
        return isGood;
    }

    /// <summary>Reads a mass, e.g. <c>850 g</c>, <c>1 lb 4 oz</c>.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="value">The value, where the text was read.</param>
    /// <param name="problem">Otherwise a sentence that says what is wrong and what would be accepted; empty where all is well.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryMass(string text, out Mass value, out string problem)
    {
        var isGood = Try(Kinds.Mass, text, out var read, out problem);
        value = isGood ? OwnUnits.Mass(read) : default;
        return isGood;
    }

    /// <summary>Reads an angle, e.g. <c>60°</c>, <c>60 deg</c>, <c>1.05 rad</c>.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="value">The value, where the text was read.</param>
    /// <param name="problem">Otherwise a sentence that says what is wrong and what would be accepted; empty where all is well.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryAngle(string text, out Angle value, out string problem)
    {
        var isGood = Try(Kinds.Angle, text, out var read, out problem);
        value = isGood ? OwnUnits.Angle(read) : default;
        return isGood;
    }

    /// <summary>Reads a latitude, e.g. <c>52.3°</c>, <c>52.3° N</c>, <c>33.9° S</c>.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="value">The value, north positive, where the text was read.</param>
    /// <param name="problem">Otherwise a sentence that says what is wrong and what would be accepted; empty where all is well.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryLatitude(string text, out Angle value, out string problem)
    {
        var isGood = Try(DayText.Latitude, text, out var read, out problem);
        value = isGood ? OwnUnits.Angle(read) : default;
        return isGood;
    }

    /// <summary>Reads a longitude, e.g. <c>5.1°</c>, <c>5.1° E</c>, <c>105.2° W</c>.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="value">The value, east positive, where the text was read.</param>
    /// <param name="problem">Otherwise a sentence that says what is wrong and what would be accepted; empty where all is well.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryLongitude(string text, out Angle value, out string problem)
    {
        var isGood = Try(DayText.Longitude, text, out var read, out problem);
        value = isGood ? OwnUnits.Angle(read) : default;
        return isGood;
    }

    /// <summary>Reads a date, e.g. <c>2026-06-14</c>.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="value">The value, where the text was read.</param>
    /// <param name="problem">Otherwise a sentence that says what is wrong and what would be accepted; empty where all is well.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryDate(string text, out DateOnly value, out string problem)
    {
        var isGood = Try(DayText.Date, text, out var read, out problem);
        value = isGood ? DateOnly.FromDayNumber(read) : default;
        return isGood;
    }

    /// <summary>Reads how far a clock is ahead of Universal Time, e.g. <c>+2 h</c>, <c>-9 h 30 min</c>.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="value">The value, where the text was read.</param>
    /// <param name="problem">Otherwise a sentence that says what is wrong and what would be accepted; empty where all is well.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryClockOffset(string text, out Duration value, out string problem)
    {
        var isGood = Try(DayText.ClockOffset, text, out var read, out problem);
        value = isGood ? OwnUnits.Duration(read) : default;
        return isGood;
    }

    /// <summary>Reads a time, e.g. <c>1/300 s</c>, <c>3 s</c>, <c>5 min</c>.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="value">The value, where the text was read.</param>
    /// <param name="problem">Otherwise a sentence that says what is wrong and what would be accepted; empty where all is well.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryDuration(string text, out Duration value, out string problem)
    {
        var isGood = Try(Kinds.Duration, text, out var read, out problem);
        value = isGood ? OwnUnits.Duration(read) : default;
        return isGood;
    }

    /// <summary>Reads a speed, e.g. <c>5 mm/s</c>, <c>6 m/s</c>, <c>20 km/h</c>.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="value">The value, where the text was read.</param>
    /// <param name="problem">Otherwise a sentence that says what is wrong and what would be accepted; empty where all is well.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TrySpeed(string text, out Speed value, out string problem)
    {
        var isGood = Try(Kinds.Speed, text, out var read, out problem);
        value = isGood ? OwnUnits.Speed(read) : default;
        return isGood;
    }

    /// <summary>Reads a wind speed, e.g. <c>6 m/s</c>, or <c>Beaufort 4</c> for the upper bound of that band.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="value">The value, where the text was read.</param>
    /// <param name="problem">Otherwise a sentence that says what is wrong and what would be accepted; empty where all is well.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryWind(string text, out Speed value, out string problem)
    {
        var isGood = Try(Kinds.Wind, text, out var read, out problem);
        value = isGood ? OwnUnits.Speed(read) : default;
        return isGood;
    }

    /// <summary>Reads a temperature, e.g. <c>25 °C</c>, <c>77 °F</c>.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="value">The value, where the text was read.</param>
    /// <param name="problem">Otherwise a sentence that says what is wrong and what would be accepted; empty where all is well.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryTemperature(string text, out Temperature value, out string problem)
    {
        var isGood = Try(Kinds.Temperature, text, out var read, out problem);
        value = isGood ? OwnUnits.Temperature(read) : default;
        return isGood;
    }

    /// <summary>Reads a density, e.g. <c>1190 kg/m³</c>, <c>1.19 g/cm³</c>.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="value">The value, where the text was read.</param>
    /// <param name="problem">Otherwise a sentence that says what is wrong and what would be accepted; empty where all is well.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryDensity(string text, out Density value, out string problem)
    {
        var isGood = Try(Kinds.Density, text, out var read, out problem);
        value = isGood ? OwnUnits.Density(read) : default;
        return isGood;
    }

    /// <summary>Reads a mass per area, e.g. <c>100 g/m²</c>.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="value">The value, where the text was read.</param>
    /// <param name="problem">Otherwise a sentence that says what is wrong and what would be accepted; empty where all is well.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryAreaDensity(string text, out AreaDensity value, out string problem)
    {
        var isGood = Try(Kinds.AreaDensity, text, out var read, out problem);
        value = isGood ? OwnUnits.AreaDensity(read) : default;
        return isGood;
    }

    /// <summary>Reads a mass per length, e.g. <c>122 g/m</c>, <c>0.21 lb/ft</c>.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="value">The value, where the text was read.</param>
    /// <param name="problem">Otherwise a sentence that says what is wrong and what would be accepted; empty where all is well.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryLinearDensity(string text, out LinearDensity value, out string problem)
    {
        var isGood = Try(Kinds.LinearDensity, text, out var read, out problem);
        value = isGood ? OwnUnits.LinearDensity(read) : default;
        return isGood;
    }

    /// <summary>Reads a stress or modulus, e.g. <c>3.2 GPa</c>, <c>420000 psi</c>.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="value">The value, where the text was read.</param>
    /// <param name="problem">Otherwise a sentence that says what is wrong and what would be accepted; empty where all is well.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryPressure(string text, out Pressure value, out string problem)
    {
        var isGood = Try(Kinds.Pressure, text, out var read, out problem);
        value = isGood ? OwnUnits.Pressure(read) : default;
        return isGood;
    }

    /// <summary>Reads an optical power, e.g. <c>+3 dpt</c>.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="value">The value, where the text was read.</param>
    /// <param name="problem">Otherwise a sentence that says what is wrong and what would be accepted; empty where all is well.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryOpticalPower(string text, out ReciprocalLength value, out string problem)
    {
        var isGood = Try(Kinds.OpticalPower, text, out var read, out problem);
        value = isGood ? OwnUnits.OpticalPower(read) : default;
        return isGood;
    }

    /// <summary>Reads a voltage, e.g. <c>1.2 V</c>.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="value">The value, where the text was read.</param>
    /// <param name="problem">Otherwise a sentence that says what is wrong and what would be accepted; empty where all is well.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryVoltage(string text, out ElectricPotential value, out string problem)
    {
        var isGood = Try(Kinds.Voltage, text, out var read, out problem);
        value = isGood ? OwnUnits.Voltage(read) : default;
        return isGood;
    }

    /// <summary>Reads a charge, e.g. <c>2000 mAh</c>.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="value">The value, where the text was read.</param>
    /// <param name="problem">Otherwise a sentence that says what is wrong and what would be accepted; empty where all is well.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryCharge(string text, out ElectricCharge value, out string problem)
    {
        var isGood = Try(Kinds.Charge, text, out var read, out problem);
        value = isGood ? OwnUnits.Charge(read) : default;
        return isGood;
    }

    /// <summary>Reads a thermal expansion, e.g. <c>7.2e-5 /K</c>.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="value">The value, where the text was read.</param>
    /// <param name="problem">Otherwise a sentence that says what is wrong and what would be accepted; empty where all is well.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryExpansion(string text, out CoefficientOfThermalExpansion value, out string problem)
    {
        var isGood = Try(Kinds.Expansion, text, out var read, out problem);
        value = isGood ? OwnUnits.Expansion(read) : default;
        return isGood;
    }

    /// <summary>Reads a ratio [1], e.g. <c>0.5</c>, <c>50 %</c>.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="value">The value, where the text was read.</param>
    /// <param name="problem">Otherwise a sentence that says what is wrong and what would be accepted; empty where all is well.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryRatio(string text, out double value, out string problem)
    {
        return Try(Kinds.Ratio, text, out value, out problem);
    }

    /// <summary>Reads a factor [1], e.g. <c>1.4</c>, <c>1.4x</c>.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="value">The value, where the text was read.</param>
    /// <param name="problem">Otherwise a sentence that says what is wrong and what would be accepted; empty where all is well.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryFactor(string text, out double value, out string problem)
    {
        return Try(Kinds.Factor, text, out value, out problem);
    }

    /// <summary>Reads a number of stops, e.g. <c>+1/3</c>, <c>-0.5 stop</c>, <c>1 1/3 stops</c>.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="value">The value, where the text was read.</param>
    /// <param name="problem">Otherwise a sentence that says what is wrong and what would be accepted; empty where all is well.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryStops(string text, out Stops value, out string problem)
    {
        var isGood = Try(Kinds.Stops, text, out var read, out problem);
        value = isGood ? new Stops(read) : default;
        return isGood;
    }

    /// <summary>Reads an f-number; a mark stands for its exact third stop, e.g. <c>f/16</c>.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="value">The value, where the text was read.</param>
    /// <param name="problem">Otherwise a sentence that says what is wrong and what would be accepted; empty where all is well.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryFNumber(string text, out FNumber value, out string problem)
    {
        var isGood = Try(Kinds.FNumber, text, out var read, out problem);
        value = isGood ? new FNumber(read) : default;
        return isGood;
    }

    /// <summary>Reads an f-number as the number that it is: <c>f/11</c> is 11, not the 11.31 behind a lens's mark.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="value">The value, where the text was read.</param>
    /// <param name="problem">Otherwise a sentence that says what is wrong and what would be accepted; empty where all is well.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryTypedFNumber(string text, out FNumber value, out string problem)
    {
        var isGood = Try(Kinds.TypedFNumber, text, out var read, out problem);
        value = isGood ? new FNumber(read) : default;
        return isGood;
    }

    /// <summary>Reads a shutter speed; a mark stands for its exact third stop, e.g. <c>1/125 s</c>, <c>2 s</c>.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="value">The value, where the text was read.</param>
    /// <param name="problem">Otherwise a sentence that says what is wrong and what would be accepted; empty where all is well.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryShutter(string text, out ShutterSpeed value, out string problem)
    {
        var isGood = Try(Kinds.Shutter, text, out var read, out problem);
        value = isGood ? new ShutterSpeed(read) : default;
        return isGood;
    }

    /// <summary>Reads an ISO speed, e.g. <c>400</c>, <c>ISO 400</c>.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="value">The value, where the text was read.</param>
    /// <param name="problem">Otherwise a sentence that says what is wrong and what would be accepted; empty where all is well.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryIso(string text, out IsoSpeed value, out string problem)
    {
        var isGood = Try(Kinds.Iso, text, out var read, out problem);
        value = isGood ? new IsoSpeed(read) : default;
        return isGood;
    }

    /// <summary>Reads a flash power; a mark stands for its exact third stop, e.g. <c>1/6.4</c>, <c>1/8 +1/3</c>.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="value">The value, where the text was read.</param>
    /// <param name="problem">Otherwise a sentence that says what is wrong and what would be accepted; empty where all is well.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryPower(string text, out FlashPower value, out string problem)
    {
        var isGood = Try(Kinds.Power, text, out var read, out problem);
        value = isGood ? new FlashPower(read) : default;
        return isGood;
    }

    /// <summary>Reads a flash power as the fraction that it is: <c>1/5</c> is 0.2, not the third stop behind a flash's mark.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="value">The value, where the text was read.</param>
    /// <param name="problem">Otherwise a sentence that says what is wrong and what would be accepted; empty where all is well.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryTypedPower(string text, out FlashPower value, out string problem)
    {
        var isGood = Try(Kinds.TypedPower, text, out var read, out problem);
        value = isGood ? new FlashPower(read) : default;
        return isGood;
    }

    /// <summary>Reads a guide number, brought to ISO 100, e.g. <c>38 m @ ISO 100, 35 mm</c>, <c>125 ft</c>.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="value">The value, where the text was read.</param>
    /// <param name="problem">Otherwise a sentence that says what is wrong and what would be accepted; empty where all is well.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryGuideNumber(string text, out GuideNumber value, out string problem)
    {
        var isGood = Try(Kinds.GuideNumber, text, out var read, out problem);
        value = isGood ? LightKeys.Of(read!) : default;
        return isGood;
    }

    /// <summary>Reads a brightness at ISO 100, e.g. <c>EV 12</c>, <c>10000 lx</c>.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="value">The value, where the text was read.</param>
    /// <param name="problem">Otherwise a sentence that says what is wrong and what would be accepted; empty where all is well.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryExposureValue(string text, out ExposureValue value, out string problem)
    {
        var isGood = Try(Kinds.ExposureValue, text, out var read, out problem);
        value = isGood ? new ExposureValue(read) : default;
        return isGood;
    }

    /// <summary>Reads a magnification, e.g. <c>1:2</c>, <c>0.5</c>.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="value">The value, where the text was read.</param>
    /// <param name="problem">Otherwise a sentence that says what is wrong and what would be accepted; empty where all is well.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryMagnification(string text, out Magnification value, out string problem)
    {
        var isGood = Try(Kinds.Magnification, text, out var read, out problem);
        value = isGood ? new Magnification(read) : default;
        return isGood;
    }

    /// <summary>Reads two lengths written together, e.g. <c>36 mm x 24 mm</c> or <c>36 x 24 mm</c>.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="first">The first length, where the text was read.</param>
    /// <param name="second">The second length, where the text was read.</param>
    /// <param name="problem">Otherwise a sentence that says what is wrong and what would be accepted; empty where all is well.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TrySize(string text, out Length first, out Length second, out string problem)
    {
        var isGood = Try(Kinds.SensorSize, text, out var read, out problem);
        (first, second) = (read.First, read.Second);
        return isGood;
    }

    /// <summary>Reads two counts of pixels such as <c>8192 x 5464</c>.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="wide">The first count, where the text was read.</param>
    /// <param name="high">The second count, where the text was read.</param>
    /// <param name="problem">Otherwise a sentence that says what is wrong and what would be accepted; empty where all is well.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryPixels(string text, out int wide, out int high, out string problem)
    {
        var isGood = Try(Kinds.Pixels, text, out var read, out problem);
        (wide, high) = (read.Wide, read.High);
        return isGood;
    }

    /// <summary>Reads a size of card: a standard's name such as <c>A6</c>, or two lengths such as <c>90 mm x 130 mm</c>.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="value">The size, where the text was read.</param>
    /// <param name="problem">Otherwise a sentence that says what is wrong and what would be accepted; empty where all is well.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryCardSize(string text, [NotNullWhen(true)] out CardSize? value, out string problem)
    {
        return Try(CardSizeText.Kind, text, out value, out problem);
    }

    private static bool Try<T>(ValueKind<T> kind, string text, [MaybeNullWhen(false)] out T value, out string problem)
    {
        ArgumentNullException.ThrowIfNull(text);

        var reading = kind.Read(text);
        value = reading.Value;
        problem = reading.IsGood ? "" : reading.Hint is null ? reading.Problem! : $"{reading.Problem} {reading.Hint}";
        return reading.IsGood;
    }
}
