namespace StudioKit.Kits;

/// <summary>How an uncertainty is counted.</summary>
public enum UncertaintyKind
{
    /// <summary>In the SI unit of the value: m, kg, rad, s, m/s, K, Pa, 1/m, kg/m³, V, C; in 1 for a ratio.</summary>
    Absolute,

    /// <summary>As a share of the value [1].</summary>
    Relative,

    /// <summary>In stops.</summary>
    InStops,
}
