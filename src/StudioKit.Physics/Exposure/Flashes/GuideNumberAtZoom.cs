namespace StudioKit.Physics.Exposure.Flashes;

/// <summary>A guide number for the zoom in use, and how it was come by.</summary>
/// <param name="GuideNumber">Guide number at full power and ISO 100; its zoom is the one in use, none where neither is known.</param>
public sealed record GuideNumberAtZoom(GuideNumber GuideNumber)
{
    /// <summary>The listed number that it was made from; none where it is listed itself or lies between two that are.</summary>
    public GuideNumber? MadeFrom { get; init; }

    /// <summary>How far the light may lie to either side of it for want of a number for this zoom; 0 stops or more.</summary>
    public Stops Doubt { get; init; }
}
