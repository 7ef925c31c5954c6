using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Kits.Lighting;

/// <summary>A dome, softbox or flat diffuser before a flash.</summary>
public sealed record ModifierSpec
{
    /// <summary>Name on the sheets; unique among the modifiers.</summary>
    public required string Name { get; init; }

    /// <summary>What it is.</summary>
    public required ModifierKind Kind { get; init; }

    /// <summary>Width of its glowing front; with <see cref="Height"/> the file's <c>size: 120 mm x 90 mm</c>.</summary>
    public Length Width { get; init; } = Length.FromMillimeters(80);

    /// <summary>Height of its glowing front.</summary>
    public Length Height { get; init; } = Length.FromMillimeters(50);

    /// <summary>Share of the flash's light that comes out of it [1]; above 0, at most 1.</summary>
    public double Transmittance { get; init; } = 0.85;

    /// <summary>Exponent n of its cosⁿ lobe [1]; 1 is Lambertian.</summary>
    public double LobeExponent { get; init; } = 1;

    /// <summary>How the light that leaves it was measured to spread; a cosⁿ lobe or half ball where the kit has no such file.</summary>
    public LightDistribution? LightDistribution { get; init; }

    /// <summary>Whether a dome is a half ball, which shines sideways and backwards too: I₀(1 + cos θ)/2 in place of a cosⁿ lobe.</summary>
    public bool HalfBall { get; init; }

    /// <summary>On-axis loss as measured, a positive number of stops; computed from the two beams where the kit gives none.</summary>
    public Stops? Loss { get; init; }

    /// <summary>Sheet it is folded or cut from, matched with the stock's sheets; none where it is bought.</summary>
    public string? MadeFrom { get; init; }

    /// <summary>Front of the flash to the glowing front of a softbox that is folded.</summary>
    public Length Reach { get; init; } = Length.FromMillimeters(120);

    /// <summary>Mass; none where it was not given.</summary>
    public Mass? Mass { get; init; }
}
