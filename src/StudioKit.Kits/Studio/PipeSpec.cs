using UnitsNet;

namespace StudioKit.Kits.Studio;

/// <summary>A pipe or round tube.</summary>
public sealed record PipeSpec
{
    /// <summary>Name on the shopping list.</summary>
    public string Name { get; init; } = "20 mm PVC-U pipe, 1.5 mm wall";

    /// <summary>Outside diameter.</summary>
    public Length OutsideDiameter { get; init; } = Length.FromMillimeters(20);

    /// <summary>Wall thickness.</summary>
    public Length Wall { get; init; } = Length.FromMillimeters(1.5);

    /// <summary>Density.</summary>
    public Density Density { get; init; } = Density.FromKilogramsPerCubicMeter(1400);

    /// <summary>Mass of a metre as catalogued or weighed; from geometry and density where the kit gives none.</summary>
    public LinearDensity? MassPerLength { get; init; }

    /// <summary>Young's modulus at 23 °C.</summary>
    public Pressure YoungsModulus { get; init; } = Pressure.FromGigapascals(2.9);

    /// <summary>Tensile strength at 23 °C.</summary>
    public Pressure Strength { get; init; } = Pressure.FromMegapascals(51.4);

    /// <summary>Linear thermal expansion.</summary>
    public CoefficientOfThermalExpansion ThermalExpansion { get; init; } = CoefficientOfThermalExpansion.FromPerKelvin(5.2e-5);

    /// <summary>Whether stiffness and strength fall with temperature as PVC's do.</summary>
    public bool SoftensLikePvc { get; init; } = true;
}
