using StudioKit.Physics.Structure.Frames;
using UnitsNet;

namespace StudioKit.Physics.Tests.Structure.Frames;

/// <summary>A flash of 200 × 75 mm with a window 40 mm high at its end: 180 mm reach beyond the window's middle, 20 mm the other way.</summary>
public sealed class FlashBodyRoomTests
{
    private static readonly FlashCradleCase Flash = FrameCases.Cradle with
    {
        OffsetRight = Length.Zero,
        OffsetBack = Length.Zero,
        HeadHeight = Length.FromMillimeters(40),
        BodyLength = Length.FromMillimeters(200),
        BodyWidth = Length.FromMillimeters(75),
        BodyHeight = Length.FromMillimeters(50),
    };

    /// <summary>Between walls 37.5 mm at either side the body only fits straight, 180 mm one way or the other.</summary>
    [Theory]
    [InlineData(0.180, 0.020, 0)]
    [InlineData(0.020, 0.180, 0)]
    [InlineData(0.160, 0.160, 20)]
    [InlineData(0.170, 0.010, 10)]
    public void In_a_lane_it_lies_along_it(double front, double back, double outside) =>
        new FlashBodyRoom(-0.0375, 0.0375, -front, back).Outside(Flash).Millimeters.Should().BeApproximately(outside, 1e-6);

    /// <summary>At 45° the far corners reach (180 + 37.5)/√2 = 153.8 mm both ways: a square of half that side takes it, where straight it would need 180 mm.</summary>
    [Theory]
    [InlineData(0.1538, 0.05)]
    [InlineData(0.1438, 10.05)]
    public void In_a_square_it_lies_across(double half, double outside) =>
        new FlashBodyRoom(-half, half, -half, half).Outside(Flash).Millimeters.Should().BeLessThanOrEqualTo(outside).And.BeGreaterThan(outside - 1);

    [Fact]
    public void A_flash_of_unknown_size_is_in_nobodys_way() =>
        new FlashBodyRoom(0, 0, 0, 0).Outside(Flash with { BodyLength = Length.Zero }).Should().Be(Length.Zero);
}
