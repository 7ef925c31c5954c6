using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Standing;
using UnitsNet;

namespace StudioKit.Physics.Tests.Light.Standing;

public sealed class LightDirectionTests
{
    /// <summary>A clock that lies about the subject, its six towards the camera: a circle of 360° in twelve hours, three to the camera's right.</summary>
    [Theory]
    [InlineData(0, 6)]
    [InlineData(90, 3)]
    [InlineData(-90, 9)]
    [InlineData(180, 12)]
    [InlineData(-180, 12)]
    [InlineData(150, 1)]
    [InlineData(-45, 7.5)]
    [InlineData(30, 5)]
    public void The_clock_has_its_six_towards_the_camera_and_its_three_to_the_cameras_right(double azimuth, double hour) =>
        At(azimuth, 20).Hour.Should().BeApproximately(hour, 1e-9);

    /// <summary>By the studio's axes: x to the camera's right, y away from the camera, z up.</summary>
    [Theory]
    [InlineData(0, 0, 0, -1, 0)]
    [InlineData(90, 0, 1, 0, 0)]
    [InlineData(-90, 0, -1, 0, 0)]
    [InlineData(180, 0, 0, 1, 0)]
    [InlineData(77, 90, 0, 0, 1)]
    [InlineData(90, 30, 0.866025403784439, 0, 0.5)]
    public void A_light_stands_to_the_side_that_its_azimuth_says(double azimuth, double elevation, double x, double y, double z)
    {
        var way = At(azimuth, elevation).Towards;

        way.X.Should().BeApproximately(x, 1e-12);
        way.Y.Should().BeApproximately(y, 1e-12);
        way.Z.Should().BeApproximately(z, 1e-12);
    }

    /// <summary>Spherical law of cosines on two worked right triangles, and the camera's own direction.</summary>
    [Theory]
    [InlineData(0, 60, 60, 0)]
    [InlineData(90, 0, 30, 90)]
    [InlineData(180, 45, 45, 90)]
    [InlineData(-60, 0, 0, 60)]
    public void The_angle_to_the_camera_follows_from_both_directions(double azimuth, double elevation, double pitch, double angle) =>
        At(azimuth, elevation).AngleTo(LightDirection.OfCamera(Angle.FromDegrees(pitch))).Degrees.Should().BeApproximately(angle, 1e-5);

    [Fact]
    public void A_light_stands_as_far_from_the_subject_as_it_is_said_to() => Any.Sample(from =>
    {
        var subject = new Position(0.1, -0.2, 0.5);
        from.PlaceFrom(subject, Length.FromCentimeters(40)).DistanceTo(subject).Should().BeApproximately(0.4, 1e-12);
    });

    [Theory]
    [InlineData(0, 91)]
    [InlineData(0, -91)]
    public void An_impossible_direction_is_refused(double azimuth, double elevation)
    {
        var way = () => At(azimuth, elevation).Towards;

        way.Should().Throw<ArgumentOutOfRangeException>();
    }

    internal static Gen<LightDirection> Any { get; } = Gen.Select(Gen.Double[-180, 180], Gen.Double[-90, 90], (azimuth, elevation) => At(azimuth, elevation));

    internal static LightDirection At(double azimuth, double elevation) => new(Angle.FromDegrees(azimuth), Angle.FromDegrees(elevation));
}
