using StudioKit.Physics.Structure.Frames;
using UnitsNet;

namespace StudioKit.Planning.Studio.Frames;

/// <summary>The strips that the panel rests on, as they are bought and what they weigh.</summary>
internal static class StripsToBuy
{
    // A strip of solid rubber 10 mm wide on a rail, or a rigid angle of two legs 2 mm thick beside it (common practice, no source).
    public static readonly Length PadWidth = Length.FromMillimeters(10);
    public static readonly Length LedgeThickness = Length.FromMillimeters(2);
    private const double RubberDensity = 1200;
    private const double LedgeDensity = 1400;

    /// <summary>Mass of all of them.</summary>
    public static Mass MassOf(PanelLedge ledge) => Mass.FromKilograms(ledge.RestLength.Meters * (ledge.Seat == PanelSeat.OverRails
        ? RubberDensity * PadWidth.Meters * ledge.Pad.Meters
        : LedgeDensity * 2 * LedgeThickness.Meters * ledge.Bearing.Meters));
}
