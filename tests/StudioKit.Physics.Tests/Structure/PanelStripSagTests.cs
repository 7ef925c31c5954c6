using StudioKit.Physics.Structure;
using UnitsNet;

namespace StudioKit.Physics.Tests.Structure;

public sealed class PanelStripSagTests
{
    private static readonly Sheet Acrylic = new() { Thickness = Length.FromMillimeters(3) };

    /// <summary>Gere and Goodno (2009): a beam between two rests sags by P·L³/48EI under a force at its middle, its stress is M·t/2I with M = P·L/4, I = b·t³/12.</summary>
    /// <remarks>2 %: at a hundredth of the span some stiffness across the strip is left; the weight of the lath, a few per cent of the force's sag, is added by its own 5qL⁴/384EI.</remarks>
    [Theory]
    [InlineData(50)]
    [InlineData(200)]
    [InlineData(1000)]
    public void A_lath_narrower_than_a_hundredth_of_its_span_sags_as_a_beam(double spanPerBreadth)
    {
        const double Span = 0.8, Newtons = 0.2, Modulus = 3.2e9, T = 3e-3;
        var breadth = Span / spanPerBreadth;
        var (inertia, perMetre) = (breadth * T * T * T / 12, 1190 * 9.80665 * T * breadth);
        var expected = (Newtons * Math.Pow(Span, 3) / (48 * Modulus * inertia)) + (5 * perMetre * Math.Pow(Span, 4) / (384 * Modulus * inertia));

        var sag = PanelStripSag.OnTwoEdges(Lath(breadth, Span, Newtons), acrossShortSide: false);

        sag.FreeEdges.Meters.Should().BeApproximately(expected, 0.02 * expected);
    }

    private static PanelLoadCase Lath(double breadth, double span, double newtons) => new(
        Length.FromMeters(breadth), Length.FromMeters(span), Acrylic, Pressure.Zero, Force.FromNewtons(newtons), Length.FromMillimeters(1));
}
