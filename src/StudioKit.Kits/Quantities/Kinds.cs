using StudioKit.Physics.Exposure;
using StudioKit.Physics.Optics;
using UnitsNet;

namespace StudioKit.Kits.Quantities;

/// <summary>Every kind of single value that a kit may hold.</summary>
internal static class Kinds
{
    public static readonly ValueKind<Length> Length = Of(
        Dimension.Length, number => UnitsNet.Length.FromMillimeters(number), value => value.Millimeters, toSi: 1e-3, WriteLength);

    public static readonly ValueKind<Mass> Mass = Of(
        Dimension.Mass, number => UnitsNet.Mass.FromGrams(number), value => value.Grams, toSi: 1e-3,
        value => value.Grams >= 1000 ? $"{NumberText.Write(value.Kilograms)} kg" : $"{NumberText.Write(value.Grams)} g");

    public static readonly ValueKind<Angle> Angle = Of(
        Dimension.Angle, number => UnitsNet.Angle.FromDegrees(number), value => value.Degrees, Math.PI / 180, value => $"{NumberText.Write(value.Degrees)}°");

    public static readonly ValueKind<Duration> Duration = Of(
        Dimension.Time, number => UnitsNet.Duration.FromSeconds(number), value => value.Seconds, toSi: 1, value => WriteTime(value.Seconds));

    public static readonly ValueKind<Speed> Speed = Of(
        Dimension.Speed, number => UnitsNet.Speed.FromMetersPerSecond(number), value => value.MetersPerSecond, toSi: 1,
        value => value.MetersPerSecond < 0.1 ? $"{NumberText.Write(value.MillimetersPerSecond)} mm/s" : $"{NumberText.Write(value.MetersPerSecond)} m/s");

    public static readonly ValueKind<Speed> Wind = Speed with
    {
        Noun = "a wind speed",
        Example = "Beaufort 4",
        Read = WindText.Read,
        Pattern = () => Patterns.Wind,
    };

    public static readonly ValueKind<Temperature> Temperature = Of(
        Dimension.Temperature, number => UnitsNet.Temperature.FromDegreesCelsius(number), value => value.DegreesCelsius, toSi: 1,
        value => $"{NumberText.Write(value.DegreesCelsius)} °C") with
    { TakesUncertainty = false };

    public static readonly ValueKind<Density> Density = Of(
        Dimension.Density, number => UnitsNet.Density.FromKilogramsPerCubicMeter(number), value => value.KilogramsPerCubicMeter, toSi: 1,
        value => $"{NumberText.Write(value.KilogramsPerCubicMeter)} kg/m³");

    public static readonly ValueKind<AreaDensity> AreaDensity = Of(
        Dimension.AreaDensity, number => UnitsNet.AreaDensity.FromKilogramsPerSquareMeter(number), value => value.KilogramsPerSquareMeter, toSi: 1,
        value => $"{NumberText.Write(value.KilogramsPerSquareMeter * 1000)} g/m²");

    public static readonly ValueKind<LinearDensity> LinearDensity = Of(
        Dimension.LinearDensity, number => UnitsNet.LinearDensity.FromKilogramsPerMeter(number), value => value.KilogramsPerMeter, toSi: 1,
        value => $"{NumberText.Write(value.GramsPerMeter)} g/m");

    public static readonly ValueKind<Pressure> Pressure = Of(
        Dimension.Pressure, number => UnitsNet.Pressure.FromPascals(number), value => value.Pascals, toSi: 1,
        value => value.Pascals >= 1e9 ? $"{NumberText.Write(value.Gigapascals)} GPa" : $"{NumberText.Write(value.Megapascals)} MPa");

    public static readonly ValueKind<ReciprocalLength> OpticalPower = Of(
        Dimension.OpticalPower, number => ReciprocalLength.FromInverseMeters(number), value => value.InverseMeters, toSi: 1,
        value => $"{(value.InverseMeters > 0 ? "+" : "")}{NumberText.Write(value.InverseMeters)} dpt");

    public static readonly ValueKind<ElectricPotential> Voltage = Of(
        Dimension.Voltage, number => ElectricPotential.FromVolts(number), value => value.Volts, toSi: 1, value => $"{NumberText.Write(value.Volts)} V");

    public static readonly ValueKind<ElectricCharge> Charge = Of(
        Dimension.Charge, number => ElectricCharge.FromMilliampereHours(number), value => value.MilliampereHours, toSi: 3.6,
        value => $"{NumberText.Write(value.MilliampereHours)} mAh");

    public static readonly ValueKind<CoefficientOfThermalExpansion> Expansion = Of(
        Dimension.Expansion, number => CoefficientOfThermalExpansion.FromPerKelvin(number), value => value.PerKelvin, toSi: 1,
        value => $"{NumberText.Write(value.PerKelvin)} /K");

    public static readonly ValueKind<double> Ratio = Number("a ratio", "0.5", LightText.Ratio, $"{Patterns.Number}\\s*%?") with { CountsLight = true };

    public static readonly ValueKind<double> Factor = Number("a factor", "1.4", LightText.Factor, $"{Patterns.Number}\\s*[x×]?");

    public static readonly ValueKind<double> Plain = Number(
        "a number", "1.5", text => NumberText.Bare(text, "a number", "1.5"), Patterns.Number);

    public static readonly ValueKind<Stops> Stops = new(
        "a number of stops", "+1/3", LightText.Stops, value => $"{NumberText.Write(value.Value)} stop")
    {
        Pattern = () => Patterns.Stops,
        JsonType = "number",
        TakesUncertainty = true,
        CountsLight = true,
        IsInStops = true,
        Measure = value => (value.Value, value.Value),
        ReadMeasure = text => LightText.Stops(text).Then(value => value.Value),
    };

    public static readonly ValueKind<FNumber> FNumber = new(
        "an f-number", "f/16", LightText.FNumber, value => $"f/{NumberText.Write(Math.Round(value.Value, 1))}")
    {
        Pattern = () => Patterns.FNumber,
        Measure = value => (value.Value, value.Value),
        ReadMeasure = text => LightText.FNumber(text).Then(value => value.Value),
    };

    public static readonly ValueKind<FNumber?> FNumberOrBest = new(
        "an f-number or 'best'",
        "f/16",
        text => text.Trim() == "best" ? Reading<FNumber?>.Good(null) : LightText.FNumber(text).Then(value => (FNumber?)value),
        value => value is { } number ? FNumber.Write(number) : "best")
    {
        Pattern = () => $"(best|{Patterns.FNumber})",
        Measure = value => (value?.Value ?? 1, value?.Value ?? 1),
        ReadMeasure = FNumber.ReadMeasure,
    };

    public static readonly ValueKind<ShutterSpeed> Shutter = new(
        "a shutter speed", "1/125 s", LightText.Shutter, value => WriteTime(value.Seconds))
    {
        Pattern = () => Patterns.Quantity(Dimension.Time),
        Measure = value => (value.Seconds, value.Seconds),
        ReadMeasure = text => NumberText.Quantity(text, Dimension.Time),
    };

    public static readonly ValueKind<IsoSpeed> Iso = new("an ISO speed", "400", LightText.Iso, value => NumberText.Write(value.Value))
    {
        Pattern = () => Patterns.Iso,
        JsonType = "number",
        Measure = value => (value.Value, value.Value),
        ReadMeasure = text => LightText.Iso(text).Then(value => value.Value),
    };

    public static readonly ValueKind<FlashPower> Power = new(
        "a flash power", "1/8 +1/3", LightText.Power, value => $"1/{NumberText.Write(Math.Round(1 / value.Fraction, 2))}")
    {
        Pattern = () => Patterns.Power,
        Measure = value => (value.Fraction, value.Fraction),
        ReadMeasure = text => LightText.Power(text).Then(value => value.Fraction),
    };

    public static readonly ValueKind<GuideNumber> GuideNumber = new(
        "a guide number",
        "38 m @ ISO 100, 35 mm",
        LightText.GuideNumber,
        value => $"{NumberText.Write(value.AtIso100.Meters)} m @ ISO 100{(value.Zoom is { } zoom ? $", {WriteLength(zoom)}" : "")}")
    {
        Pattern = () => Patterns.GuideNumber,
        TakesUncertainty = true,
        CountsLight = true,
        IsRelativeOnly = true,
        Measure = value => (value.AtIso100.Millimeters, value.AtIso100.Millimeters),
        ReadMeasure = Length.ReadMeasure,
    };

    public static readonly ValueKind<ExposureValue> ExposureValue = new(
        "an exposure value or illuminance", "EV 12", LightText.ExposureValue, value => $"EV {NumberText.Write(Math.Round(value.AtIso100, 2))}")
    {
        Pattern = () => Patterns.ExposureValue,
        TakesUncertainty = true,
        CountsLight = true,
        IsInStops = true,
        Measure = value => (value.AtIso100, value.AtIso100),
        ReadMeasure = text => LightText.ExposureValue(text).Then(value => value.AtIso100),
    };

    public static readonly ValueKind<Magnification> Magnification = new(
        "a magnification", "1:2", LightText.Magnification, value => NumberText.Write(value.Value))
    {
        Pattern = () => Patterns.Magnification,
        JsonType = "number",
        Measure = value => (value.Value, value.Value),
        ReadMeasure = text => LightText.Magnification(text).Then(value => value.Value),
    };

    public static readonly ValueKind<Extent<FNumber>> Apertures = PairText.Range(FNumber, "f/2.8 to f/32", value => value.Value);

    public static readonly ValueKind<Extent<IsoSpeed>> Isos = PairText.Range(Iso, "100 to 6400", value => value.Value);

    public static readonly ValueKind<Size> Size = PairText.Size("120 mm x 90 mm");

    public static readonly ValueKind<Size> SensorSize = PairText.Size("36 mm x 24 mm");

    public static readonly ValueKind<Size> SheetSize = PairText.Size("1000 mm x 500 mm");

    public static readonly ValueKind<Box> Box = PairText.Box;

    public static readonly ValueKind<PixelCount> Pixels = PairText.Pixels;

    public static readonly ValueKind<int> Count = new("a whole number", "4", NumberText.Whole, value => NumberText.Write(value))
    {
        Pattern = () => @"\+?\d+",
        JsonType = "integer",
        Measure = value => (value, value),
        ReadMeasure = text => NumberText.Bare(text, "a number", "4"),
    };

    public static readonly ValueKind<decimal> Price = new("a price", "4.20", WordText.Price, value => NumberText.Write((double)value))
    {
        Pattern = () => @"\d+(\.\d+)?",
        JsonType = "number",
        Measure = value => ((double)value, (double)value),
        ReadMeasure = text => NumberText.Bare(text, "a price", "4.20"),
    };

    public static readonly ValueKind<bool> YesNo = new("yes or no", "yes", WordText.YesNo, value => value ? "yes" : "no")
    {
        Words = ["yes", "no", "true", "false"],
        JsonType = "boolean",
    };

    public static readonly ValueKind<string> Name = new("a name", "reed", text => WordText.Line(text, longest: 80), value => value) { JsonType = "number" };

    public static readonly ValueKind<string> Sentence = new(
        "a sentence", "Moths at the light sheet.", text => WordText.Line(text, longest: 400), value => value);

    public static readonly ValueKind<string> Currency = new("a currency code", "EUR", WordText.Currency, value => value) { Pattern = () => "[A-Z]{3}" };

    /// <summary>A choice among the members of an enumeration, written with hyphens.</summary>
    public static ValueKind<TEnum> Choice<TEnum>(string noun)
        where TEnum : struct, Enum
    {
        var words = Array.ConvertAll(Enum.GetNames<TEnum>(), WordText.Hyphenated);
        var values = Enum.GetValues<TEnum>();
        return new(noun, words[0], text => WordText.Choice(text, noun, words).Then(index => values[index]), value => WordText.Hyphenated(value.ToString()))
        {
            Words = words,
        };
    }

    private static ValueKind<T> Of<T>(Dimension dimension, Func<double, T> make, Func<T, double> measure, double toSi, Func<T, string> write) => new(
        dimension.Noun, dimension.Example, text => NumberText.Quantity(text, dimension).Then(make), write)
    {
        Pattern = () => Patterns.Quantity(dimension),
        TakesUncertainty = true,
        ToSi = toSi,
        Measure = value => (measure(value), measure(value)),
        ReadMeasure = text => NumberText.Quantity(text, dimension),
    };

    private static ValueKind<double> Number(string noun, string example, Func<string, Reading<double>> read, string pattern) => new(
        noun, example, read, NumberText.Write)
    {
        Pattern = () => pattern,
        JsonType = "number",
        TakesUncertainty = true,
        Measure = value => (value, value),
        ReadMeasure = read,
    };

    private static string WriteLength(Length value) =>
        Math.Abs(value.Millimeters) < 1000 ? $"{NumberText.Write(value.Millimeters)} mm" : $"{NumberText.Write(value.Meters)} m";

    private static string WriteTime(double seconds) => seconds is > 0 and < 0.3
        ? $"1/{NumberText.Write(Math.Round(1 / seconds, 1))} s"
        : $"{NumberText.Write(seconds)} s";
}
