namespace StudioKit.Kits.Cameras;

/// <summary>What a filter is for.</summary>
public enum FilterKind
{
    /// <summary>A circular polariser.</summary>
    Polariser,

    /// <summary>A neutral-density filter.</summary>
    NeutralDensity,
}
