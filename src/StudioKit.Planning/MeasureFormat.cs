using UnitsNet;

namespace StudioKit.Planning;

/// <summary>Masses, forces, speeds, angles, times and shares as a person reads them: with their unit, rounded to what the inputs know.</summary>
public static class MeasureFormat
{
    /// <summary>A force in newtons, to two digits.</summary>
    public static string Force(Force force) => UnitText.Of($"{TwoDigits(force.Newtons)} N", () => InchText.Force(force.Newtons));

    /// <summary>A wind's speed in metres a second.</summary>
    public static string Speed(Speed speed) => UnitText.Of($"{UnitText.Number(speed.MetersPerSecond, "0.#")} m/s", () => InchText.Speed(speed.MetersPerSecond));

    /// <summary>A temperature in whole degrees.</summary>
    public static string Temperature(Temperature temperature) => UnitText.Of($"{UnitText.Number(temperature.DegreesCelsius, "0")} °C", () => InchText.Temperature(temperature.DegreesCelsius));

    /// <summary>A mass: grams below a kilogram, two decimals of a kilogram above.</summary>
    public static string Mass(Mass mass) => UnitText.Of(
        mass.Grams < 999.5 ? $"{UnitText.Number(mass.Grams, "0")} g" : $"{UnitText.Number(mass.Kilograms, "0.00")} kg", () => InchText.Mass(mass.Grams));

    /// <summary>A mass as a spring balance or a bag tells it: kilograms or pounds to the tenth.</summary>
    public static string Kilograms(Mass mass) => UnitText.Of($"{UnitText.Number(mass.Kilograms, "0.0")} kg", () => $"{UnitText.Number(mass.Pounds, "0.0")} lb");

    /// <summary>A body's mass, in whole kilograms or pounds.</summary>
    public static string WholeKilograms(Mass mass) => UnitText.Of($"{UnitText.Number(mass.Kilograms, "0")} kg", () => $"{UnitText.Number(mass.Pounds, "0")} lb");

    /// <summary>An angle in whole degrees.</summary>
    public static string Degrees(Angle angle) => $"{UnitText.Number(angle.Degrees, "0.#")}°";

    /// <summary>A short time as a fraction of a second, a long one in seconds.</summary>
    public static string Seconds(Duration duration) => duration.Seconds < 0.3
        ? $"1/{ThreeDigits(1 / duration.Seconds)} s"
        : $"{UnitText.Number(duration.Seconds, "0.#")} s";

    /// <summary>A wait in seconds, to the tenth above.</summary>
    public static string Wait(Duration duration) => $"{UnitText.Number(Math.Ceiling((duration.Seconds * 10) - 1e-6) / 10, "0.0")} s";

    /// <summary>A span of a session: seconds under two minutes, else minutes to the half.</summary>
    public static string Minutes(Duration duration) => duration.Seconds < 119.5
        ? $"{UnitText.Number(duration.Seconds, "0")} s"
        : $"{UnitText.Number(Math.Ceiling(duration.Minutes * 2) / 2, "0.#")} min";

    /// <summary>A share as a percentage.</summary>
    public static string Percent(double share) => $"{UnitText.Number(share * 100, "0.#")} %";

    /// <summary>A small share as a percentage, to the hundredth.</summary>
    public static string FinePercent(double share) => $"{UnitText.Number(share * 100, "0.##")} %";

    /// <summary>A number to three significant digits, or all digits before the point.</summary>
    public static string ThreeDigits(double value)
    {
        var size = Math.Abs(value);
        return UnitText.Number(value, size switch { >= 99.95 => "0", >= 9.995 => "0.#", >= 0.9995 => "0.##", _ => "0.###" });
    }

    /// <summary>A value to two significant digits, as sure as most computed values are.</summary>
    public static string TwoDigits(double value)
    {
        var step = value == 0 ? 1 : Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(value))) - 1);
        return UnitText.Number(Math.Round(value / step) * step, "0.####");
    }

    /// <summary>An illuminance as finely as a scene is known: two significant digits, without the unit.</summary>
    public static string IlluminanceFigure(Illuminance illuminance)
    {
        var lux = illuminance.Lux;
        var step = lux > 0 ? Math.Pow(10, Math.Floor(Math.Log10(lux)) - 1) : 1;
        return UnitText.Number(Math.Round(lux / step) * step, "0.##");
    }
}
