namespace StudioKit.Physics.Packing;

/// <summary>Where a mass comes from.</summary>
public enum MassOrigin
{
    /// <summary>Weighed.</summary>
    Weighed,

    /// <summary>From geometry and density.</summary>
    FromGeometry,

    /// <summary>A usual value, neither weighed nor computed.</summary>
    Assumed,
}
