using StudioKit.Physics.Exposure;

namespace StudioKit.Planning.Advising;

/// <summary>What to set in another light of the place.</summary>
public sealed record LightStep
{
    /// <summary>The brightest light that it goes for.</summary>
    public required ExposureValue Brightest { get; init; }

    /// <summary>The darkest light that it goes for.</summary>
    public required ExposureValue Darkest { get; init; }

    /// <summary>Shutter speed that a meter names in the brightest of them at the card's own ISO and f-number.</summary>
    public required ShutterSpeed ReadsInBrightest { get; init; }

    /// <summary>Shutter speed that a meter names in the darkest of them.</summary>
    public required ShutterSpeed ReadsInDarkest { get; init; }

    /// <summary>Whether the light that the card is made for is among them.</summary>
    public required bool IsPlanned { get; init; }

    /// <summary>What to set.</summary>
    public required Advice Advice { get; init; }

    /// <summary>Stops of shade that bring it back to a light in which the exposure works; none where no shade is needed, or none helps.</summary>
    public Stops? Shade { get; init; }

    /// <summary>What to set on the steadiest thing in the bag, where what the camera rests on is too unsteady; none where that will do, or nothing steadier helps.</summary>
    public Advice? Steadied { get; init; }
}
