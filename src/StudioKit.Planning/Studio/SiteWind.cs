using UnitsNet;

namespace StudioKit.Planning.Studio;

/// <summary>The wind that a studio is to stand in.</summary>
/// <param name="Mean">Ten-minute mean at its strongest, as the kit gives it.</param>
/// <param name="Beaufort">Force of that mean on the Beaufort scale [1].</param>
/// <param name="GustFactor">Three-second gust over that mean [1].</param>
public sealed record SiteWind(Speed Mean, int Beaufort, double GustFactor)
{
    /// <summary>Wind behind what is put up against it, over that in the open [1]; 1 where nothing is.</summary>
    public double Left { get; init; } = 1;

    /// <summary>The gust that the frame is checked for.</summary>
    public Speed Gust => Mean * GustOverMean;

    /// <summary>That gust over the mean in the open [1].</summary>
    public double GustOverMean => GustFactor * Left;
}
