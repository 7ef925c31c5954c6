using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Standing;
using UnitsNet;

namespace StudioKit.Physics.Tests.Light.Standing;

public sealed class SheetGlossTests
{
    /// <summary>Law of reflection: a camera that looks down at 40° sees in a level mirror what stands behind the subject at 40°, and nothing else.</summary>
    [Theory]
    [InlineData(180, 40, true)]
    [InlineData(0, 40, false)]
    [InlineData(-90, 40, false)]
    [InlineData(180, 75, false)]
    public void A_light_is_mirrored_to_a_camera_that_stands_across_from_it_as_high_as_it(double azimuth, double elevation, bool seen) =>
        (SheetGloss.Glare(Light(azimuth, elevation), View(40), 0.5) is not null).Should().Be(seen);

    /// <summary>
    /// Brewster's angle, atan n: the reflected light is all polarised across, its share ((n² − 1)/(n² + 1))²/2 of unpolarised light. A front of 10 mm by 10 mm of
    /// 1 cd·s has a luminance of 10,000 cd·s/m² on its axis, and 1 mm off it no other.
    /// </summary>
    [Fact]
    public void At_Brewsters_angle_half_the_reflectance_of_the_crosswise_light_is_left()
    {
        const double n = 1.49;
        var elevation = 90 - (Math.Atan(n) * 180 / Math.PI);
        var across = ((n * n) - 1) / ((n * n) + 1);

        var glare = SheetGloss.Glare(Light(180, elevation, 0.01), View(elevation), 0.5, n);

        glare!.Value.Should().BeApproximately(1e4 * across * across / 2, 1e4 * 0.002);
    }

    /// <summary>Straight down, ((n − 1)/(n + 1))²: 4 % for n = 1.5, the figure of the trade.</summary>
    [Fact]
    public void Straight_from_above_a_sheet_turns_back_four_hundredths()
    {
        var glare = SheetGloss.Glare(Light(180, 88, 0.01), View(88), 0.5, 1.5);

        glare!.Value.Should().BeApproximately(1e4 * 0.04, 1e4 * 0.0005);
    }

    [Fact]
    public void A_sheet_of_less_than_airs_index_is_refused()
    {
        var glare = () => SheetGloss.Glare(Light(180, 40), View(40), 0.5, 0.9);

        glare.Should().Throw<ArgumentOutOfRangeException>();
    }

    private static Emitter Light(double azimuth, double elevation, double size = 0.05) =>
        LightOnSurfaceTests.Softbox(LightDirectionTests.At(azimuth, elevation), 0.4, size, size);

    private static CameraView View(double pitch) => new()
    {
        Name = "view",
        FieldWidth = Length.FromMillimeters(72),
        FieldHeight = Length.FromMillimeters(48),
        PupilDistance = Length.FromMillimeters(300),
        Pitch = Angle.FromDegrees(pitch),
    };
}
