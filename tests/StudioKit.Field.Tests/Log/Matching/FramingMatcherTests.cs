using StudioKit.Field.Log.Matching;
using StudioKit.Field.Pictures;
using StudioKit.Field.Scale;
using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Field.Tests.Log.Matching;

/// <summary>A sensor of 36 mm over 6000 pixels has pixels of 6 µm, so a pixel spans 12 µm at 1:2 and 24 µm at 1:4.</summary>
public sealed class FramingMatcherTests
{
    private static readonly FramingMatcher Matcher = new(PlannedKit.Plan(more: "1:2, 1:4"));

    [Theory]
    [InlineData(12.0, "reed 50 at 1:2")]
    [InlineData(12.6, "reed 50 at 1:2")]
    [InlineData(23.5, "reed 50 at 1:4")]
    public void The_scale_tells_the_magnification(double micrometres, string framing)
    {
        var match = Matcher.Match(Picture(new FrameSettings { FocalLength = Length.FromMillimeters(50) }, new RecordedScale { MicrometresPerPixel = micrometres }));

        (match.Kind, match.Framing).Should().Be((FramingMatchKind.Scale, framing));
    }

    [Fact]
    public void A_scale_between_the_framings_is_none_of_them() =>
        Matcher.Match(Picture(new FrameSettings(), new RecordedScale { MicrometresPerPixel = 17 })).Kind.Should().Be(FramingMatchKind.Unknown);

    [Fact]
    public void A_picture_made_smaller_tells_no_magnification_by_its_pixels()
    {
        var small = Picture(new FrameSettings { Lens = "Reed 50" }, new RecordedScale { MicrometresPerPixel = 24 }) with { Pixels = new PixelDimensions(3000, 2000) };

        // 24 µm over half the pixels is 1:2, not 1:4: without the crop known, neither is said.
        Matcher.Match(small).Should().BeEquivalentTo(new { Kind = FramingMatchKind.Several, Candidates = new[] { "reed 50 at 1:2", "reed 50 at 1:4" } }, options => options.WithoutStrictOrdering());
        Matcher.Match(small with { Scale = small.Scale! with { Magnification = 0.5 } }).Framing.Should().Be("reed 50 at 1:2");
    }

    [Fact]
    public void The_sidecar_of_this_kit_names_the_framing_and_that_of_another_does_not()
    {
        var scale = new RecordedScale { MicrometresPerPixel = 24, Kit = "Reed margin", Framing = "reed 50 at 1:2" };

        Matcher.Match(Picture(new FrameSettings(), scale)).Should().BeEquivalentTo(new { Kind = FramingMatchKind.Sidecar, Framing = "reed 50 at 1:2" });
        Matcher.Match(Picture(new FrameSettings(), scale with { Kit = "another" })).Framing.Should().Be("reed 50 at 1:4");
    }

    [Fact]
    public void Another_lens_is_none_of_the_kits() =>
        Matcher.Match(Picture(new FrameSettings { FocalLength = Length.FromMillimeters(60) }, null)).Kind.Should().Be(FramingMatchKind.Unknown);

    [Fact]
    public void The_cards_f_number_tells_the_set_up_whatever_the_ISO_speed_was_turned_to()
    {
        var scale = new RecordedScale { MicrometresPerPixel = 12 };
        var card = new FrameSettings { Aperture = new FNumber(16), Iso = new IsoSpeed(400), FocalLength = Length.FromMillimeters(50) };

        Matcher.Match(Picture(card, scale)).SetUp.Should().Be("white");
        Matcher.Match(Picture(card with { Aperture = new FNumber(14) }, scale)).Should().BeEquivalentTo(new { Framing = "reed 50 at 1:2", SetUp = "" });
        Matcher.Match(Picture(card with { Iso = new IsoSpeed(100) }, scale)).SetUp.Should().Be("white");
        Matcher.Match(Picture(card with { Shutter = new ShutterSpeed(1) }, scale)).SetUp.Should().BeEmpty();
    }

    private static LoggedPicture Picture(FrameSettings settings, RecordedScale? scale) => new("p.jpg", settings, new PixelDimensions(4000, 6000), scale);
}
