using UnitsNet;

namespace StudioKit.Physics.Light.Placements;

/// <summary>One place for one or two flashes, with all that is chosen along with it.</summary>
/// <param name="Flash">Zoom setting or modifier.</param>
/// <param name="Count">Number of flashes; 1 or 2.</param>
/// <param name="Surround">Ground, skirts and frame.</param>
/// <param name="PanelHeight">Ground to the sheet's underside.</param>
/// <param name="Distance">Window to the sheet's flat part, straight up.</param>
/// <param name="OffsetRight">Right of the panel's middle; two flashes stand so far on both sides.</param>
/// <param name="OffsetBack">Beyond the panel's middle.</param>
/// <param name="Target">Place on the sheet that the axis is aimed at; straight up where there is none.</param>
public sealed record PlacementCandidate(
    PlacementFlash Flash,
    int Count,
    LightSurround Surround,
    Length PanelHeight,
    Length Distance,
    Length OffsetRight,
    Length OffsetBack,
    Position? Target)
{
    /// <summary>The flashes at a share of full power.</summary>
    /// <param name="power">Share of full power [1]; ≥ 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is negative or not finite.</exception>
    public IReadOnlyList<Emitter> Emitters(double power)
    {
        Guard.NonNegative(power);
        return Count == 1 ? [Emitter(OffsetRight.Meters, power)] : [Emitter(OffsetRight.Meters, power), Emitter(-OffsetRight.Meters, power)];
    }

    private Emitter Emitter(double right, double power)
    {
        var centre = new Position(right, OffsetBack.Meters, PanelHeight.Meters - Distance.Meters);
        return new Emitter
        {
            Centre = centre,
            Orientation = Target is { } target ? Orientation.AimedAt(centre, target) : Orientation.FacingUp,
            Width = Flash.Width,
            Height = Flash.Height,
            Lobe = Flash.Lobe,
            AxialIntensityTime = Flash.FullPowerIntensityTime * power,
        };
    }
}
