namespace StudioKit.Physics.Exposure.Metering;

/// <summary>What a camera's flash meter sees of a scene by the light of one flash.</summary>
public sealed record MeteredFlashCase
{
    /// <summary>Share of the metered field that the subject covers [1]; 0 to 1.</summary>
    public required double SubjectShare { get; init; }

    /// <summary>Mean reflectance of the subject [1]; above 0, at most 1.</summary>
    public required double SubjectReflectance { get; init; }

    /// <summary>Light of the flash on the subject that is wanted, against correct exposure.</summary>
    public required Stops SubjectLevel { get; init; }

    /// <summary>Mean reflectance of the background [1]; 0 to 1.</summary>
    public required double BackgroundReflectance { get; init; }

    /// <summary>Light of the flash that falls on the background then, against correct exposure.</summary>
    public required Stops BackgroundLevel { get; init; }
}
