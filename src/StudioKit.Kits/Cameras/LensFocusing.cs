namespace StudioKit.Kits.Cameras;

/// <summary>How a lens focuses.</summary>
public enum LensFocusing
{
    /// <summary>The whole lens moves forward; the focal length stays.</summary>
    Unit,

    /// <summary>Groups move inside; the focal length shortens as it focuses closer.</summary>
    Internal,
}
