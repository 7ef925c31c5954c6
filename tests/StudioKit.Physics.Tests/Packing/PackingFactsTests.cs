using StudioKit.Physics.Packing;
using StudioKit.Physics.Structure;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Physics.Tests.Structure.Frames;
using UnitsNet;

namespace StudioKit.Physics.Tests.Packing;

public sealed class PackingFactsTests
{
    /// <summary>Bands after Simpson et al. (2011) and Genitrini et al. (2022): 12.5 kg on 70 kg is 17.9 %; 20 % is 14 kg, 25 % 17.5 kg.</summary>
    [Fact]
    public void Twelve_and_a_half_kilograms_on_seventy_are_comfortable()
    {
        BodyShare.Of(12.5, 70).Should().BeApproximately(0.179, 0.0005);
        BodyShare.BandOf(BodyShare.Of(12.5, 70)).Should().Be(LoadBand.Comfortable);
        (BodyShare.Comfortable * 70).Should().BeApproximately(14, 1e-9);
        (BodyShare.Demanding * 70).Should().BeApproximately(17.5, 1e-9);
        BodyShare.BandOf(0.3).Should().Be(LoadBand.TooHeavy);
        BodyShare.BandOf(0.41).Should().Be(LoadBand.Refused);
    }

    /// <summary>A rectangle L × d in a rectangle, solved apart by scanning the angle: 650.1 mm and 565.7 mm; 1 mm.</summary>
    [Theory]
    [InlineData(26.7, 600, 650.1)]
    [InlineData(20, 500, 565.7)]
    public void The_longest_rod_lies_from_corner_to_corner(double diameter, double side, double published) =>
        (1000 * LongItem.LongestInRectangle(diameter / 1000, side / 1000, 0.3)).Should().BeApproximately(published, 1);

    [Fact]
    public void A_rod_fits_where_some_angle_takes_it() =>
        Gen.Select(Gen.Double[0.3, 1], Gen.Double[0.2, 1], Gen.Double[0.005, 0.1]).Sample((length, share, diameter) =>
        {
            var width = Math.Max(diameter, length * share);
            var longest = LongItem.LongestInRectangle(diameter, length, width);
            var scanned = Enumerable.Range(0, 20001).Select(i => i * Math.PI / 2 / 20000)
                .Max(angle => Math.Min((length - (diameter * Math.Sin(angle))) / Math.Max(1e-12, Math.Cos(angle)), (width - (diameter * Math.Cos(angle))) / Math.Max(1e-12, Math.Sin(angle))));
            return Math.Abs(longest - Math.Max(length, scanned)) < 1e-3;
        });

    [Fact]
    public void A_rod_goes_along_the_bag_then_corner_to_corner_then_outside()
    {
        var bag = new BoxSize(Length.FromMillimeters(300), Length.FromMillimeters(220), Length.FromMillimeters(600));
        LongItemPlacement Placed(double length) => LongItem.Place(Length.FromMillimeters(length), Length.FromMillimeters(26.7), bag).Placement;

        Placed(600).Should().Be(LongItemPlacement.AlongBag);
        Placed(640).Should().Be(LongItemPlacement.CornerToCorner);
        Placed(655).Should().Be(LongItemPlacement.StrappedOutside);
        LongItem.Place(Length.FromMillimeters(700), Length.FromMillimeters(26.7), bag).SticksOut.Should().BeTrue();
    }

    /// <summary>Watt hours by volts × ampere hours; limits of 100 and 160 Wh as the Transportation Security Administration prints them.</summary>
    [Theory]
    [InlineData(CellKind.LithiumIon, 3.7, 26.8, 99.16, AirCellClass.Cabin)]
    [InlineData(CellKind.LithiumIon, 11.1, 9, 99.9, AirCellClass.Cabin)]
    [InlineData(CellKind.LithiumIon, 14.8, 10, 148, AirCellClass.AskAirline)]
    [InlineData(CellKind.LithiumIon, 16, 10, 160, AirCellClass.AskAirline)]
    [InlineData(CellKind.LithiumIon, 14.8, 11, 162.8, AirCellClass.NotAllowed)]
    [InlineData(CellKind.NickelMetalHydride, 4.8, 2, 9.6, AirCellClass.NoEnergyLimit)]
    [InlineData(CellKind.LithiumMetal, 1.5, 3, 4.5, AirCellClass.Cabin)]
    public void Cells_fly_by_their_energy(CellKind kind, double volts, double ampereHours, double published, AirCellClass flies)
    {
        var rule = AirCells.RuleFor(kind, ElectricPotential.FromVolts(volts), ElectricCharge.FromAmpereHours(ampereHours));

        rule.Energy.WattHours.Should().BeApproximately(published, 0.1);
        rule.Class.Should().Be(flies);
        AirCellRule.Guidance.Should().Contain("check your carrier");
    }

    /// <summary>Worked by hand: 400 flashes at a quarter are 100 full ones; a set of 150 with a fifth in reserve gives 120.</summary>
    [Fact]
    public void Flashes_at_part_power_stretch_a_set_of_cells()
    {
        FlashBudget.For(400, 0.25, 150, 1).Should().Be(new FlashBudgetResult(100, 1, 480, true));
        FlashBudget.For(500, 0.25, 150, 1).Should().Be(new FlashBudgetResult(125, 2, 480, false));
    }

    /// <summary>600 × 400 × 3 mm of acrylic at 1190 kg/m³: 0.857 kg.</summary>
    [Fact]
    public void A_sheet_weighs_its_volume()
    {
        var sheet = new Sheet { Thickness = Length.FromMillimeters(3) };

        var mass = StudioMass.Of(sheet, Length.FromMillimeters(600), Length.FromMillimeters(400));

        mass.Mass.Kilograms.Should().BeApproximately(0.857, 0.0005);
        mass.Origin.Should().Be(MassOrigin.FromGeometry);
        StudioMass.Of(sheet, Length.FromMillimeters(600), Length.FromMillimeters(400), Mass.FromGrams(840))
            .Should().Be(new MassStatement(Mass.FromKilograms(0.84), MassOrigin.Weighed));
    }

    /// <summary>Box frame of 3/4 in pipe: 4 × 571.4, 4 × 371.4 and 4 × 471.4 mm are 5.6568 m; at a catalogue's 0.3125 kg/m 1.768 kg; 0.1 %.</summary>
    [Fact]
    public void Pipe_of_a_box_frame_weighs_1_768_kg()
    {
        var pipe = FrameCases.PipeOf(26.67, 2.870) with { MassPerLength = LinearDensity.FromKilogramsPerMeter(0.3125) };

        (4 * (0.5714 + 0.3714 + 0.4714) * PipeMass.PerMetre(pipe)).Should().BeApproximately(1.768, 0.0018);
    }

    /// <summary>By hand: 2·558 + 2·358 + 4·455 mm of pipe at 0.1221 kg/m (EN ISO 1452-2 sizes, 1400 kg/m³) and 8 fittings of 20 g.</summary>
    [Fact]
    public void A_frame_weighs_the_sum_of_its_parts() =>
        StudioMass.Of(PipeFrame.Generate(FrameCases.FenTable), FrameCases.Metric20, FrameCases.FenTable.Fittings).Mass.Kilograms
            .Should().BeApproximately((3.652 * 0.1221) + 0.16, 0.001);

    [Theory]
    [InlineData(-1, 70)]
    [InlineData(10, 0)]
    [InlineData(double.NaN, 70)]
    public void Impossible_loads_are_refused(double load, double body)
    {
        var act = () => BodyShare.Of(load, body);

        act.Should().Throw<ArgumentOutOfRangeException>();
    }
}
