using StudioKit.Physics.Light.Standing;
using UnitsNet;

namespace StudioKit.Kits.SetUps;

/// <summary>From where a light comes where a kit does not say (common practice, no source).</summary>
/// <remarks>
/// Over a sheet from the left, as scientific illustration has it, and halfway up, where neither a lens that looks down nor one that looks level stands in
/// its way. A key from the left before the subject and halfway up; a fill on its other side, nearer the lens; a rim behind the subject, across from the key.
/// </remarks>
internal static class UsualDirections
{
    public static LightDirection Of(LightRole role) => role switch
    {
        LightRole.Above => At(-90, 45),
        LightRole.Key => At(-45, 45),
        LightRole.Fill => At(30, 45),
        LightRole.Rim => At(150, 30),
        _ => throw new ArgumentOutOfRangeException(nameof(role), role, "A light that stands in no direction from the subject."),
    };

    private static LightDirection At(double azimuth, double elevation) => new(Angle.FromDegrees(azimuth), Angle.FromDegrees(elevation));
}
