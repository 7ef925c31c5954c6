using StudioKit.Planning;

namespace StudioKit.Wording;

/// <summary>What the camera rests on, in words.</summary>
internal static class SupportText
{
    /// <summary>A support behind what else is said of how the camera stands; nothing for the free hand.</summary>
    public static string Behind(ExposurePlan exposure) => exposure.Support is { } support ? $"; on the {support}" : "";
}
