namespace StudioKit.Physics.Packing;

/// <summary>Where a mass comes from.</summary>
public enum MassBasis
{
    /// <summary>Weighed.</summary>
    Weighed,

    /// <summary>From geometry and density.</summary>
    Geometry,

    /// <summary>A usual value, neither weighed nor computed.</summary>
    Usual,
}
