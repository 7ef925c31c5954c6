namespace StudioKit.Physics.Exposure.Metering;

/// <summary>How bright one kind of place is.</summary>
/// <param name="Scene">The place and its light, e.g. <c>forest interior</c>.</param>
/// <param name="Lowest">Darkest usual exposure value at ISO 100.</param>
/// <param name="Highest">Brightest usual exposure value at ISO 100.</param>
/// <param name="SourceKey">Key of the source in the bibliography.</param>
/// <param name="SourceLocator">Where in the source.</param>
public sealed record SceneLight(
    string Scene, ExposureValue Lowest, ExposureValue Highest, string SourceKey, string SourceLocator)
{
    /// <summary>Whether it is outdoor ground, on which a subject may stand, and neither sky nor room.</summary>
    public bool IsOutdoorGround { get; init; }

    /// <summary>Middle of the range.</summary>
    public ExposureValue Typical => new((Lowest.AtIso100 + Highest.AtIso100) / 2);
}
