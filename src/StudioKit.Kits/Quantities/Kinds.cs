namespace StudioKit.Kits.Quantities;

/// <summary>Every kind of single value that a kit may hold; quantities are numbers in the unit table's own units.</summary>
internal static class Kinds
{
    public static readonly ValueKind<double> Length = Of(UnitDimension.Length, toSi: 1e-3, WriteLength);

    public static readonly ValueKind<double> Mass = Of(UnitDimension.Mass, toSi: 1e-3, WriteMass);

    public static readonly ValueKind<double> Angle = Of(UnitDimension.Angle, toSi: Math.PI / 180, degrees => $"{NumberText.Write(degrees)}°");

    public static readonly ValueKind<double> Duration = Of(UnitDimension.Time, toSi: 1, WriteTime);

    public static readonly ValueKind<double> Speed = Of(UnitDimension.Speed, toSi: 1, WriteSpeed);

    public static readonly ValueKind<double> Wind = Speed with
    {
        Noun = "a wind speed",
        Example = "Beaufort 4",
        Read = WindText.Read,
        Pattern = () => Patterns.Wind,
    };

    public static readonly ValueKind<double> Temperature = Of(UnitDimension.Temperature, toSi: 1, celsius => $"{NumberText.Write(celsius)} °C") with { TakesUncertainty = false };

    public static readonly ValueKind<double> TemperatureDifference = Of(UnitDimension.TemperatureDifference, toSi: 1, kelvins => $"{NumberText.Write(kelvins)} K");

    public static readonly ValueKind<double> Force = Of(UnitDimension.Force, toSi: 1, newtons => $"{NumberText.Write(newtons)} N");

    public static readonly ValueKind<double> JointStiffness = Of(UnitDimension.JointStiffness, toSi: 1, value => $"{NumberText.Write(value)} N·m/rad");

    public static readonly ValueKind<double> Energy = Of(UnitDimension.Energy, toSi: 1, joules => $"{NumberText.Write(joules)} J");

    public static readonly ValueKind<double> Density = Of(UnitDimension.Density, toSi: 1, value => $"{NumberText.Write(value)} kg/m³");

    public static readonly ValueKind<double> AreaDensity = Of(UnitDimension.AreaDensity, toSi: 1, value => $"{NumberText.Write(value * 1000)} g/m²");

    public static readonly ValueKind<double> LinearDensity = Of(UnitDimension.LinearDensity, toSi: 1, value => $"{NumberText.Write(value * 1000)} g/m");

    public static readonly ValueKind<double> Pressure = Of(UnitDimension.Pressure, toSi: 1, WritePressure);

    public static readonly ValueKind<double> OpticalPower = Of(UnitDimension.OpticalPower, toSi: 1, value => $"{(value > 0 ? "+" : "")}{NumberText.Write(value)} dpt");

    public static readonly ValueKind<double> Voltage = Of(UnitDimension.Voltage, toSi: 1, volts => $"{NumberText.Write(volts)} V");

    public static readonly ValueKind<double> Charge = Of(UnitDimension.Charge, toSi: 3.6, value => $"{NumberText.Write(value)} mAh");

    public static readonly ValueKind<double> Expansion = Of(UnitDimension.Expansion, toSi: 1, value => $"{NumberText.Write(value)} /K");

    public static readonly ValueKind<double> TypeSize = Of(UnitDimension.TypeSize, toSi: 0.0254 / 72, points => $"{NumberText.Write(Math.Round(points, 3))} pt") with { TakesUncertainty = false };

    public static readonly ValueKind<double> Ratio = Number("a ratio", "0.5", LightText.Ratio, () => $"{Patterns.Number}\\s*%?") with { CountsLight = true };

    public static readonly ValueKind<double> Factor = Number("a factor", "1.4", LightText.Factor, () => $"{Patterns.Number}\\s*[x×]?");

    public static readonly ValueKind<double> Plain = Number("a number", "1.5", text => NumberText.Bare(text, "a number", "1.5"), () => Patterns.Number);

    public static readonly ValueKind<double> Stops = Light(
        "a number of stops", "+1/3", LightText.StopCount, stops => $"{LightText.WriteStops(stops)} stop", () => Patterns.Stops)
        with
    { JsonType = "number", TakesUncertainty = true, CountsLight = true, IsInStops = true };

    public static readonly ValueKind<double> FNumber = Light(
        "an f-number", "f/16", LightText.FNumber, value => $"f/{NumberText.Write(Math.Round(value, 1))}", () => Patterns.FNumber);

    public static readonly ValueKind<double> TypedFNumber = Light(
        "an f-number", "f/16", LightText.TypedFNumber, value => $"f/{NumberText.Write(value)}", () => Patterns.FNumber);

    public static readonly ValueKind<ApertureChoice> FNumberOrBest = new(
        "an f-number or 'best'",
        "f/16",
        ReadBestOrFNumber,
        value => value.FNumber is { } number ? FNumber.Write(number) : "best")
    {
        Pattern = () => $"(best|{Patterns.FNumber})",
        AlsoWords = ["best"],
        Measure = value => One(value.FNumber ?? 1),
        ReadMeasure = FNumber.ReadMeasure,
    };

    public static readonly ValueKind<double> Shutter = Light(
        "a shutter speed", "1/125 s", LightText.Shutter, WriteTime, () => Patterns.Quantity(UnitDimension.Time))
        with
    { Dimension = UnitDimension.Time, ReadMeasure = text => NumberText.Quantity(text, UnitDimension.Time) };

    public static readonly ValueKind<double> Iso = Light("an ISO speed", "400", LightText.Iso, NumberText.Write, () => Patterns.Iso) with { JsonType = "number" };

    public static readonly ValueKind<double> Power = Light(
        "a flash power", "1/8 +1/3", LightText.Power, fraction => $"1/{NumberText.Write(Math.Round(1 / fraction, 2))}", () => Patterns.Power) with
    { JsonType = "number" };

    public static readonly ValueKind<double> TypedPower = Light(
        "a flash power", "1/8 +1/3", LightText.TypedPower, fraction => $"1/{NumberText.Write(1 / fraction)}", () => Patterns.Power) with
    { JsonType = "number" };

    public static readonly ValueKind<GuideNumberMark> GuideNumber = new("a guide number", "38 m @ ISO 100, 35 mm", GuideNumberText.Read, WriteGuideNumber)
    {
        Pattern = () => Patterns.GuideNumber,
        TakesUncertainty = true,
        CountsLight = true,
        IsRelativeOnly = true,
        Measure = value => One(value.Meters * 1000),
        ReadMeasure = Length.ReadMeasure,
    };

    public static readonly ValueKind<double> ExposureValue = Light(
        "an exposure value or illuminance", "EV 12", LightText.ExposureValue, value => $"EV {NumberText.Write(Math.Round(value, 2))}", () => Patterns.ExposureValue)
        with
    { TakesUncertainty = true, CountsLight = true, IsInStops = true, LateWords = () => SceneText.Names };

    public static readonly ValueKind<double> Magnification = Light(
        "a magnification", "1:2", LightText.Magnification, NumberText.Write, () => Patterns.Magnification)
        with
    { JsonType = "number" };

    public static readonly ValueKind<ApertureRange> Apertures = PairText.Apertures(FNumber);

    public static readonly ValueKind<IsoRange> Isos = PairText.Isos(Iso);

    public static readonly ValueKind<LightRange> Lights = PairText.Lights(ExposureValue);

    public static readonly ValueKind<ClockRange> Hours = ClockText.Hours;

    public static readonly ValueKind<Size> Size = PairText.Size("120 mm x 90 mm");

    public static readonly ValueKind<Size> SensorSize = SensorText.Kind;

    public static readonly ValueKind<Size> SheetSize = PairText.Size("1000 mm x 500 mm");

    public static readonly ValueKind<Box> Box = PairText.Box("600 mm x 300 mm x 220 mm");

    public static readonly ValueKind<PixelCount> Pixels = PairText.Pixels;

    public static readonly ValueKind<int> Count = new("a whole number", "4", NumberText.Whole, value => NumberText.Write(value))
    {
        Pattern = () => @"\+?\d+",
        JsonType = "integer",
        Measure = value => One(value),
        ReadMeasure = text => NumberText.Bare(text, "a number", "4"),
    };

    public static readonly ValueKind<double> Price = new("a price", "4.20", WordText.Price, NumberText.Write)
    {
        Pattern = () => @"\d+(\.\d+)?",
        JsonType = "number",
        Measure = One,
        ReadMeasure = text => NumberText.Bare(text, "a price", "4.20"),
    };

    public static readonly ValueKind<bool> YesNo = new("yes or no", "yes", WordText.YesNo, value => value ? "yes" : "no")
    {
        Words = ["yes", "no", "true", "false"],
        JsonType = "boolean",
    };

    public static readonly ValueKind<string> Name = new("a name", "reed", text => WordText.Line(text, longest: 80), value => value) { JsonType = "number" };

    public static readonly ValueKind<string> Distribution = new("the name of a measured light distribution", "reed.ies", text => WordText.Line(text, longest: 80), value => value);

    public static readonly ValueKind<string> Sentence = new("a sentence", "Moths at the light sheet.", text => WordText.Line(text, longest: 400), value => value);

    public static readonly ValueKind<string> Currency = new("a currency code", "EUR", WordText.Currency, value => value) { Pattern = () => "[A-Z]{3}" };

    public static readonly ValueKind<string> RadioGroup = new("a group of a radio", "B", WordText.RadioGroup, value => value) { Pattern = () => "[A-P]" };

    /// <summary>A choice among the members of an enumeration, written with hyphens and read as the member's place.</summary>
    public static ValueKind<int> Choice(Type members, string noun)
    {
        var words = Array.ConvertAll(Enum.GetNames(members), MemberText.Hyphenated);
        return new(noun, words[0], text => WordText.Choice(text, noun, words), place => words[place]) { Words = words };
    }

    private static ValueKind<double> Of(UnitDimension dimension, double toSi, Func<double, string> write) => new(
        dimension.Noun, dimension.Example, text => NumberText.Quantity(text, dimension), write)
    {
        Pattern = () => Patterns.Quantity(dimension),
        Dimension = dimension,
        TakesUncertainty = true,
        ToSi = toSi,
        Measure = One,
        ReadMeasure = text => NumberText.Quantity(text, dimension),
    };

    private static ValueKind<double> Number(string noun, string example, Func<string, Reading<double>> read, Func<string> pattern) =>
        Light(noun, example, read, NumberText.Write, pattern) with { JsonType = "number", TakesUncertainty = true };

    private static ValueKind<double> Light(string noun, string example, Func<string, Reading<double>> read, Func<double, string> write, Func<string> pattern) => new(
        noun, example, read, write)
    {
        Pattern = pattern,
        Measure = One,
        ReadMeasure = read,
    };

    private static Reading<ApertureChoice> ReadBestOrFNumber(string text)
    {
        var number = LightText.FNumber(text);
        return text.Trim() == "best" ? Reading<ApertureChoice>.Good(new(null))
            : number.IsGood || text.Any(char.IsAsciiDigit) ? number.Then(value => new ApertureChoice(value))
            : Reading<ApertureChoice>.Bad($"'{text}' is not an f-number.", "Write for example 'f/16', or 'best' for the sharpest.");
    }

    private static Extent One(double value) => new(value, value);

    private static string WriteLength(double millimeters) =>
        Math.Abs(millimeters) < 1000 ? $"{NumberText.Write(millimeters)} mm" : $"{NumberText.Write(millimeters / 1000)} m";

    private static string WriteMass(double grams) => grams >= 1000 ? $"{NumberText.Write(grams / 1000)} kg" : $"{NumberText.Write(grams)} g";

    private static string WriteGuideNumber(GuideNumberMark value) =>
        $"{NumberText.Write(value.Meters)} m @ ISO 100{(value.Zoom is { } zoom ? $", {WriteLength(zoom)}" : "")}";

    private static string WriteSpeed(double metersPerSecond) =>
        metersPerSecond < 0.1 ? $"{NumberText.Write(metersPerSecond * 1000)} mm/s" : $"{NumberText.Write(metersPerSecond)} m/s";

    private static string WritePressure(double pascals) =>
        pascals >= 1e9 ? $"{NumberText.Write(pascals / 1e9)} GPa" : $"{NumberText.Write(pascals / 1e6)} MPa";

    private static string WriteTime(double seconds) => seconds is > 0 and < 0.3
        ? $"1/{NumberText.Write(Math.Round(1 / seconds, 1))} s"
        : $"{NumberText.Write(seconds)} s";
}
