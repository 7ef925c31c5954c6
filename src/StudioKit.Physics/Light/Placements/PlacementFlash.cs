using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light.Lobes;
using UnitsNet;

namespace StudioKit.Physics.Light.Placements;

/// <summary>One way to use a flash under the panel: bare at one zoom setting, or behind one modifier.</summary>
public sealed record PlacementFlash
{
    /// <summary>Name on the sheets, with zoom or modifier.</summary>
    public required string Name { get; init; }

    /// <summary>The beam.</summary>
    public required LightLobe Lobe { get; init; }

    /// <summary>Width of the bright window.</summary>
    public required Length Width { get; init; }

    /// <summary>Height of the bright window.</summary>
    public required Length Height { get; init; }

    /// <summary>Luminous intensity on the axis times time at full power [cd·s]; &gt; 0.</summary>
    public required double FullPowerIntensityTime { get; init; }

    /// <summary>Energy that a full-power flash takes; a share of it counts as that share.</summary>
    public Energy FullPowerEnergy { get; init; } = Energy.FromJoules(60);

    /// <summary>Lowest power setting.</summary>
    public FlashPower LowestPower { get; init; } = new(1.0 / 128);
}
