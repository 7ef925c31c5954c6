using StudioKit.Physics.Light.Lobes;
using UnitsNet;

namespace StudioKit.Kits.Lighting;

/// <summary>How the light of a flash, or of what is before it, was measured to spread: the shape of its beam alone.</summary>
/// <remarks>
/// How bright it is stays with the guide number. A text in candelas of a lamp of so many lumens says nothing of a flash, and candelas as measured are those of steady
/// light, where a flash gives candela-seconds; so of both kinds of text only the candelas relative to the axis are taken.
/// </remarks>
/// <param name="Name">Name of its file beside the kit, without its ending.</param>
/// <param name="Lobe">Its beam.</param>
/// <param name="IsAbsolute">Whether the file has candelas as they were measured, rather than of a lamp of so many lumens.</param>
public sealed record LightDistribution(string Name, TabulatedLobe Lobe, bool IsAbsolute)
{
    /// <summary>Name of the file in its folder.</summary>
    public string FileName => Name + PartsLibrary.EndingOf(PartsLibrary.LightDistributions);

    /// <summary>Full width of the beam across at half intensity.</summary>
    public Angle BeamWidth => Lobe.HalfIntensityAngle(Angle.Zero);

    /// <summary>Full height of the beam at half intensity.</summary>
    public Angle BeamHeight => Lobe.HalfIntensityAngle(Angle.FromDegrees(90));
}
