using StudioKit.Planning.Session;

namespace StudioKit.Planning.Tests.ByHand;

/// <summary>Frames, times and order of a session, counted.</summary>
public sealed class SessionCountTests
{
    private const string TwoLenses =
        "  - {name: sedge 120, focal-length: 120 mm, aperture: f/2.8 to f/32, largest-magnification: 1:1, magnifications: [1:2], mass: 600 g}\nflashes:";

    private const string Session = "session: {settling: 30 s, frame-time: 4 s, test-frames: 2, frames: 10}\n";

    // 5 frames every 4 s; the flashes are ready sooner.
    [Fact]
    public void A_subject_that_names_its_frames_gets_them()
    {
        var plan = HandKit.Plan("subjects: [{name: crane fly, group: flying-insects, length: 30 mm, height: 6 mm, frames: 5, speed: 0 m/s}]\n" + Session + HandKit.White);

        plan.Session!.Steps.Single(step => step.Kind == SessionStepKind.Shooting).Frames.Should().Be(5);
        plan.Session.Subjects.Single().HoldTime.Seconds.Should().BeApproximately(30 + (5 * 4), 1e-6);
    }

    // Frames of a stack follow each other each second, the rail's pace (common practice, no source), not as slowly as frames that are composed.
    [Fact]
    public void A_stack_goes_faster_than_single_frames()
    {
        var plan = HandKit.Plan("subjects: [{name: crane fly, group: flying-insects, length: 30 mm, depth: 20 mm, stack: yes, speed: 0 m/s}]\n" + Session + HandKit.White, one: "recycle-time: 1 s", two: "recycle-time: 1 s");
        var shooting = plan.Session!.Steps.Single(step => step.Kind == SessionStepKind.Shooting);

        shooting.Frames.Should().BeGreaterThan(12);
        shooting.Time.Seconds.Should().BeApproximately((10 * 4) + ((shooting.Frames - 10) * 1), 1e-6);
    }

    // Of two animals that may be held as long, the wet skin goes first (common practice, no source).
    [Fact]
    public void Of_equal_limits_wet_skins_go_first()
    {
        var plan = HandKit.Plan(
            "subjects:\n  - {name: lizard, group: reptiles, length: 40 mm, hold-limit: 5 min}\n  - {name: newt, group: amphibians, length: 40 mm, hold-limit: 5 min}\n"
            + Session + HandKit.White);

        plan.Session!.Subjects.Select(subject => subject.Name).Should().Equal("newt", "lizard");
    }

    // Both lenses show the same field; from the longer one the animal is twice as far away (f·(1 + 1/m)).
    [Fact]
    public void Of_two_lenses_with_one_field_the_one_with_more_room_is_taken()
    {
        var plan = KitText.Plan(
            HandKit.Of("subjects: [{name: crane fly, group: flying-insects, length: 30 mm, height: 6 mm, speed: 0 m/s}]\n" + Session + HandKit.White)
                .Replace("flashes:", TwoLenses, StringComparison.Ordinal));

        plan.Session!.Steps.Should().OnlyContain(step => step.Framing == "sedge 120 at 1:2");
    }

    // Energy goes with power: frames times power, set-up by set-up, however unlike their numbers of frames.
    [Fact]
    public void Full_power_flashes_are_frames_times_power()
    {
        var plan = HandKit.Plan(
            "subjects:\n  - {name: crane fly, group: flying-insects, length: 30 mm, frames: 40, speed: 0 m/s}\n  - {name: beetle, group: crawling-insects-and-spiders, length: 30 mm, frames: 2, speed: 0 m/s}\n"
            + Session + HandKit.White.Replace("iso: 400", "iso: 400\n    subjects: [crane fly]", StringComparison.Ordinal)
            + HandKit.White.Replace("set-ups:\n", "", StringComparison.Ordinal).Replace("name: white", "name: second", StringComparison.Ordinal)
                .Replace("f/16", "f/11", StringComparison.Ordinal).Replace("iso: 400", "iso: 400\n    subjects: [beetle]", StringComparison.Ordinal));
        double Power(string setUp) => plan.Exposures.Single(exposure => exposure.SetUp == setUp).Lights.Single(light => light.Flash == "one").Power.Fraction;

        Power("white").Should().NotBe(Power("second"));
        plan.Session!.Flashes.Single(use => use.Flash == "one").FullPowerFlashes.Should().BeApproximately((42 * Power("white")) + (4 * Power("second")), 1e-6);
    }

    // A set-up that cannot be exposed is not gone to.
    [Fact]
    public void What_cannot_be_exposed_is_left_out_of_the_session()
    {
        var plan = HandKit.Plan(
            "subjects: [{name: crane fly, group: flying-insects, length: 30 mm, height: 6 mm, speed: 0 m/s}]\n" + Session
            + HandKit.White + "    target-white-margin: 4 stops\n");

        plan.Exposures.Single().IsUsable.Should().BeFalse();
        (plan.Session?.Steps ?? []).Should().BeEmpty();
    }
}
