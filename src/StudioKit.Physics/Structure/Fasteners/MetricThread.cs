namespace StudioKit.Physics.Structure.Fasteners;

/// <summary>Metric screw threads, coarse pitch, of the sizes that a hardware shop has.</summary>
public enum MetricThread
{
    /// <summary>5 mm.</summary>
    M5,

    /// <summary>6 mm.</summary>
    M6,

    /// <summary>8 mm.</summary>
    M8,
}
