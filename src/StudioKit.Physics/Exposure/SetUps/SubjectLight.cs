using StudioKit.Physics.Exposure.Flashes;

namespace StudioKit.Physics.Exposure.SetUps;

/// <summary>A flash on the subject and its share of the light.</summary>
/// <param name="Flash">The flash; its distance is counted to the subject.</param>
/// <param name="Level">Its level against the main light, 0 for the main light itself; a fill is negative.</param>
public sealed record SubjectLight(FlashCase Flash, Stops Level = default);
