using StudioKit.Field.Log;
using StudioKit.Field.Pictures;
using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Field.Tests.Log;

public sealed class FieldFrameTests
{
    private static readonly FrameSettings Settings = new()
    {
        Shutter = new ShutterSpeed(0.005),
        Aperture = new FNumber(16),
        Iso = new IsoSpeed(100),
        FocalLength = Length.FromMillimeters(90),
        TakenLocal = new DateTime(2026, 5, 9, 14, 12, 3),
    };

    [Fact]
    public void A_frame_takes_its_settings_over_in_seconds_and_millimetres()
    {
        var frame = FieldFrame.From("subject-1", "/card/spider-001.jpg", Settings, TimeSpan.FromHours(1));

        frame.FileName.Should().Be("spider-001.jpg");
        (frame.ExposureTime, frame.FNumber, frame.Iso).Should().Be((0.005, 16, 100));
        frame.FocalLength.Should().BeApproximately(90, 1e-9);
    }

    [Fact]
    public void A_clock_that_the_file_says_nothing_of_is_the_computers_and_one_that_it_names_is_believed()
    {
        FieldFrame.From("s", "a.jpg", Settings, TimeSpan.FromHours(1)).Taken!.Value.Moment.Should().Be(new DateTimeOffset(2026, 5, 9, 13, 12, 3, TimeSpan.Zero));
        FieldFrame.From("s", "a.jpg", Settings with { ClockOffset = TimeSpan.FromHours(-3) }, TimeSpan.FromHours(1)).Taken!.Value.Moment
            .Should().Be(new DateTimeOffset(2026, 5, 9, 17, 12, 3, TimeSpan.Zero));
    }
}
