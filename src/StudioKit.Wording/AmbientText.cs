using System.Globalization;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Metering;
using StudioKit.Planning;

namespace StudioKit.Wording;

/// <summary>Light of a place in words.</summary>
public static class AmbientText
{
    /// <summary>As an exposure value, e.g. <c>EV 10</c>.</summary>
    public static string Value(ExposureValue light) => "EV " + Figure(light);

    /// <summary>The exposure value without its letters.</summary>
    public static string Figure(ExposureValue light) => Math.Round(light.AtIso100, 1).ToString("0.#", CultureInfo.InvariantCulture);

    /// <summary>The value, and a published scene as bright where the table has one.</summary>
    public static string Of(ExposureValue light) => Scene(light) is { } scene ? $"{Value(light)}, as in {scene}" : Value(light);

    /// <summary>The light that an exposure is made for; of background and subject where they were metered apart.</summary>
    public static string Of(ExposurePlan exposure) => (exposure.SubjectAmbient is { } subject
        ? $"{Value(exposure.Ambient)} on the background, {Value(subject)} on the subject"
        : Of(exposure.Ambient)) + ShelterText.Behind(exposure);

    /// <summary>A published scene as bright, e.g. <c>open shade</c>; none where the table has none.</summary>
    public static string? Scene(ExposureValue light) => Published(light)?.Scene;

    /// <summary>The published scene that is named for a light, with its source; none where the table has none.</summary>
    public static SceneLight? Published(ExposureValue light) => SceneLightTable.All
        .Where(scene => scene.IsOutdoorGround && scene.Lowest.AtIso100 <= light.AtIso100 && light.AtIso100 <= scene.Highest.AtIso100)
        .MinBy(scene => Math.Abs(scene.Typical.AtIso100 - light.AtIso100));
}
