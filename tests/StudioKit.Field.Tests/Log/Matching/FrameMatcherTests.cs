using StudioKit.Field.Log;
using StudioKit.Field.Log.Matching;
using StudioKit.Field.Pictures;
using StudioKit.Field.Scale;

namespace StudioKit.Field.Tests.Log.Matching;

public sealed class FrameMatcherTests
{
    private static readonly TimeSpan Summer = TimeSpan.FromHours(1);
    private static readonly DateTimeOffset Start = new(2026, 5, 9, 14, 0, 0, Summer);
    private static readonly FieldSession Session = new() { Id = "fen", Start = Start };

    [Theory]
    [InlineData("14:10:00", "a")]
    [InlineData("14:17:59", "a")]
    [InlineData("14:18:01", null)]
    [InlineData("14:20:00", "b")]
    [InlineData("14:29:59", "b")]
    [InlineData("14:30:01", "c")]
    [InlineData("14:45:00", null)]
    [InlineData("14:09:59", null)]
    public void A_picture_shows_whoever_was_in_hand_until_released_or_the_next_was_taken_up(string time, string? shown)
    {
        // a: 14:10 to 14:18; b from 14:20, its release not noted; c from 14:30.
        var log = Log(Held("a", 10, 18), Held("b", 20, null), Held("c", 30, 40));

        Match(log, At(time)).Subject.Subject?.Id.Should().Be(shown);
    }

    [Fact]
    public void Of_two_in_hand_the_one_taken_up_last_is_meant_and_the_other_is_told()
    {
        var match = Match(Log(Held("a", 10, 30), Held("b", 20, 25)), At("14:22:00")).Subject;

        (match.Kind, match.Subject!.Id, match.Others.Single().Id).Should().Be((SubjectMatchKind.LastOfSeveral, "b", "a"));
    }

    [Fact]
    public void What_is_not_matched_says_how_far_the_nearest_subject_is()
    {
        var log = Log(Held("a", 10, 18));

        (Match(log, At("14:20:30")).Subject is { Nearest.Id: "a", Gap: var after } ? after : default).Should().Be(TimeSpan.FromSeconds(150));
        (Match(log, At("14:09:00")).Subject is { Nearest.Id: "a", Gap: var before } ? before : default).Should().Be(TimeSpan.FromMinutes(-1));
        Match(log, Picture(new FrameSettings())).Subject.Kind.Should().Be(SubjectMatchKind.NoTime);
        Match(Log(), At("14:12:00")).Subject.Should().BeEquivalentTo(new { Kind = SubjectMatchKind.NobodyInHand, Nearest = (FieldSubject?)null });
    }

    [Fact]
    public void A_camera_that_tells_its_zone_is_believed_and_one_that_does_not_goes_by_the_sessions()
    {
        var log = Log(Held("a", 10, 18));

        // 14:12 in the fen is 15:12 on a camera left at two hours ahead.
        Match(log, Picture(new FrameSettings { TakenLocal = new DateTime(2026, 5, 9, 15, 12, 0), ClockOffset = TimeSpan.FromHours(2) })).Subject.Subject!.Id.Should().Be("a");
        new FrameMatcher(log, null, null, TimeSpan.FromHours(-8), null).Match(At("14:12:00")).Subject.Subject!.Id.Should().Be("a", "the computer at home stands elsewhere");
    }

    [Fact]
    public void A_camera_clock_learnt_from_one_picture_sets_the_others_right() =>
        Gen.Select(Gen.Int[-400_000, 400_000], Gen.Int[0, 479], Gen.Int[-14 * 60, 14 * 60]).Sample((seconds, at, zone) =>
        {
            var truth = Start.AddMinutes(10).AddSeconds(at);
            var clock = CameraClock.Learn(Camera(Start.ToOffset(TimeSpan.FromMinutes(zone)), seconds), Start.ToOffset(TimeSpan.FromMinutes(zone))).Value!;
            var match = new FrameMatcher(Log(Held("a", 10, 18)), null, clock, Summer, null).Match(Picture(Camera(truth, seconds)));

            return clock.Ahead == TimeSpan.FromSeconds(seconds) && match.Subject.Subject?.Id == "a" && match.Subject.Taken == truth;
        });

    [Fact]
    public void A_picture_logged_before_stays_with_its_subject_and_keeps_what_its_files_do_not_say()
    {
        var frame = new FieldFrame { SubjectId = "a", FileName = "p.jpg", Caption = "from above", MicrometresPerPixel = 5, Taken = Start.AddMinutes(2) };
        var log = Log(Held("a", 10, 18), Held("b", 20, 25)) with { Frames = [frame] };

        var match = Match(log, At("14:22:00"));

        match.Subject.Kind.Should().Be(SubjectMatchKind.LoggedBefore);
        match.ToFrame(log.Frames).Should().Be(frame with { Iso = null }, "the clock was not given, so the time that stands is not put out of order");
    }

    /// <summary>Who wrote a set-up down was there; settings may fit the card of another.</summary>
    [Fact]
    public void A_framing_and_a_set_up_that_somebody_wrote_down_are_not_replaced_by_what_settings_look_like()
    {
        var written = new FieldFrame { SubjectId = "a", FileName = "p.jpg", Framing = "reed 55 at 1:4", SetUp = "white" };
        var seen = Match(Log(Held("a", 10, 18)) with { Frames = [written] }, At("14:12:00"));
        var guess = seen with { Framing = new FramingMatch(FramingMatchKind.Settings, "reed 55 at 1:2", "habitat by day", []) };
        var sidecar = guess with { Framing = guess.Framing with { Kind = FramingMatchKind.Sidecar } };

        guess.ToFrame([written]).Should().BeEquivalentTo(new { Framing = "reed 55 at 1:4", SetUp = "white" });
        guess.ToFrame([written with { Framing = "", SetUp = "" }]).Should().BeEquivalentTo(new { Framing = "reed 55 at 1:2", SetUp = "habitat by day" });
        sidecar.ToFrame([written])!.Framing.Should().Be("reed 55 at 1:2", "its scale was made for that framing");
    }

    [Fact]
    public void Another_picture_of_the_same_name_from_another_year_is_another_picture()
    {
        var old = new FieldFrame { SubjectId = "a", FileName = "p.jpg", Taken = Start.AddYears(-1) };

        Match(Log(Held("a", 10, 18), Held("b", 20, 25)) with { Frames = [old] }, At("14:22:00")).Subject.Subject!.Id.Should().Be("b");
    }

    [Fact]
    public void The_scale_of_a_sidecar_is_taken_only_for_the_picture_it_was_made_for()
    {
        var log = Log(Held("a", 10, 18));
        var scale = new RecordedScale { MicrometresPerPixel = 5.6, Pixels = new PixelDimensions(4000, 6000) };

        Match(log, At("14:12:00") with { Scale = scale }).ToFrame([])!.MicrometresPerPixel.Should().Be(5.6);
        Match(log, At("14:12:00") with { Scale = scale with { Pixels = new PixelDimensions(3000, 2000) } }).ToFrame([])!.MicrometresPerPixel.Should().BeNull();
    }

    private static FrameMatch Match(LogSnapshot log, LoggedPicture picture) => new FrameMatcher(log, null, null, Summer, null).Match(picture);

    private static LogSnapshot Log(params FieldSubject[] subjects) => LogSnapshot.Empty with { Sessions = [Session], Subjects = subjects };

    private static FieldSubject Held(string id, int from, int? until) =>
        new() { Id = id, SessionId = "fen", HoldStart = Start.AddMinutes(from), HoldEnd = until is { } minutes ? Start.AddMinutes(minutes) : null };

    private static FrameSettings Camera(DateTimeOffset truth, int ahead) => new() { TakenLocal = truth.DateTime.AddSeconds(ahead) };

    private static LoggedPicture At(string time) => Picture(new FrameSettings { TakenLocal = new DateTime(2026, 5, 9) + TimeSpan.Parse(time, System.Globalization.CultureInfo.InvariantCulture) });

    private static LoggedPicture Picture(FrameSettings settings) => new("p.jpg", settings, new PixelDimensions(6000, 4000), null);
}
