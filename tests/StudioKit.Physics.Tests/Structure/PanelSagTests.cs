using StudioKit.Physics.Structure;
using UnitsNet;

namespace StudioKit.Physics.Tests.Structure;

/// <remarks>
/// Worked panel 600 mm × 400 mm × 3 mm acrylic (E 3.2 GPa, ν 0.37, 1190 kg/m³) by the tables of Timoshenko and Woinowsky-Krieger
/// (1959), exact coefficients from an independent series: 1 %.
/// </remarks>
public sealed class PanelSagTests
{
    private static readonly Sheet Acrylic = new() { Thickness = Length.FromMillimeters(3) };

    [Fact]
    public void A_panel_under_its_own_weight_sags_as_the_plate_tables_say()
    {
        var sag = PanelSag.AtCentre(Panel(Acrylic));

        PlateBending.Rigidity(3.2e9, 3e-3, 0.37).Should().BeApproximately(8.342, 0.01);
        sag.FreeEdges.Millimeters.Should().BeApproximately(0.830, 0.0083);
        sag.HeldEdges!.Value.Millimeters.Should().BeApproximately(0.236, 0.00236);
        sag.Stress.Megapascals.Should().BeApproximately(0.310, 0.0031);
        sag.Caveats.Should().BeEmpty();
    }

    [Fact]
    public void Five_kilograms_spread_over_it_strain_the_theory_and_it_says_so()
    {
        var spread = Pressure.FromPascals(239.3 - 35.01);

        var sag = PanelSag.AtCentre(Panel(Acrylic) with { Spread = spread });

        sag.FreeEdges.Millimeters.Should().BeApproximately(5.67, 0.0567);
        sag.Stress.Megapascals.Should().BeApproximately(2.12, 0.0212);
        sag.Caveats.Should().ContainSingle().Which.Kind.Should().Be(StructuralCaveatKind.DeepSag);
    }

    [Fact]
    public void Ten_newtons_at_the_centre_add_2_94_mm()
    {
        var loaded = PanelSag.AtCentre(Panel(Acrylic) with { Central = Force.FromNewtons(10) });

        (loaded.FreeEdges - PanelSag.AtCentre(Panel(Acrylic)).FreeEdges).Millimeters.Should().BeApproximately(2.94, 0.0294);
    }

    [Fact]
    public void A_millimetre_of_sag_needs_2_733_mm_of_sheet()
    {
        var thin = Acrylic with { Thickness = Length.FromMillimeters(2.733) };

        PanelSag.AtCentre(Panel(thin)).FreeEdges.Millimeters.Should().BeApproximately(1, 0.01);
    }

    [Fact]
    public void Polycarbonate_sags_more()
    {
        var polycarbonate = Acrylic with { YoungsModulus = Pressure.FromGigapascals(2.35), Density = Density.FromKilogramsPerCubicMeter(1200) };

        var sag = PanelSag.AtCentre(Panel(polycarbonate));

        sag.FreeEdges.Millimeters.Should().BeApproximately(1.140, 0.0114);
        sag.HeldEdges!.Value.Millimeters.Should().BeApproximately(0.324, 0.00324);
    }

    /// <summary>Roark's Formulas, table 11.4 case 1b: σ = 3W/(2πt²)·((1+ν)·ln(2b/πr₀′)+β), worked by hand for a square at ν = 0.3.</summary>
    /// <remarks>b 0.4 m, r₀ 20 mm, W 10 N, t 3 mm: 530.5 kPa · (1.3 · ln 12.732 + 0.435) = 530.5 kPa · 3.7424.</remarks>
    [Fact]
    public void Stress_under_a_small_circle_agrees_with_Young2002_case_1b() =>
        PlateBending.CentralStress(10, 0.4, 0.4, 3e-3, 20e-3, 0.3).Should().BeApproximately(1.9854e6, 0.001e6);

    /// <summary>ISO 7823-1 (cast) and 7823-2 (extruded) thickness tolerances.</summary>
    [Theory]
    [InlineData(3, SheetMaking.Cast, 2.30)]
    [InlineData(5, SheetMaking.Cast, 4.10)]
    [InlineData(6, SheetMaking.Cast, 5.00)]
    [InlineData(8, SheetMaking.Cast, 6.80)]
    [InlineData(10, SheetMaking.Cast, 8.60)]
    [InlineData(2, SheetMaking.Extruded, 1.80)]
    [InlineData(4, SheetMaking.Extruded, 3.80)]
    public void The_thinnest_sheet_follows_ISO_7823(double nominal, SheetMaking making, double published) =>
        SheetThickness.Least(nominal / 1000, making).Should().BeApproximately(published / 1000, 1e-9);

    [Fact]
    public void Under_a_central_load_twice_the_thickness_bends_an_eighth() =>
        Gen.Select(Gen.Double[0.2, 1], Gen.Double[1, 3], Gen.Double[1, 50]).Sample(
            (shortSide, aspect, force) =>
            {
                var panel = new PanelLoadCase(
                    Length.FromMeters(shortSide), Length.FromMeters(shortSide * aspect), Acrylic, Pressure.Zero, Force.FromNewtons(force), Length.FromMillimeters(20));
                var thick = panel with { Sheet = Acrylic with { Thickness = Length.FromMillimeters(6) } };
                var bare = Force.Zero;
                var thin = PanelSag.AtCentre(panel).FreeEdges - PanelSag.AtCentre(panel with { Central = bare }).FreeEdges;
                var stout = PanelSag.AtCentre(thick).FreeEdges - PanelSag.AtCentre(thick with { Central = bare }).FreeEdges;
                return Math.Abs((thin / stout) - 8) < 1e-6;
            },
            iter: 50);

    [Fact]
    public void A_panel_whose_long_side_is_the_shorter_is_refused()
    {
        var act = () => PanelSag.AtCentre(Panel(Acrylic) with { LongSide = Length.FromMillimeters(300) });

        act.Should().Throw<ArgumentOutOfRangeException>().WithParameterName("LongSide");
    }

    private static PanelLoadCase Panel(Sheet sheet) => new(
        Length.FromMillimeters(400), Length.FromMillimeters(600), sheet, Pressure.Zero, Force.Zero, Length.FromMillimeters(20));
}
