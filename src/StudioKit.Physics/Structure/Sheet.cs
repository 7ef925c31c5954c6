using UnitsNet;

namespace StudioKit.Physics.Structure;

/// <summary>The sheet a panel is cut from.</summary>
public sealed record Sheet
{
    /// <summary>Nominal thickness; &gt; 0.</summary>
    public required Length Thickness { get; init; }

    /// <summary>How it was made.</summary>
    public SheetMaking Making { get; init; } = SheetMaking.Cast;

    /// <summary>Density; &gt; 0.</summary>
    public Density Density { get; init; } = Density.FromKilogramsPerCubicMeter(1190);

    /// <summary>Young's modulus; &gt; 0.</summary>
    public Pressure YoungsModulus { get; init; } = Pressure.FromGigapascals(3.2);

    /// <summary>Poisson's ratio [1]; 0 to 0.5.</summary>
    public double PoissonRatio { get; init; } = 0.37;

    /// <summary>Bending stress that it bears for long without crazing; &gt; 0.</summary>
    public Pressure LongTermStress { get; init; } = Pressure.FromMegapascals(5);

    /// <summary>Bending stress that it bears for a moment, a third of its flexural strength; &gt; 0.</summary>
    public Pressure ShortTermStress { get; init; } = Pressure.FromMegapascals(37);

    /// <summary>Linear thermal expansion; ≥ 0.</summary>
    public CoefficientOfThermalExpansion ThermalExpansion { get; init; } = CoefficientOfThermalExpansion.FromPerKelvin(7.2e-5);

    /// <summary>Smallest radius it bends to cold, in thicknesses [1]; &gt; 0.</summary>
    public double ColdBendRatio { get; init; } = 330;
}
