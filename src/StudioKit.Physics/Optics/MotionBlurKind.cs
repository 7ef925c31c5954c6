namespace StudioKit.Physics.Optics;

/// <summary>What smears a picture.</summary>
public enum MotionBlurKind
{
    /// <summary>The hand that holds the camera, while the shutter lets ambient light in.</summary>
    Hand,

    /// <summary>The subject's own movement, while the shutter lets ambient light in.</summary>
    Subject,

    /// <summary>Both of them, while the flash burns.</summary>
    Flash,
}
