namespace StudioKit.Planning;

/// <summary>Where a mass comes from.</summary>
public enum MassOrigin
{
    /// <summary>The kit gives it.</summary>
    Weighed,

    /// <summary>Computed from geometry and density.</summary>
    FromGeometry,

    /// <summary>A usual value stands in; weigh it.</summary>
    Assumed,
}
