using StudioKit.Physics.Exposure;
using StudioKit.Planning.Expected;
using UnitsNet;

namespace StudioKit.Planning.Tests.Expected;

public sealed class CorrectedFigureTests
{
    /// <summary>Light goes with the square of the guide number (ISO 1230): four times the light is twice the number.</summary>
    [Theory]
    [InlineData(2, 60)]
    [InlineData(-1, 21.2132)]
    public void A_guide_number_moves_by_half_the_stops(double stops, double metres)
    {
        var corrected = CorrectedFigure.Of(new GuideNumber(Length.FromMeters(30), Length.FromMillimeters(35)), new Stops(stops));

        corrected.AtIso100.Meters.Should().BeApproximately(metres, 1e-4);
        corrected.Zoom.Should().Be(Length.FromMillimeters(35));
    }

    [Theory]
    [InlineData(0.5, -1, 0.25)]
    [InlineData(0.5, 0.5, 0.7071)]
    [InlineData(0.5, 1.5, 1)]
    public void A_transmittance_moves_by_all_the_stops_but_never_above_one(double promised, double stops, double corrected) =>
        CorrectedFigure.Of(promised, new Stops(stops)).Should().BeApproximately(corrected, 1e-4);
}
