using StudioKit.Physics.Light.Lobes;

namespace StudioKit.Physics.Light.Solving;

/// <summary>What leaves the top of the sheet: straight light in its scatter lobe, reflected light evenly.</summary>
internal sealed class PanelExit(LightPanel panel)
{
    private readonly ScatterLobe _lobe = new(panel.ScatterExponent);
    private readonly double _transmittance = panel.Transmittance;

    /// <summary>Luminance·time from light that comes from all round [cd·s/m²].</summary>
    public double Even(double exposure) => _transmittance * exposure / Math.PI;

    /// <summary>Luminance·time from one flash's straight light [cd·s/m²].</summary>
    public double Straight(double exposure, Position flash, Position place, Direction normal, Direction towards)
    {
        if (_lobe.IsLambertian)
        {
            return Even(exposure);
        }

        var onward = Direction.From(flash, place);
        return _transmittance * exposure * _lobe.PerExitance(onward.Dot(normal), onward.Dot(towards));
    }
}
