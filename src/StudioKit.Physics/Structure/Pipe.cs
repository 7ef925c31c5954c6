using UnitsNet;

namespace StudioKit.Physics.Structure;

/// <summary>A round pipe or tube with what its material bears at 23 °C.</summary>
/// <param name="OutsideDiameter">Outside diameter; &gt; 0.</param>
/// <param name="Wall">Wall thickness; above 0, at most half the outside diameter.</param>
/// <param name="Density">Density of the material; &gt; 0.</param>
/// <param name="YoungsModulus">Young's modulus at 23 °C; &gt; 0.</param>
/// <param name="Strength">Tensile strength (yield for a metal) at 23 °C; &gt; 0.</param>
/// <param name="ThermalExpansion">Linear thermal expansion; ≥ 0.</param>
/// <param name="SoftensLikePvc">Whether stiffness and strength fall with temperature as PVC's do.</param>
/// <param name="MassPerLength">Mass of a metre as catalogued or weighed; from geometry and density where none is given.</param>
public sealed record Pipe(
    Length OutsideDiameter,
    Length Wall,
    Density Density,
    Pressure YoungsModulus,
    Pressure Strength,
    CoefficientOfThermalExpansion ThermalExpansion,
    bool SoftensLikePvc = true,
    LinearDensity? MassPerLength = null);
