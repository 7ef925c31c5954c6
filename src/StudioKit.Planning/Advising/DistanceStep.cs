using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Planning.Advising;

/// <summary>A distance of a flash and what a plan of the studio with the flash there asks for.</summary>
/// <param name="Distance">Distance of the flash.</param>
/// <param name="Power">Its power there.</param>
/// <param name="Advice">The change, and the exposure that comes of it.</param>
/// <param name="IsPlanned">Whether it is the distance of the card.</param>
public sealed record DistanceStep(Length Distance, DialMark Power, Advice Advice, bool IsPlanned)
{
    /// <summary>Share of full power that the same exposure asks for from there, before it is rounded to a click [1]; above 0, at most 1.</summary>
    public required double ExactShare { get; init; }
}
