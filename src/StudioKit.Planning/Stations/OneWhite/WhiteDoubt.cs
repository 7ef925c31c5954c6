using StudioKit.Physics.Exposure;
using StudioKit.Physics.Sources;
using StudioKit.Planning.Advising;
using StudioKit.Planning.Changes;

namespace StudioKit.Planning.Stations.OneWhite;

/// <summary>How well the margin of a measured station is known once it is set otherwise than when it was measured.</summary>
internal static class WhiteDoubt
{
    // Flashes repeat to a twentieth of a stop, and so do speeds; a diaphragm stops down to a tenth (common practice, no source).
    private const double FlashRepeats = 0.05;
    private const double OtherSpeed = 0.05;
    private const double OtherOpening = 0.1;

    /// <summary>Of a margin as the card is set.</summary>
    public static Stops Now(MeasuredStation station) => Of(station, station.Exposure.Iso, station.Exposure.Aperture, []);

    /// <summary>Of a margin after advice.</summary>
    public static Stops After(MeasuredStation station, Advice advice) => Of(station, advice.Promise.Iso, advice.Promise.Aperture, advice.Changes);

    // What was measured holds flash, sheet and camera in one; only what is turned since then is in doubt beside it.
    [Source("Gum", "5.1.2: independent quantities")]
    private static Stops Of(MeasuredStation station, IsoSpeed iso, FNumber aperture, IEnumerable<KitChange> changes)
    {
        double[] parts =
        [
            station.Uncertainty.Value,
            FlashRepeats,
            IsOther((station.Frame.Shot.Iso ?? station.Exposure.Iso).Value, iso.Value) ? OtherSpeed : 0,
            IsOther((station.Frame.Shot.Aperture ?? station.Exposure.Aperture).Value, aperture.Value) ? OtherOpening : 0,
            .. changes.Select(ByHand),
        ];
        return new Stops(Math.Sqrt(parts.Sum(part => part * part)));
    }

    private static bool IsOther(double measured, double set) => Math.Abs(Math.Log2(measured / set)) > 0.01;

    // Whatever else is moved, put on or added by hand counts as a place or as something before a flash.
    private static double ByHand(KitChange change) => change switch
    {
        { IsDoneByHand: false } => 0,
        KitChange.Move => 2 * Math.Log2(1 + LightUncertainty.Usual.DistanceShare),
        _ => LightUncertainty.Usual.Modifier.Value,
    };
}
