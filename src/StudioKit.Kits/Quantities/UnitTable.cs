namespace StudioKit.Kits.Quantities;

/// <summary>Every unit symbol that a kit may use.</summary>
/// <remarks>
/// The dimension's own units: mm, g, °, s, m/s, stops, lx, 1/m, °C, K, N, N·m/rad, J, kg/m³, kg/m², kg/m, Pa, V, mAh, 1/K, pt. Lengths are kept in mm and masses in g
/// so that the numbers people write survive unchanged. Inch and pound are exact by definition (yard and pound agreement of 1959).
/// </remarks>
internal static class UnitTable
{
    public const double MillimetersPerInch = 25.4;
    public const double GramsPerPound = 453.59237;
    public const double StandardGravity = 9.80665;
    private const double MetersPerFoot = 0.3048;
    private const double PascalsPerPsi = GramsPerPound / 1000 * StandardGravity / (0.0254 * 0.0254);

    public static readonly Unit[] All =
    [
        .. Of(UnitDimension.Length, ("mm", 1), ("cm", 10), ("m", 1000), ("km", 1e6), ("µm", 1e-3), ("μm", 1e-3), ("um", 1e-3), ("nm", 1e-6),
            ("in", MillimetersPerInch), ("\"", MillimetersPerInch), ("″", MillimetersPerInch), ("inch", MillimetersPerInch),
            ("inches", MillimetersPerInch), ("ft", 304.8), ("'", 304.8), ("′", 304.8), ("foot", 304.8), ("feet", 304.8), ("yd", 914.4), ("metres", 1000), ("meters", 1000)),
        .. Of(UnitDimension.Mass, ("g", 1), ("kg", 1000), ("mg", 1e-3), ("t", 1e6),
            ("oz", GramsPerPound / 16), ("lb", GramsPerPound), ("lbs", GramsPerPound)),
        .. Of(UnitDimension.Angle, ("°", 1), ("deg", 1), ("rad", 180 / Math.PI), ("degrees", 1), ("degree", 1)),
        .. Of(UnitDimension.Time, ("s", 1), ("ms", 1e-3), ("µs", 1e-6), ("μs", 1e-6), ("us", 1e-6), ("sec", 1), ("min", 60), ("h", 3600), ("d", 86400)),
        .. Of(UnitDimension.Speed, ("m/s", 1), ("mm/s", 1e-3), ("cm/s", 1e-2), ("km/h", 1 / 3.6), ("mph", 0.44704), ("ft/s", MetersPerFoot),
            ("in/s", 0.0254), ("kn", 1852.0 / 3600)),
        .. Of(UnitDimension.LightRatio, ("stops", 1), ("stop", 1)),
        .. Of(UnitDimension.Illuminance, ("lx", 1), ("klx", 1000), ("lux", 1)),
        .. Of(UnitDimension.OpticalPower, ("dpt", 1), ("D", 1), ("dioptres", 1), ("dioptre", 1), ("diopters", 1), ("diopter", 1), ("1/m", 1)),
        new("°C", UnitDimension.Temperature, 1), new("degC", UnitDimension.Temperature, 1),
        new("°F", UnitDimension.Temperature, 1 / 1.8, -32 / 1.8), new("degF", UnitDimension.Temperature, 1 / 1.8, -32 / 1.8),
        new("K", UnitDimension.Temperature, 1, -273.15),
        .. Of(UnitDimension.TemperatureDifference, ("K", 1), ("°C", 1), ("degC", 1), ("°F", 1 / 1.8), ("degF", 1 / 1.8)),
        .. Of(UnitDimension.Force, ("N", 1), ("kN", 1000), ("kgf", StandardGravity), ("lbf", GramsPerPound / 1000 * StandardGravity)),
        .. Of(UnitDimension.JointStiffness, ("N·m/rad", 1), ("N m/rad", 1), ("Nm/rad", 1), ("N·m/°", 180 / Math.PI), ("Nm/°", 180 / Math.PI), ("Nm/deg", 180 / Math.PI)),
        .. Of(UnitDimension.Energy, ("J", 1), ("kJ", 1000), ("Ws", 1), ("W·s", 1), ("Wh", 3600)),
        .. Of(UnitDimension.Density, ("kg/m³", 1), ("kg/m3", 1), ("kg/m^3", 1), ("g/cm³", 1000), ("g/cm3", 1000), ("g/cm^3", 1000), ("kg/l", 1000),
            ("lb/ft³", PoundsPerCubicFoot), ("lb/ft3", PoundsPerCubicFoot)),
        .. Of(UnitDimension.AreaDensity, ("kg/m²", 1), ("kg/m2", 1), ("kg/m^2", 1), ("g/m²", 1e-3), ("g/m2", 1e-3), ("g/m^2", 1e-3),
            ("oz/yd²", GramsPerPound / 16000 / (0.9144 * 0.9144)), ("oz/yd2", GramsPerPound / 16000 / (0.9144 * 0.9144))),
        .. Of(UnitDimension.LinearDensity, ("kg/m", 1), ("g/m", 1e-3), ("lb/ft", GramsPerPound / 1000 / MetersPerFoot)),
        .. Of(UnitDimension.Pressure, ("Pa", 1), ("kPa", 1e3), ("MPa", 1e6), ("GPa", 1e9), ("N/mm²", 1e6), ("N/mm2", 1e6),
            ("psi", PascalsPerPsi), ("ksi", PascalsPerPsi * 1000)),
        .. Of(UnitDimension.Voltage, ("V", 1), ("mV", 1e-3)),
        .. Of(UnitDimension.Charge, ("mAh", 1), ("Ah", 1000)),
        .. Of(UnitDimension.Expansion, ("/K", 1), ("1/K", 1), ("/°C", 1), ("1/°C", 1), ("ppm/K", 1e-6), ("ppm/°C", 1e-6), ("µm/(m·K)", 1e-6),
            ("um/(m K)", 1e-6), ("mm/(m·K)", 1e-3), ("mm/(m K)", 1e-3), ("/°F", 1.8), ("1/°F", 1.8)),
        .. Of(UnitDimension.TypeSize, ("pt", 1)),
        .. Of(UnitDimension.Share, ("%", 0.01)),
    ];

    private const double PoundsPerCubicFoot = GramsPerPound / 1000 / (MetersPerFoot * MetersPerFoot * MetersPerFoot);

    /// <summary>The longest symbol that stands whole at a place in a text; none where no known symbol does.</summary>
    /// <remarks>A symbol may serve two dimensions, as °C a temperature and a difference of two: then the wanted one counts.</remarks>
    public static Unit? At(string text, int position, UnitDimension wanted)
    {
        Unit? best = null;
        foreach (var unit in All)
        {
            if (string.CompareOrdinal(text, position, unit.Symbol, 0, unit.Symbol.Length) == 0
                && EndsThere(text, position + unit.Symbol.Length, unit.Symbol)
                && (unit.Symbol.Length > (best?.Symbol.Length ?? 0) || (unit.Symbol == best!.Symbol && unit.Dimension == wanted)))
            {
                best = unit;
            }
        }

        return best;
    }

    /// <summary>The longest symbol of a dimension that a text ends with; none where it ends with none.</summary>
    public static Unit? AtEnd(string text, UnitDimension dimension) =>
        All.Where(unit => unit.Dimension == dimension && text.EndsWith(unit.Symbol, StringComparison.Ordinal)).MaxBy(unit => unit.Symbol.Length);

    /// <summary>Every symbol of a dimension, the one that a bare number most likely stands for first.</summary>
    public static IEnumerable<string> Symbols(UnitDimension dimension) =>
        All.Where(unit => unit.Dimension == dimension).Select(unit => unit.Symbol).Prepend(dimension.Guess).Distinct(StringComparer.Ordinal);

    /// <summary>A symbol that differs from what was written only in its letters' case.</summary>
    public static string? Recased(string written, UnitDimension dimension) =>
        Array.Find(All, unit => unit.Dimension == dimension && unit.Symbol.Equals(written, StringComparison.OrdinalIgnoreCase))?.Symbol;

    private static bool EndsThere(string text, int end, string symbol)
    {
        if (end >= text.Length || text[end] == ' ')
        {
            return true;
        }

        // 5'3" and 5ft3in: a number may follow a unit at once, but not one that could be an exponent, as in kg/m3.
        return char.IsAsciiDigit(text[end]) && !symbol.Contains('/', StringComparison.Ordinal);
    }

    private static Unit[] Of(UnitDimension dimension, params (string Symbol, double Factor)[] units) =>
        Array.ConvertAll(units, unit => new Unit(unit.Symbol, dimension, unit.Factor));
}
