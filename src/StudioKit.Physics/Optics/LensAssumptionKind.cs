namespace StudioKit.Physics.Optics;

/// <summary>What had to be assumed of a lens because it was not given.</summary>
public enum LensAssumptionKind
{
    /// <summary>Front glass to mount at infinity focus [m].</summary>
    FrontGlassToMount,

    /// <summary>Separation of the principal planes, rear behind front, at infinity focus [m].</summary>
    PrincipalPlanes,

    /// <summary>Exit over entrance pupil diameter [1].</summary>
    PupilRatio,

    /// <summary>Focal length at the closest focus of an internal-focusing lens [m].</summary>
    FocalLengthCloseUp,

    /// <summary>How much the entrance pupil of an internal-focusing lens grows as it focuses closer [stops].</summary>
    PupilWhileFocusing,
}
