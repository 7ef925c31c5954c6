using StudioKit.Physics.Structure.Fasteners;
using UnitsNet;

namespace StudioKit.Physics.Tests.Structure.Fasteners;

public sealed class HexagonScrewTests
{
    /// <summary>ISO 4017 (k, s, pitch), ISO 4032 (m largest), ISO 7089 (outside diameter, thickness), from memory; heads, flats and pitches agree with public tables of metric screws.</summary>
    [Theory]
    [InlineData(MetricThread.M5, 5, 0.8, 8, 3.5, 4.7, 10, 1)]
    [InlineData(MetricThread.M6, 6, 1, 10, 4, 5.2, 12, 1.6)]
    [InlineData(MetricThread.M8, 8, 1.25, 13, 5.3, 6.8, 16, 1.6)]
    public void A_screw_has_the_sizes_of_the_standards(MetricThread thread, double diameter, double pitch, double flats, double head, double nut, double washer, double thickness)
    {
        var screw = HexagonScrew.Of(thread);

        new[] { screw.Diameter, screw.Pitch, screw.AcrossFlats, screw.HeadHeight, screw.NutHeight, screw.WasherDiameter, screw.WasherThickness }
            .Select(length => length.Millimeters).Should().Equal(diameter, pitch, flats, head, nut, washer, thickness);
    }

    /// <summary>ISO 273, from memory: fine 5.3, 6.4, 8.4 and coarse 5.8, 7, 10 mm. A drill lies between, and is sold by the half millimetre.</summary>
    [Theory]
    [InlineData(MetricThread.M5, 5.3, 5.8)]
    [InlineData(MetricThread.M6, 6.4, 7)]
    [InlineData(MetricThread.M8, 8.4, 10)]
    public void A_hole_lies_between_the_fine_and_the_coarse_series_and_its_drill_is_sold(MetricThread thread, double fine, double coarse)
    {
        var hole = HexagonScrew.Of(thread).Hole.Millimeters;

        hole.Should().BeInRange(fine, coarse);
        (hole * 2 % 1).Should().Be(0);
    }

    /// <summary>Closed form: a hexagon is 2/√3 times as wide across its corners as across its flats: 9.24, 11.55 and 15.01 mm.</summary>
    [Theory]
    [InlineData(22.5, MetricThread.M8)]
    [InlineData(17, MetricThread.M8)]
    [InlineData(15.02, MetricThread.M8)]
    [InlineData(15, MetricThread.M6)]
    [InlineData(13, MetricThread.M6)]
    [InlineData(11.5, MetricThread.M5)]
    [InlineData(4, MetricThread.M5)]
    public void The_thickest_screw_is_taken_whose_nut_turns_in_the_pipe(double bore, MetricThread expected) =>
        HexagonScrew.WithNutIn(Length.FromMillimeters(bore)).Thread.Should().Be(expected);

    /// <summary>ISO 888 without the lengths in brackets, from memory: … 60, 65, 70, 80, 90, 100, 110 … 160, 180, 200.</summary>
    [Theory]
    [InlineData(0, 20)]
    [InlineData(60, 60)]
    [InlineData(60.1, 65)]
    [InlineData(70.5, 80)]
    [InlineData(82.8, 90)]
    [InlineData(161, 180)]
    [InlineData(300, 300)]
    public void A_screw_is_bought_in_the_next_length_that_is_sold(double needed, double sold) => ScrewLength.SoldFor(Length.FromMillimeters(needed))!.Value.Millimeters.Should().Be(sold);

    [Fact]
    public void Beyond_the_longest_none_is_sold() => ScrewLength.SoldFor(Length.FromMillimeters(301)).Should().BeNull();

    [Fact]
    public void A_length_below_nought_is_refused() => FluentActions.Invoking(() => ScrewLength.SoldFor(Length.FromMillimeters(-1))).Should().Throw<ArgumentOutOfRangeException>();

    [Fact]
    public void A_bore_below_nought_and_a_thread_nobody_knows_are_refused()
    {
        FluentActions.Invoking(() => HexagonScrew.WithNutIn(Length.FromMillimeters(-1))).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => HexagonScrew.Of((MetricThread)99)).Should().Throw<ArgumentOutOfRangeException>();
    }
}
