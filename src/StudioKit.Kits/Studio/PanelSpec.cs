using StudioKit.Physics;
using StudioKit.Physics.Structure;
using UnitsNet;

namespace StudioKit.Kits.Studio;

/// <summary>The translucent sheet the subject stands on.</summary>
public sealed record PanelSpec
{
    /// <summary>Material as named on the shopping list.</summary>
    public string Material { get; init; } = "white opal acrylic";

    /// <summary>Side across the camera's view; computed from the framings where the kit gives none.</summary>
    public Length? Width { get; init; }

    /// <summary>Side along the camera's view.</summary>
    public Length? Depth { get; init; }

    /// <summary>Thickness.</summary>
    public Length Thickness { get; init; } = Length.FromMillimeters(3);

    /// <summary>Sheet kept beyond the visible field on every side.</summary>
    public Length Margin { get; init; } = Length.FromMillimeters(30);

    /// <summary>Total luminous transmittance [1]; above 0, at most 1.</summary>
    public double Transmittance { get; init; } = 0.5;

    /// <summary>Exponent of the lobe that leaves the top, luminance ∝ cosˢ [1]; 0 is Lambertian, more is a poorer diffuser.</summary>
    public double ScatterExponent { get; init; }

    /// <summary>Diffuse reflectance of the underside [1]; 0 to 1.</summary>
    public double UndersideReflectance { get; init; } = 0.35;

    /// <summary>Whether white skirts close the space under the panel.</summary>
    public bool Skirts { get; init; }

    /// <summary>Diffuse reflectance of the skirts [1]; 0 to 1.</summary>
    public double SkirtReflectance { get; init; } = 0.8;

    /// <summary>Mass of a square metre of skirt.</summary>
    public AreaDensity SkirtArealMass { get; init; } = AreaDensity.FromKilogramsPerSquareMeter(0.1);

    /// <summary>Density.</summary>
    public Density Density { get; init; } = Density.FromKilogramsPerCubicMeter(1190);

    /// <summary>Young's modulus.</summary>
    public Pressure YoungsModulus { get; init; } = Pressure.FromGigapascals(3.2);

    /// <summary>Poisson's ratio [1]; 0 to 0.5.</summary>
    public double PoissonRatio { get; init; } = 0.37;

    /// <summary>Bending stress that it bears for long without crazing.</summary>
    public Pressure LongTermStress { get; init; } = Pressure.FromMegapascals(5);

    /// <summary>Bending stress that it bears for a moment, a third of its flexural strength (ISO 178).</summary>
    public Pressure ShortTermStress { get; init; } = Pressure.FromMegapascals(37);

    /// <summary>How the sheet was made; how thin it may be by its standard depends on it.</summary>
    public SheetMaking Making { get; init; } = SheetMaking.Cast;

    /// <summary>Linear thermal expansion.</summary>
    public CoefficientOfThermalExpansion ThermalExpansion { get; init; } = CoefficientOfThermalExpansion.FromPerKelvin(7.2e-5);

    /// <summary>What crazes or clouds it, so that nobody cleans it with that.</summary>
    public ValueList<SheetHarm> HarmedBy { get; init; } = [SheetHarm.Alcohol, SheetHarm.Solvents];

    /// <summary>Smallest radius it bends to cold, in thicknesses [1].</summary>
    public double ColdBendRatio { get; init; } = 330;

    /// <summary>Push of an elbow leant on the panel or a rail (common practice, no source).</summary>
    public Force ElbowLoad { get; init; } = Force.FromNewtons(30);

    /// <summary>Whether its top mirrors a light.</summary>
    public SheetFinish Finish { get; init; }

    /// <summary>Mass of the heaviest subject with the box that holds it, which counts for more than most subjects (common practice, no source).</summary>
    public Mass SubjectInBox { get; init; } = UnitsNet.Mass.FromGrams(200);

    /// <summary>Radius of the swept back; a flat panel where the kit gives none.</summary>
    public Length? SweepRadius { get; init; }

    /// <summary>Angle that the swept back turns through; what the lowest framing needs where the kit gives none.</summary>
    public Angle? SweepAngle { get; init; }

    /// <summary>Whether the panel keeps the stock sheet's direction when it is cut.</summary>
    public bool KeepDirection { get; init; }

    /// <summary>Material of the skirts, matched with the stock's sheets.</summary>
    public string SkirtMaterial { get; init; } = "white cloth";

    /// <summary>Mass as weighed; from geometry and density where the kit gives none.</summary>
    public Mass? Mass { get; init; }
}
