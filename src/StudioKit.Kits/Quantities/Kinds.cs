using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Kits.Quantities;

/// <summary>Every kind of single value that a kit may hold.</summary>
internal static class Kinds
{
    public static readonly ValueKind Length = Of(
        UnitDimension.Length, number => UnitsNet.Length.FromMillimeters(number), value => ((UnitsNet.Length)value!).Millimeters, toSi: 1e-3,
        value => WriteLength((UnitsNet.Length)value!));

    public static readonly ValueKind Mass = Of(
        UnitDimension.Mass, number => UnitsNet.Mass.FromGrams(number), value => ((UnitsNet.Mass)value!).Grams, toSi: 1e-3,
        value => WriteMass((UnitsNet.Mass)value!));

    public static readonly ValueKind Angle = Of(
        UnitDimension.Angle, number => UnitsNet.Angle.FromDegrees(number), value => ((UnitsNet.Angle)value!).Degrees, toSi: Math.PI / 180,
        value => $"{NumberText.Write(((UnitsNet.Angle)value!).Degrees)}°");

    public static readonly ValueKind Duration = Of(
        UnitDimension.Time, number => UnitsNet.Duration.FromSeconds(number), value => ((UnitsNet.Duration)value!).Seconds, toSi: 1,
        value => WriteTime(((UnitsNet.Duration)value!).Seconds));

    public static readonly ValueKind Speed = Of(
        UnitDimension.Speed, number => UnitsNet.Speed.FromMetersPerSecond(number), value => ((UnitsNet.Speed)value!).MetersPerSecond, toSi: 1,
        value => WriteSpeed(((UnitsNet.Speed)value!).MetersPerSecond));

    public static readonly ValueKind Wind = Speed with
    {
        Noun = "a wind speed",
        Example = "Beaufort 4",
        Read = WindText.Read,
        Pattern = () => Patterns.Wind,
    };

    public static readonly ValueKind Temperature = Of(
        UnitDimension.Temperature, number => UnitsNet.Temperature.FromDegreesCelsius(number), value => ((UnitsNet.Temperature)value!).DegreesCelsius, toSi: 1,
        value => $"{NumberText.Write(((UnitsNet.Temperature)value!).DegreesCelsius)} °C") with
    { TakesUncertainty = false };

    public static readonly ValueKind TemperatureDifference = Of(
        UnitDimension.TemperatureDifference, number => TemperatureDelta.FromKelvins(number), value => ((TemperatureDelta)value!).Kelvins, toSi: 1,
        value => $"{NumberText.Write(((TemperatureDelta)value!).Kelvins)} K");

    public static readonly ValueKind Force = Of(
        UnitDimension.Force, number => UnitsNet.Force.FromNewtons(number), value => ((UnitsNet.Force)value!).Newtons, toSi: 1,
        value => $"{NumberText.Write(((UnitsNet.Force)value!).Newtons)} N");

    public static readonly ValueKind JointStiffness = Of(
        UnitDimension.JointStiffness, number => RotationalStiffness.FromNewtonMetersPerRadian(number), value => ((RotationalStiffness)value!).NewtonMetersPerRadian, toSi: 1,
        value => $"{NumberText.Write(((RotationalStiffness)value!).NewtonMetersPerRadian)} N·m/rad");

    public static readonly ValueKind Energy = Of(
        UnitDimension.Energy, number => UnitsNet.Energy.FromJoules(number), value => ((UnitsNet.Energy)value!).Joules, toSi: 1,
        value => $"{NumberText.Write(((UnitsNet.Energy)value!).Joules)} J");

    public static readonly ValueKind Density = Of(
        UnitDimension.Density, number => UnitsNet.Density.FromKilogramsPerCubicMeter(number), value => ((UnitsNet.Density)value!).KilogramsPerCubicMeter, toSi: 1,
        value => $"{NumberText.Write(((UnitsNet.Density)value!).KilogramsPerCubicMeter)} kg/m³");

    public static readonly ValueKind AreaDensity = Of(
        UnitDimension.AreaDensity, number => UnitsNet.AreaDensity.FromKilogramsPerSquareMeter(number), value => ((UnitsNet.AreaDensity)value!).KilogramsPerSquareMeter, toSi: 1,
        value => $"{NumberText.Write(((UnitsNet.AreaDensity)value!).KilogramsPerSquareMeter * 1000)} g/m²");

    public static readonly ValueKind LinearDensity = Of(
        UnitDimension.LinearDensity, number => UnitsNet.LinearDensity.FromKilogramsPerMeter(number), value => ((UnitsNet.LinearDensity)value!).KilogramsPerMeter, toSi: 1,
        value => $"{NumberText.Write(((UnitsNet.LinearDensity)value!).KilogramsPerMeter * 1000)} g/m");

    public static readonly ValueKind Pressure = Of(
        UnitDimension.Pressure, number => UnitsNet.Pressure.FromPascals(number), value => ((UnitsNet.Pressure)value!).Pascals, toSi: 1,
        value => WritePressure(((UnitsNet.Pressure)value!).Pascals));

    public static readonly ValueKind OpticalPower = Of(
        UnitDimension.OpticalPower, number => ReciprocalLength.FromInverseMeters(number), value => ((ReciprocalLength)value!).InverseMeters, toSi: 1,
        value => $"{(((ReciprocalLength)value!).InverseMeters > 0 ? "+" : "")}{NumberText.Write(((ReciprocalLength)value!).InverseMeters)} dpt");

    public static readonly ValueKind Voltage = Of(
        UnitDimension.Voltage, number => ElectricPotential.FromVolts(number), value => ((ElectricPotential)value!).Volts, toSi: 1,
        value => $"{NumberText.Write(((ElectricPotential)value!).Volts)} V");

    public static readonly ValueKind Charge = Of(
        UnitDimension.Charge, number => ElectricCharge.FromMilliampereHours(number), value => ((ElectricCharge)value!).MilliampereHours, toSi: 3.6,
        value => $"{NumberText.Write(((ElectricCharge)value!).MilliampereHours)} mAh");

    public static readonly ValueKind Expansion = Of(
        UnitDimension.Expansion, number => CoefficientOfThermalExpansion.FromPerKelvin(number), value => ((CoefficientOfThermalExpansion)value!).PerKelvin, toSi: 1,
        value => $"{NumberText.Write(((CoefficientOfThermalExpansion)value!).PerKelvin)} /K");

    public static readonly ValueKind TypeSize = Of(
        UnitDimension.TypeSize, number => UnitsNet.Length.FromDtpPoints(number), value => ((UnitsNet.Length)value!).DtpPoints, toSi: 0.0254 / 72,
        value => $"{NumberText.Write(Math.Round(((UnitsNet.Length)value!).DtpPoints, 3))} pt") with
    { TakesUncertainty = false };

    public static readonly ValueKind Ratio = Number("a ratio", "0.5", LightText.Ratio, () => $"{Patterns.Number}\\s*%?") with { CountsLight = true };

    public static readonly ValueKind Factor = Number("a factor", "1.4", LightText.Factor, () => $"{Patterns.Number}\\s*[x×]?");

    public static readonly ValueKind Plain = Number("a number", "1.5", text => NumberText.Bare(text, "a number", "1.5"), () => Patterns.Number);

    public static readonly ValueKind Stops = Light(
        "a number of stops", "+1/3", LightText.Stops, value => ((Stops)value!).Value, value => $"{LightText.WriteStops(((Stops)value!).Value)} stop", () => Patterns.Stops)
        with
    { JsonType = "number", TakesUncertainty = true, CountsLight = true, IsInStops = true };

    public static readonly ValueKind FNumber = Light(
        "an f-number", "f/16", LightText.FNumber, value => ((FNumber)value!).Value,
        value => $"f/{NumberText.Write(Math.Round(((FNumber)value!).Value, 1))}", () => Patterns.FNumber);

    public static readonly ValueKind FNumberOrBest = new(
        "an f-number or 'best'",
        "f/16",
        text => text.Trim() == "best" ? Reading<object?>.Good(null) : LightText.FNumber(text),
        value => value is null ? "best" : FNumber.Write(value))
    {
        Pattern = () => $"(best|{Patterns.FNumber})",
        Measure = value => value is null ? new Extent(1, 1) : FNumber.Measure!(value),
        ReadMeasure = FNumber.ReadMeasure,
    };

    public static readonly ValueKind Shutter = new(
        "a shutter speed", "1/125 s", LightText.Shutter, value => WriteTime(((ShutterSpeed)value!).Seconds))
    {
        Pattern = () => Patterns.Quantity(UnitDimension.Time),
        Measure = value => new Extent(((ShutterSpeed)value!).Seconds, ((ShutterSpeed)value).Seconds),
        ReadMeasure = text => NumberText.Quantity(text, UnitDimension.Time),
    };

    public static readonly ValueKind Iso = Light(
        "an ISO speed", "400", LightText.Iso, value => ((IsoSpeed)value!).Value, value => NumberText.Write(((IsoSpeed)value!).Value), () => Patterns.Iso)
        with
    { JsonType = "number" };

    public static readonly ValueKind Power = Light(
        "a flash power", "1/8 +1/3", LightText.Power, value => ((FlashPower)value!).Fraction,
        value => $"1/{NumberText.Write(Math.Round(1 / ((FlashPower)value!).Fraction, 2))}", () => Patterns.Power);

    public static readonly ValueKind GuideNumber = new(
        "a guide number", "38 m @ ISO 100, 35 mm", LightText.GuideNumber, value => WriteGuideNumber((GuideNumber)value!))
    {
        Pattern = () => Patterns.GuideNumber,
        TakesUncertainty = true,
        CountsLight = true,
        IsRelativeOnly = true,
        Measure = value => new Extent(((GuideNumber)value!).AtIso100.Millimeters, ((GuideNumber)value).AtIso100.Millimeters),
        ReadMeasure = Length.ReadMeasure,
    };

    public static readonly ValueKind ExposureValue = Light(
        "an exposure value or illuminance", "EV 12", LightText.ExposureValue, value => ((ExposureValue)value!).AtIso100,
        value => $"EV {NumberText.Write(Math.Round(((ExposureValue)value!).AtIso100, 2))}", () => Patterns.ExposureValue)
        with
    { TakesUncertainty = true, CountsLight = true, IsInStops = true };

    public static readonly ValueKind Magnification = Light(
        "a magnification", "1:2", LightText.Magnification, value => ((Physics.Optics.Magnification)value!).Value,
        value => NumberText.Write(((Physics.Optics.Magnification)value!).Value), () => Patterns.Magnification)
        with
    { JsonType = "number" };

    public static readonly ValueKind Apertures = PairText.Apertures(FNumber);

    public static readonly ValueKind Isos = PairText.Isos(Iso);

    public static readonly ValueKind Size = PairText.Size("120 mm x 90 mm");

    public static readonly ValueKind SensorSize = PairText.Size("36 mm x 24 mm");

    public static readonly ValueKind SheetSize = PairText.Size("1000 mm x 500 mm");

    public static readonly ValueKind Box = PairText.Box("600 mm x 300 mm x 220 mm");

    public static readonly ValueKind Pixels = PairText.Pixels;

    public static readonly ValueKind Count = new(
        "a whole number", "4", text => NumberText.Whole(text).Then(value => (object?)value), value => NumberText.Write((int)value!))
    {
        Pattern = () => @"\+?\d+",
        JsonType = "integer",
        Measure = value => new Extent((int)value!, (int)value),
        ReadMeasure = text => NumberText.Bare(text, "a number", "4"),
    };

    public static readonly ValueKind Price = new("a price", "4.20", WordText.Price, value => NumberText.Write((double)(decimal)value!))
    {
        Pattern = () => @"\d+(\.\d+)?",
        JsonType = "number",
        Measure = value => new Extent((double)(decimal)value!, (double)(decimal)value),
        ReadMeasure = text => NumberText.Bare(text, "a price", "4.20"),
    };

    public static readonly ValueKind YesNo = new("yes or no", "yes", WordText.YesNo, value => (bool)value! ? "yes" : "no")
    {
        Words = ["yes", "no", "true", "false"],
        JsonType = "boolean",
    };

    public static readonly ValueKind Name = new("a name", "reed", text => WordText.Line(text, longest: 80), value => (string)value!) { JsonType = "number" };

    public static readonly ValueKind Sentence = new(
        "a sentence", "Moths at the light sheet.", text => WordText.Line(text, longest: 400), value => (string)value!);

    public static readonly ValueKind Currency = new("a currency code", "EUR", WordText.Currency, value => (string)value!) { Pattern = () => "[A-Z]{3}" };

    /// <summary>A choice among the members of an enumeration, written with hyphens.</summary>
    public static ValueKind Choice(Type members, string noun)
    {
        var words = Array.ConvertAll(Enum.GetNames(members), WordText.Hyphenated);
        return new(noun, words[0], text => WordText.Choice(text, noun, words).Then(index => (object?)Enum.ToObject(members, index)), value => WordText.Hyphenated(value!.ToString()!))
        {
            Words = words,
        };
    }

    private static ValueKind Of(UnitDimension dimension, Func<double, object?> make, Func<object?, double> measure, double toSi, Func<object?, string> write) => new(
        dimension.Noun, dimension.Example, text => NumberText.Quantity(text, dimension).Then(make), write)
    {
        Pattern = () => Patterns.Quantity(dimension),
        TakesUncertainty = true,
        ToSi = toSi,
        Measure = value => new Extent(measure(value), measure(value)),
        ReadMeasure = text => NumberText.Quantity(text, dimension),
    };

    private static ValueKind Number(string noun, string example, Func<string, Reading<double>> read, Func<string> pattern) => new(
        noun, example, text => read(text).Then(value => (object?)value), value => NumberText.Write((double)value!))
    {
        Pattern = pattern,
        JsonType = "number",
        TakesUncertainty = true,
        Measure = value => new Extent((double)value!, (double)value),
        ReadMeasure = read,
    };

    private static ValueKind Light(
        string noun, string example, Func<string, Reading<object?>> read, Func<object?, double> measure, Func<object?, string> write, Func<string> pattern) => new(
        noun, example, read, write)
        {
            Pattern = pattern,
            Measure = value => new Extent(measure(value), measure(value)),
            ReadMeasure = text => read(text).Then(measure),
        };

    private static string WriteLength(Length value) =>
        Math.Abs(value.Millimeters) < 1000 ? $"{NumberText.Write(value.Millimeters)} mm" : $"{NumberText.Write(value.Meters)} m";

    private static string WriteMass(Mass value) => value.Grams >= 1000 ? $"{NumberText.Write(value.Kilograms)} kg" : $"{NumberText.Write(value.Grams)} g";

    private static string WriteGuideNumber(GuideNumber value) =>
        $"{NumberText.Write(value.AtIso100.Meters)} m @ ISO 100{(value.Zoom is { } zoom ? $", {WriteLength(zoom)}" : "")}";

    private static string WriteSpeed(double metersPerSecond) =>
        metersPerSecond < 0.1 ? $"{NumberText.Write(metersPerSecond * 1000)} mm/s" : $"{NumberText.Write(metersPerSecond)} m/s";

    private static string WritePressure(double pascals) =>
        pascals >= 1e9 ? $"{NumberText.Write(pascals / 1e9)} GPa" : $"{NumberText.Write(pascals / 1e6)} MPa";

    private static string WriteTime(double seconds) => seconds is > 0 and < 0.3
        ? $"1/{NumberText.Write(Math.Round(1 / seconds, 1))} s"
        : $"{NumberText.Write(seconds)} s";
}
