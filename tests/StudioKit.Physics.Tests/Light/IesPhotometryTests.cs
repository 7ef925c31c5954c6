using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Lobes;

namespace StudioKit.Physics.Tests.Light;

/// <summary>IES LM-63: keywords, TILT line, lamp line of ten numbers, three more, vertical angles, horizontal angles, candela by half plane.</summary>
public sealed class IesPhotometryTests
{
    // A head invented for the test: 800 cd on the axis, half of it at 30° across and at 20° along.
    private const string TwoPlanes =
        """
        IESNA:LM-63-2002
        [TEST] invented
        [MANUFAC] none
        TILT=NONE
        1 1000 2 4 2 1 2 0.07 0.04 0
        1 1 50
        0 20 30 90
        0 90
        400 300 200 0
        400 200 100 0
        """;

    [Fact]
    public void A_beam_of_two_half_planes_is_read_and_mirrored()
    {
        var reading = IesPhotometry.Read(TwoPlanes);

        reading.Problem.Should().BeNull();
        reading.AxialIntensity.Should().Be(800);
        var lobe = reading.Lobe!;
        lobe.RelativeIntensity(0.5, 0, Math.Sqrt(0.75)).Should().BeApproximately(0.5, 1e-12);
        lobe.RelativeIntensity(-0.5, 0, Math.Sqrt(0.75)).Should().BeApproximately(0.5, 1e-12);
        lobe.RelativeIntensity(0, -0.5, Math.Sqrt(0.75)).Should().BeApproximately(0.25, 1e-12);
        lobe.RelativeIntensity(0, 0, 1).Should().Be(1);
        lobe.RelativeIntensity(0, 0, -1).Should().Be(0);
    }

    /// <summary>Uniform intensity over the half sphere has a flux of 2π times its intensity.</summary>
    [Fact]
    public void A_level_half_sphere_has_two_pi_of_flux()
    {
        var reading = IesPhotometry.Read("TILT=NONE\n1 -1 1 2 1 1 2 0 0 0 1 1 1 0 90 0 5 5");

        reading.Lobe!.FluxOverAxialIntensity.Should().BeApproximately(2 * Math.PI, 1e-3);
    }

    [Fact]
    public void Tilt_data_in_the_text_are_passed_over()
    {
        var reading = IesPhotometry.Read("TILT=INCLUDE\n1\n2\n0 90\n1 1\n1 -1 1 2 1 1 2 0 0 0 1 1 1 0 90 0 5 0");

        reading.AxialIntensity.Should().Be(5);
    }

    [Fact]
    public void A_table_of_a_cosine_beam_lights_the_panel_as_the_beam_itself()
    {
        var cosines = string.Join(' ', Enumerable.Range(0, 91).Select(degree => Math.Cos(degree * Math.PI / 180).ToString("0.000000", null)));
        var text = $"TILT=NONE 1\n1 -1 1 91 1 1 2 0 0 0 1 1 1 {string.Join(' ', Enumerable.Range(0, 91))} 0 {cosines}".Replace("NONE 1", "NONE", StringComparison.Ordinal);
        var table = Studio.Flash() with { Lobe = IesPhotometry.Read(text).Lobe! };

        var tabulated = Studio.All(LightSolver.Solve(Studio.Scene(Studio.Panel(), Studio.BlackGround, table), new PanelGrid(4, 4)));
        var exact = Studio.All(LightSolver.Solve(Studio.Scene(Studio.Panel(), Studio.BlackGround, Studio.Flash()), new PanelGrid(4, 4)));

        tabulated.Zip(exact).Should().AllSatisfy(pair => pair.First.Should().BeApproximately(pair.Second, 1e-3 * pair.Second));
    }

    [Theory]
    [InlineData("", "TILT")]
    [InlineData("TILT=lamp.tlt\n", "Tilt")]
    [InlineData("TILT=NONE\n1 1000", "ends")]
    [InlineData("TILT=NONE\n1 1000 1 x", "not a number")]
    [InlineData("TILT=NONE\n1 1000 1 NaN", "not a number")]
    [InlineData("TILT=NONE\n1 1000 1 0 1", "vertical angles")]
    [InlineData("TILT=NONE\n1 1000 1 2.5 1", "vertical angles")]
    [InlineData("TILT=NONE\n1 1000 1 999999999 1", "vertical angles")]
    [InlineData("TILT=NONE\n1 -1 1 2 1 2 2 0 0 0 1 1 1 0 90 0 5 5", "type C")]
    [InlineData("TILT=NONE\n1 -1 1 2 1 1 2 0 0 0 1 1 1 90 0 0 5 5", "out of order")]
    [InlineData("TILT=NONE\n1 -1 1 3 1 1 2 0 0 0 1 1 1 0 50 50 0 5 5 5", "out of order")]
    [InlineData("TILT=NONE\n1 -1 1 2 1 1 2 0 0 0 1 1 1 0 200 0 5 5", "out of order")]
    [InlineData("TILT=NONE\n1 -1 1 2 2 1 2 0 0 0 1 1 1 0 90 0 45 5 5 5 5", "Horizontal")]
    [InlineData("TILT=NONE\n1 -1 1 2 1 1 2 0 0 0 1 1 1 0 90 0 0 5", "axis is zero")]
    [InlineData("TILT=NONE\n1 -1 1 2 1 1 2 0 0 0 1 1 1 0 90 0 5 -5", "negative")]
    [InlineData("TILT=NONE\n1 -1 -1 2 1 1 2 0 0 0 1 1 1 0 90 0 5 5", "multiplier")]
    public void Malformed_text_comes_back_as_a_sentence(string text, string part)
    {
        var reading = IesPhotometry.Read(text);

        reading.Lobe.Should().BeNull();
        reading.Problem!.Sentence.Should().Contain(part);
    }

    [Fact]
    public void The_problem_names_its_line() =>
        IesPhotometry.Read("[TEST] x\nTILT=NONE\n1 -1 1 2 1 1 2 0 0 0\n1 1 1\n0 oops").Problem!.Line.Should().Be(5);

    [Fact]
    public void Any_text_is_read_or_refused_but_never_throws() =>
        Gen.String[Gen.Char["0123456789.-+eE \n,TILT=NONE"], 0, 200].Select(tail => "TILT=NONE\n" + tail).Sample(text =>
        {
            var reading = IesPhotometry.Read(text);
            return reading.Lobe is null != reading.Problem is null;
        });
}
