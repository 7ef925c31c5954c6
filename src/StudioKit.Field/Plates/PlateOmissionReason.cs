namespace StudioKit.Field.Plates;

/// <summary>Why no plate shows a frame.</summary>
public enum PlateOmissionReason
{
    /// <summary>Its file is not at hand.</summary>
    NoFile,

    /// <summary>Its file cannot be read.</summary>
    Unreadable,

    /// <summary>Neither the log nor a sidecar gives its scale.</summary>
    NoScale,
}
