namespace StudioKit.Physics.Optics;

/// <summary>What takes most of a feature's contrast.</summary>
public enum FeatureLimit
{
    /// <summary>Pixels too large for its spacing.</summary>
    Pixels,

    /// <summary>Diffraction at the aperture.</summary>
    Diffraction,

    /// <summary>Smear by hand, subject or flash.</summary>
    Smear,

    /// <summary>Its own faintness.</summary>
    Faintness,

    /// <summary>Defocus over its relief.</summary>
    Defocus,
}
