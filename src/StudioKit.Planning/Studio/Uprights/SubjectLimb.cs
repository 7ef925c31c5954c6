namespace StudioKit.Planning.Studio.Uprights;

/// <summary>An edge of a subject, as the camera sees it.</summary>
public enum SubjectLimb
{
    /// <summary>Its left edge.</summary>
    Left,

    /// <summary>Its right edge.</summary>
    Right,

    /// <summary>Its upper edge.</summary>
    Upper,

    /// <summary>Its lower edge.</summary>
    Lower,
}
