using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;

namespace StudioKit.Planning.Changes;

/// <summary>A set-up in another light of its place.</summary>
internal static class SceneLights
{
    /// <summary>The set-up in that light; a subject metered apart gets as much more or less of it as its background.</summary>
    public static SetUpSpec In(SetUpSpec setUp, ExposureValue light) => setUp with
    {
        Ambient = light,
        SubjectAmbient = setUp is { SubjectAmbient: { } subject, Ambient: { } before }
            ? new ExposureValue(Math.Clamp(subject.AtIso100 + light.AtIso100 - before.AtIso100, AmbientSteps.Darkest, AmbientSteps.Brightest))
            : setUp.SubjectAmbient,
    };
}
