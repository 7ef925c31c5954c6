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

    [Theory]
    [InlineData("[TEST] x\nTILT=NONE\n1 -1 1 2 1 1 2 0 0 0\n1 1 1\n0 oops", 5, 3)]
    [InlineData("TILT=NONE\n1 -1 1 2 1 1 2 0 0 0\n1 1 1\n0 90 0\n5 -5", 5, 3)]
    [InlineData("TILT=NONE\n1 -1 1 2 1 1 2 0 0 0\n1 1 1\n10  10, 5 0\n5 5", 4, 1)]
    [InlineData("TILT=NONE\n1 -1 1 2 1 1 2 0 0 0\n1 1 1\n0  0, 5 0\n5 5", 4, 4)]
    [InlineData("[TEST] x\nTILT=lamp.tlt\n1", 2, 6)]
    [InlineData("TILT=NONE\n1 -1 1", 2, 7)]
    public void The_problem_names_its_line_and_column(string text, int line, int column)
    {
        var problem = IesPhotometry.Read(text).Problem!;

        (problem.Line, problem.Column).Should().Be((line, column));
    }

    /// <summary>LM-63 writes −1 lumens where candelas are absolute, and the lamp's lumens where they are relative to it.</summary>
    [Theory]
    [InlineData(-1, true)]
    [InlineData(1000, false)]
    public void Lumens_of_minus_one_mark_candelas_as_they_were_measured(int lumens, bool absolute) => IesPhotometry
        .Read(FormattableString.Invariant($"TILT=NONE\n1 {lumens} 1 2 1 1 2 0 0 0 1 1 1 0 90 0 5 0")).IsAbsolute.Should().Be(absolute);

    /// <summary>cosⁿ falls to half at arccos(0.5^(1/n)); a table by the degree is at most 0.02° off between its rows.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    [InlineData(20)]
    public void A_table_of_a_cosine_beam_is_as_wide_at_half_intensity_as_the_beam_itself(int exponent)
    {
        var cosines = Enumerable.Range(0, 91).Select(degree => Math.Pow(Math.Cos(degree * Math.PI / 180), exponent));
        var lobe = new TabulatedLobe([.. Enumerable.Range(0, 91).Select(degree => UnitsNet.Angle.FromDegrees(degree))], [UnitsNet.Angle.Zero], [.. cosines]);

        lobe.HalfIntensityAngle(UnitsNet.Angle.Zero).Degrees.Should().BeApproximately(2 * Math.Acos(Math.Pow(0.5, 1.0 / exponent)) * 180 / Math.PI, 0.04);
    }

    /// <summary>Read off the table itself: half of 400 cd at 30° across and at 20° along.</summary>
    [Fact]
    public void A_beam_of_two_half_planes_has_a_width_and_a_height_of_its_own()
    {
        var lobe = IesPhotometry.Read(TwoPlanes).Lobe!;

        lobe.HalfIntensityAngle(UnitsNet.Angle.Zero).Degrees.Should().BeApproximately(60, 1e-9);
        lobe.HalfIntensityAngle(UnitsNet.Angle.FromDegrees(90)).Degrees.Should().BeApproximately(40, 1e-9);
    }

    [Fact]
    public void A_beam_that_never_falls_to_half_ends_where_its_table_does() => IesPhotometry.Read("TILT=NONE\n1 -1 1 2 1 1 2 0 0 0 1 1 1 0 70 0 5 4")
        .Lobe!.HalfIntensityAngle(UnitsNet.Angle.Zero).Degrees.Should().BeApproximately(140, 1e-9);

    [Fact]
    public void Any_text_is_read_or_refused_but_never_throws() =>
        Gen.String[Gen.Char["0123456789.-+eE \n,TILT=NONE"], 0, 200].Select(tail => "TILT=NONE\n" + tail).Sample(text =>
        {
            var reading = IesPhotometry.Read(text);
            return reading.Lobe is null != reading.Problem is null;
        });
}
