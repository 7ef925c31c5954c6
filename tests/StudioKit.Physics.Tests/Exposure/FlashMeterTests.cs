using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Metering;

namespace StudioKit.Physics.Tests.Exposure;

public sealed class FlashMeterTests
{
    private static readonly MeteredFlashCase Filled = new()
    {
        SubjectShare = 1,
        SubjectReflectance = FlashMeter.MidTone,
        SubjectLevel = new Stops(0),
        BackgroundReflectance = 0.18,
        BackgroundLevel = new Stops(-4),
    };

    /// <summary>ISO 2720's usual constants, 12.5 and 250: π · 12.5 / 250 = 0.157.</summary>
    [Fact]
    public void A_meter_takes_sixteen_hundredths_for_granted() => FlashMeter.MidTone.Should().BeApproximately(0.157, 0.0005);

    /// <summary>Limit: a mid-tone that fills the frame needs the level itself, so a fill of −1 is dialled as −1.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(-1.6667)]
    public void A_mid_tone_that_fills_the_frame_is_dialled_as_the_level_that_is_wanted(double level) =>
        FlashMeter.Compensation(Filled with { SubjectLevel = new Stops(level) }).Value.Should().BeApproximately(level, 1e-9);

    /// <summary>Common practice, no source: snow and white flowers are dialled up by about two stops and more, black fur down by two; ratios of their reflectance to 0.157 by hand.</summary>
    [Theory]
    [InlineData(0.8, 2.35)]
    [InlineData(0.04, -1.97)]
    public void White_is_dialled_up_and_black_down(double reflectance, double stops) =>
        FlashMeter.Compensation(Filled with { SubjectReflectance = reflectance }).Value.Should().BeApproximately(stops, 0.01);

    /// <summary>By hand: a quarter of 0.2 at correct exposure and three quarters of 0.4 two stops under it are 0.05 + 0.075 = 0.125, log₂(0.125 / 0.15708) = −0.330.</summary>
    [Fact]
    public void Subject_and_background_count_by_their_share_of_the_frame() =>
        FlashMeter.Compensation(new MeteredFlashCase
        {
            SubjectShare = 0.25,
            SubjectReflectance = 0.2,
            SubjectLevel = new Stops(0),
            BackgroundReflectance = 0.4,
            BackgroundLevel = new Stops(-2),
        }).Value.Should().BeApproximately(-0.330, 0.001);

    [Fact]
    public void A_share_or_reflectance_that_cannot_be_is_refused()
    {
        var share = () => FlashMeter.Compensation(Filled with { SubjectShare = 1.1 });
        var subject = () => FlashMeter.Compensation(Filled with { SubjectReflectance = 0 });
        var background = () => FlashMeter.Compensation(Filled with { BackgroundReflectance = -0.1 });
        var nothing = () => FlashMeter.Compensation(Filled with { SubjectShare = 0, BackgroundReflectance = 0 });

        share.Should().Throw<ArgumentOutOfRangeException>();
        subject.Should().Throw<ArgumentOutOfRangeException>();
        background.Should().Throw<ArgumentOutOfRangeException>();
        nothing.Should().Throw<ArgumentOutOfRangeException>();
    }
}
