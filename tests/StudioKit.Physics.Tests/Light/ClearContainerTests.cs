using StudioKit.Physics.Light;

namespace StudioKit.Physics.Tests.Light;

public sealed class ClearContainerTests
{
    /// <summary>Acrylic, n = 1.49: one face turns back 0.03873, a wall passes 0.9254 (Fresnel formulae, evaluated by an independent program); makers print 92 %.</summary>
    [Fact]
    public void An_acrylic_wall_passes_as_much_as_its_makers_print()
    {
        ClearContainer.FaceReflectance(1.49).Should().BeApproximately(0.03873, 5e-6);
        ClearContainer.Transmittance(1.49).Should().BeApproximately(0.9254, 5e-5);
    }

    /// <summary>At Brewster's angle, tan θ = n, one polarisation passes whole and the other loses ((n² − 1)/(n² + 1))² (Born and Wolf, §1.5).</summary>
    [Fact]
    public void At_Brewsters_angle_only_one_polarisation_is_turned_back()
    {
        const double N = 1.5;
        var other = Math.Pow(((N * N) - 1) / ((N * N) + 1), 2);

        ClearContainer.FaceReflectance(N, Math.Atan(N)).Should().BeApproximately(other / 2, 1e-12);
    }

    [Fact]
    public void Air_turns_nothing_back() => ClearContainer.Loss(1).Value.Should().BeApproximately(0, 1e-12);

    [Fact]
    public void Every_further_wall_takes_light() =>
        Gen.Double[1.3, 2].Select(Gen.Int[1, 9]).Sample((n, walls) => ClearContainer.Loss(n, walls + 1).Value > ClearContainer.Loss(n, walls).Value);

    [Theory]
    [InlineData(0.99)]
    [InlineData(double.NaN)]
    public void An_index_under_that_of_air_is_refused(double index)
    {
        var face = () => ClearContainer.FaceReflectance(index);

        face.Should().Throw<ArgumentOutOfRangeException>().WithParameterName("refractiveIndex");
    }
}
