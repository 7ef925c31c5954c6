using StudioKit.Field.Log;
using StudioKit.Field.Log.Release;
using StudioKit.Field.Pictures;
using StudioKit.Field.Plates;
using StudioKit.Field.Scale;
using StudioKit.Field.Tests.Log;

namespace StudioKit.Field.Tests.Plates;

public sealed class CataloguePlatesTests
{
    // 20 mm x 10 mm and 5 mm x 5 mm in life.
    private static readonly PlatePicture Beetle = new("beetle.jpg", 4000, 2000, 5e-6, "Carabus", []);
    private static readonly PlatePicture Mite = new("mite.jpg", 1000, 1000, 5e-6, "Trombidium", []);

    /// <summary>A4 less 15 mm margins and an 8 mm gap leaves places 86 mm wide; 20 mm of beetle fill one at 4.3 times life size (arithmetic).</summary>
    [Fact]
    public void At_a_common_scale_lengths_on_paper_compare_as_in_life()
    {
        var plate = CataloguePlates.LayOut([Beetle, Mite], new PlateFormat(), isCommonScale: true).Single();

        plate.CommonScale.Should().BeApproximately(4.3, 1e-9);
        plate.Places[0].Width.Should().BeApproximately(86, 1e-9);
        plate.Places[1].Width.Should().BeApproximately(21.5, 1e-9);
    }

    [Fact]
    public void Each_on_its_own_fills_its_place_and_has_a_bar_to_its_own_scale()
    {
        var plate = CataloguePlates.LayOut([Beetle, Mite], new PlateFormat(), isCommonScale: false).Single();

        plate.CommonScale.Should().BeNull();
        plate.Places.Should().OnlyContain(place => Math.Abs((place.BarWidth / place.PrintScale / 1000) - place.Bar.Length) < 1e-12);
        plate.Places[1].PrintScale.Should().BeGreaterThan(plate.Places[0].PrintScale);
    }

    [Fact]
    public void Pictures_never_overlap_nor_leave_the_page() =>
        Gen.Select(Gen.Int[1, 9000], Gen.Int[1, 9000], Gen.Double[1e-7, 1e-4]).Array[1, 20].Sample(sizes =>
        {
            var pictures = sizes.Select(size => new PlatePicture("p.jpg", size.Item1, size.Item2, size.Item3, "", [])).ToList();
            var plates = CataloguePlates.LayOut(pictures, new PlateFormat(), isCommonScale: sizes.Length % 2 == 0);
            return plates.Sum(plate => plate.Places.Count) == pictures.Count && plates.All(plate =>
                plate.Places.All(place => place.Left >= 14.999 && place.Top >= 14.999 && place.Left + place.Width <= 195.001 && place.Top + place.Height <= 282.001)
                && plate.Places.SelectMany((a, i) => plate.Places.Skip(i + 1).Select(b => (a, b))).All(pair => Apart(pair.a, pair.b)));
        });

    [Fact]
    public void Captions_come_from_the_log_and_keep_a_sensitive_place_to_themselves()
    {
        var log = LogSamples.Snapshot with { Subjects = [LogSamples.Subject with { Sensitivity = PlaceSensitivity.Hundredth }] };

        var picture = CataloguePlates.FromLog(LogRelease.Of(log), frame => (new PlateFile(frame.FileName, new PixelDimensions(4000, 3000), null), default)).Pictures.Single();

        picture.Name.Should().Be("Dolomedes cf. plantarius");
        picture.Caption.Should().Equal("female, adult", "ZZ, 2026-05-09", "A. Sedge");
    }

    [Fact]
    public void A_plate_of_an_open_subject_names_no_place_that_another_of_its_session_keeps()
    {
        var log = LogSamples.Snapshot with
        {
            Subjects = [LogSamples.Subject, LogSamples.Subject with { Id = "subject-2", Sensitivity = PlaceSensitivity.Withheld }],
        };

        var picture = CataloguePlates.FromLog(LogRelease.Of(log), frame => (new PlateFile(frame.FileName, new PixelDimensions(4000, 3000), null), default)).Pictures.Single();

        picture.Caption.Should().NotContain(line => line.Contains("Boardwalk"));
    }

    /// <summary>The sidecar belongs to the file at hand; the log may tell of the original, of which that is a smaller copy.</summary>
    [Fact]
    public void The_scale_beside_the_picture_goes_before_the_logs_and_its_bar_is_told()
    {
        var recorded = new RecordedScale { MicrometresPerPixel = 48, BarLengthMicrometres = 5000 };

        var picture = CataloguePlates.FromLog(LogRelease.Of(LogSamples.Snapshot), frame => (new PlateFile(frame.FileName, new PixelDimensions(1500, 1000), recorded), default)).Pictures.Single();

        picture.MetresPerPixel.Should().BeApproximately(48e-6, 1e-12);
        picture.HasBar.Should().BeTrue();
    }

    [Theory]
    [InlineData(PlateOmissionReason.NoFile)]
    [InlineData(PlateOmissionReason.Unreadable)]
    public void What_no_plate_shows_is_told_with_the_reason(PlateOmissionReason reason)
    {
        CataloguePlates.FromLog(LogRelease.Of(LogSamples.Snapshot), _ => (null, reason)).LeftOut.Should().Equal(new PlateOmission(LogSamples.Frame.FileName, reason));

        var unscaled = LogSamples.Snapshot with { Frames = [LogSamples.Frame with { MicrometresPerPixel = null }] };
        CataloguePlates.FromLog(LogRelease.Of(unscaled), frame => (new PlateFile(frame.FileName, new PixelDimensions(1500, 1000), null), default))
            .LeftOut.Should().Equal(new PlateOmission(LogSamples.Frame.FileName, PlateOmissionReason.NoScale));
    }

    [Fact]
    public void Subjects_whose_place_is_kept_are_counted()
    {
        var log = LogSamples.Snapshot with { Subjects = [LogSamples.Subject with { Sensitivity = PlaceSensitivity.Hundredth }] };

        CataloguePlates.FromLog(LogRelease.Of(log), frame => (new PlateFile(frame.FileName, new PixelDimensions(1500, 1000), null), default)).PlacesKept.Should().Be(1);
    }

    private static bool Apart(PlatePlace a, PlatePlace b) =>
        a.Left + a.Width <= b.Left + 1e-6 || b.Left + b.Width <= a.Left + 1e-6 || a.Top + a.Height <= b.Top + 1e-6 || b.Top + b.Height <= a.Top + 1e-6;
}
