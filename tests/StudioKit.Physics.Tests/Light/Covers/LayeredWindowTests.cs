using StudioKit.Physics.Light.Covers;

namespace StudioKit.Physics.Tests.Light.Covers;

public sealed class LayeredWindowTests
{
    /// <summary>Water of n = 4/3 looks three quarters as deep as it is; layers add up as Σ t/n (textbooks of school optics).</summary>
    [Fact]
    public void A_pond_looks_three_quarters_as_deep_as_it_is()
    {
        LayeredWindow.ApparentLength([new WindowLayer(0.4, 4.0 / 3)], 0).Should().BeApproximately(0.3, 1e-12);
        LayeredWindow.ApparentLength([new WindowLayer(0.003, 1.5), new WindowLayer(0.04, 4.0 / 3)], 0).Should().BeApproximately(0.002 + 0.03, 1e-12);
    }

    /// <summary>
    /// Two rays of a narrow pencil, traced by the law of refraction from a point under 5 cm of water: where they meet when carried back in the plane of incidence.
    /// A pencil of 10⁻⁴ rad leaves differences of that order.
    /// </summary>
    [Theory]
    [InlineData(10)]
    [InlineData(40)]
    [InlineData(65)]
    public void In_the_plane_of_incidence_the_subject_seems_where_two_traced_rays_meet(double degrees)
    {
        const double Deep = 0.05;
        const double N = 1.333;
        const double Apart = 1e-5;
        var incidence = degrees * Math.PI / 180;
        var (near, far) = (Out(incidence - Apart), Out(incidence + Apart));
        var meeting = (far - near) * Math.Cos(incidence) / (2 * Apart);

        LayeredWindow.ApparentLengthAlong([new WindowLayer(Deep, N)], incidence).Should().BeApproximately(meeting, 1e-6);

        double Out(double angle) => Deep * Math.Tan(Math.Asin(Math.Sin(angle) / N));
    }

    /// <summary>Across that plane the pencil turns about the normal through the subject: the ray carried back meets it at run/sin θ.</summary>
    [Fact]
    public void Across_it_the_subject_seems_to_stand_on_its_own_normal() => Gen.Double[0.01, 1.4].Select(Gen.Double[1.01, 2], Gen.Double[0.001, 0.3]).Sample((incidence, n, deep) =>
    {
        WindowLayer[] layers = [new(deep, n)];
        return Math.Abs(LayeredWindow.ApparentLength(layers, incidence) - (LayeredWindow.Run(layers, incidence) / Math.Sin(incidence))) < 1e-9;
    });

    [Fact]
    public void Square_to_the_window_nothing_is_drawn_apart() => LayeredWindow.AstigmaticDifference([new WindowLayer(0.05, 1.333)], 0).Should().BeApproximately(0, 1e-12);

    /// <summary>Air before air: no window at all.</summary>
    [Fact]
    public void A_window_of_air_moves_nothing() => LayeredWindow.AstigmaticDifference([new WindowLayer(0.05, 1)], 1).Should().BeApproximately(0, 1e-12);

    /// <summary>Of all ways from one point to the other light takes the quickest (Fermat): no crossing nearby is quicker.</summary>
    [Fact]
    public void Light_takes_the_quickest_way_into_the_water() => Gen.Double[0.05, 1].Select(Gen.Double[0.01, 0.3], Gen.Double[0.01, 1]).Sample((air, deep, aside) =>
    {
        const double N = 1.333;
        var crossing = air * Math.Tan(LayeredWindow.IncidenceBetween([new WindowLayer(deep, N)], air, aside));
        return Time(crossing) <= Time(crossing + 1e-3) && Time(crossing) <= Time(crossing - 1e-3);

        double Time(double at) => double.Hypot(air, at) + (N * double.Hypot(deep, aside - at));
    });

    [Fact]
    public void A_layer_of_negative_thickness_is_refused()
    {
        var window = () => LayeredWindow.ApparentLength([new WindowLayer(-0.01, 1.5)], 0);

        window.Should().Throw<ArgumentOutOfRangeException>();
    }
}
