namespace StudioKit.Kits.Quantities;

/// <summary>What a unit measures, with the words that messages use for it.</summary>
/// <param name="Noun">With its article, e.g. <c>a length</c>.</param>
/// <param name="Guess">Unit that a bare number most likely stands for.</param>
/// <param name="Example">A value as people write it.</param>
/// <param name="Adds">Whether two units may stand together, as in <c>5 ft 3 in</c>.</param>
internal sealed record UnitDimension(string Noun, string Guess, string Example, bool Adds = false)
{
    public static readonly UnitDimension Length = new("a length", "mm", "305 mm", Adds: true);
    public static readonly UnitDimension Mass = new("a mass", "g", "850 g", Adds: true);
    public static readonly UnitDimension Angle = new("an angle", "°", "60°");
    public static readonly UnitDimension Time = new("a time", "s", "1/125 s", Adds: true);
    public static readonly UnitDimension Speed = new("a speed", "m/s", "6 m/s");
    public static readonly UnitDimension LightRatio = new("a number of stops", "stops", "+1/3 stop");
    public static readonly UnitDimension Illuminance = new("an illuminance", "lx", "10000 lx");
    public static readonly UnitDimension OpticalPower = new("an optical power", "dpt", "+3 dpt");
    public static readonly UnitDimension Temperature = new("a temperature", "°C", "25 °C");
    public static readonly UnitDimension TemperatureDifference = new("a difference of temperature", "K", "10 K");
    public static readonly UnitDimension Force = new("a force", "N", "30 N");
    public static readonly UnitDimension JointStiffness = new("a stiffness of a joint", "N·m/rad", "50 N·m/rad");
    public static readonly UnitDimension Energy = new("an energy", "J", "75 J");
    public static readonly UnitDimension Density = new("a density", "kg/m³", "1190 kg/m³");
    public static readonly UnitDimension AreaDensity = new("a mass per area", "g/m²", "100 g/m²");
    public static readonly UnitDimension LinearDensity = new("a mass per length", "g/m", "122 g/m");
    public static readonly UnitDimension Pressure = new("a stress or modulus", "MPa", "3.2 GPa");
    public static readonly UnitDimension Voltage = new("a voltage", "V", "1.2 V");
    public static readonly UnitDimension Charge = new("a charge", "mAh", "2000 mAh");
    public static readonly UnitDimension Expansion = new("a thermal expansion", "/K", "7.2e-5 /K");
    public static readonly UnitDimension TypeSize = new("a size of type", "pt", "18 pt");
    public static readonly UnitDimension Share = new("a ratio", "%", "0.5");
}
