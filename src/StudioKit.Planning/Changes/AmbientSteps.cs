using StudioKit.Physics.Exposure;

namespace StudioKit.Planning.Changes;

/// <summary>Steps of ambient light away from what a set-up is planned for, within what a kit can state.</summary>
internal static class AmbientSteps
{
    /// <summary>How far a card's table of light goes either way, in whole stops.</summary>
    public const int Furthest = 4;

    // What a kit takes for ambient light [EV at ISO 100].
    public const double Darkest = -6;
    public const double Brightest = 18;

    /// <summary>A light so many stops brighter, darker where negative; none beyond what a kit can state.</summary>
    public static ExposureValue? From(ExposureValue light, double stops) =>
        light.AtIso100 + stops is >= Darkest and <= Brightest and var there ? new ExposureValue(there) : null;
}
