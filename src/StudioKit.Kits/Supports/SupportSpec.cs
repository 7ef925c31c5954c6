using UnitsNet;

namespace StudioKit.Kits.Supports;

/// <summary>Something that the camera rests on, steadier than the free hand.</summary>
public sealed record SupportSpec
{
    // Slower than a free hand by what practice gains in shutter time (common practice, no source): about three stops on a bag, five on a tripod on soft ground.
    private static readonly Speed OnTripod = Speed.FromMillimetersPerSecond(0.15);
    private static readonly Speed OnRail = Speed.FromMillimetersPerSecond(0.15);
    private static readonly Speed OnBag = Speed.FromMillimetersPerSecond(0.6);
    private static readonly Speed Braced = Speed.FromMillimetersPerSecond(2.5);

    /// <summary>Name on the cards and the pack list; unique among the supports.</summary>
    public required string Name { get; init; }

    /// <summary>What it is.</summary>
    public required SupportKind Kind { get; init; }

    /// <summary>Speed at which the camera on it was measured to sway against the subject; none where it was not.</summary>
    public Speed? MeasuredSway { get; init; }

    /// <summary>Speed at which the camera on it sways against the subject; what is usual for its kind where it was not measured.</summary>
    public Speed Sway => MeasuredSway ?? Kind switch
    {
        SupportKind.Tripod => OnTripod,
        SupportKind.Rail => OnRail,
        SupportKind.BeanBag => OnBag,
        _ => Braced,
    };

    /// <summary>Mass; usual for its kind where the kit gives none.</summary>
    public Mass? Mass { get; init; }

    /// <summary>Longest side as it is packed; with the next two the file's <c>packed: 500 mm x 120 mm x 120 mm</c>.</summary>
    public Length? Length { get; init; }

    /// <summary>Second side.</summary>
    public Length? Width { get; init; }

    /// <summary>Third side.</summary>
    public Length? Depth { get; init; }

    /// <summary>Price where it is to be bought; on hand where the kit gives none.</summary>
    public decimal? Price { get; init; }

    /// <summary>Whether there is anything to carry.</summary>
    public bool IsCarried => Kind != SupportKind.Hand;
}
