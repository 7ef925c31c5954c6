using StudioKit.Kits.Lighting;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light.Standing;
using StudioKit.Planning;
using StudioKit.Planning.Standing;
using StudioKit.Sheets.Tests;
using UnitsNet;

namespace StudioKit.Wording.Tests;

/// <summary>Where a light stands, in words that answer "where do I hold it?".</summary>
public sealed class StandTextTests
{
    private static LightStandPlan Stand { get; } = SampleStand.Of(At(-90, 45), 40) with
    {
        Right = Length.FromCentimeters(-28.28),
        Back = Length.FromCentimeters(0.1),
        Up = Length.FromCentimeters(28.28),
        AngleAcross = Angle.FromDegrees(28.07),
        AngleUp = Angle.FromDegrees(21.2),
        HeldBy = HolderKind.Hand,
        ReachNeeded = Length.FromCentimeters(52),
    };

    [Fact]
    public void A_place_is_told_by_the_clock_in_degrees_and_in_centimetres_without_what_is_nothing() =>
        StandText.Where(Stand).Should().Be("9 o'clock, 45° up: 28.5 cm left, 28.5 cm higher");

    [Theory]
    [InlineData(0, 0, "6 o'clock, level")]
    [InlineData(-45, 30, "half past 7, 30° up")]
    [InlineData(180, -20, "12 o'clock, 20° down")]
    [InlineData(165, 10, "half past 12, 10° up")]
    [InlineData(90, 88, "straight above")]
    public void A_direction_is_told_to_the_half_hour(double azimuth, double elevation, string words) => StandText.Direction(At(azimuth, elevation)).Should().Be(words);

    [Fact]
    public void What_holds_it_is_told_with_what_somebody_must_know_of_it()
    {
        StandText.Held(Stand).Should().Be("in the free hand");
        StandText.Held(Stand with { WithinReach = false }).Should().Be("held by a helper: 52 cm from the camera");
        StandText.Held(Stand with { Holder = "pole", HeldBy = HolderKind.Stand }).Should().Be("on pole, boom out 52 cm, 78 cm over the ground");
        StandText.Held(Stand with { Holder = "pole", HeldBy = HolderKind.Stand, ReachNeeded = Length.Zero }).Should().Be("on pole, 78 cm over the ground");
        StandText.Held(Stand with { Holder = "arm", HeldBy = HolderKind.Arm }).Should().Be("on arm, 52 cm from where it is fastened");
    }

    [Fact]
    public void A_light_is_called_soft_with_its_angles_and_the_depth_of_its_shadow()
    {
        StandText.Soft(Stand with { ShadowDepth = new Stops(1.26) }).Should().Be("soft, 28° × 21°, shadow 1.3 stops deep");
        StandText.Soft(Stand).Should().Be("soft, 28° × 21°, shadow black");
    }

    [Fact]
    public void Every_fault_and_softness_has_words()
    {
        Enum.GetValues<Softness>().Select(StandText.Word).Should().OnlyHaveUniqueItems();
        foreach (var kind in Enum.GetValues<LightFaultKind>())
        {
            StandFaultText.Of(Stand with { Holder = "arm" }, new LightFault(kind, Angle.FromDegrees(30)) { By = Length.FromCentimeters(4), Over = new Stops(1), Share = 0.4 }).Should().StartWith("white, 55 mm at 1:2, camera at 30°: ").And.EndWith(".");
        }
    }

    private static LightDirection At(double azimuth, double elevation) => new(Angle.FromDegrees(azimuth), Angle.FromDegrees(elevation));
}
