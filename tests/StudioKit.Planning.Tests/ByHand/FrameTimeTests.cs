using StudioKit.Kits.SetUps;
using StudioKit.Planning.Session;

namespace StudioKit.Planning.Tests.ByHand;

/// <summary>A frame takes as long as looking and focusing, or as the flash takes to be ready again, whichever is longer.</summary>
/// <remarks>A quenched flash spends, and replaces, its share of the charge: at 1/4 power it is ready in a quarter of the time.</remarks>
public sealed class FrameTimeTests
{
    private const string Sections =
        """
        subjects:
          - {name: crane fly, group: flying-insects, length: 30 mm, height: 6 mm, speed: 0 m/s}
        session: {setting-up: 10 min, settling: 0 s, frame-time: FRAME, test-frames: 3, frames: 12}

        """;

    // 40 s for a full-power flash, 13 frames of each kind: where the flash rules, 40 s times its power for each.
    [Theory]
    [InlineData("2 s", true)]
    [InlineData("30 s", false)]
    public void Frames_follow_each_other_no_faster_than_the_flash_recycles(string frameTime, bool flashRules)
    {
        var plan = HandKit.Plan(Sections.Replace("FRAME", frameTime, StringComparison.Ordinal) + HandKit.White, one: "recycle-time: 40 s");
        var power = plan.Exposures.Single().Lights.Single(light => light.Role == LightRole.Below).Power.Fraction;
        var perFrame = Math.Max(flashRules ? 2 : 30, 40 * power);

        perFrame.Should().Be(flashRules ? 40 * power : 30, "the example must show the case that it stands for");
        Seconds(plan, SessionStepKind.Shooting).Should().BeApproximately(12 * perFrame, 1e-6);
        Seconds(plan, SessionStepKind.Testing).Should().BeApproximately(3 * perFrame, 1e-6);
        plan.Session!.Subjects.Single().HoldTime.Seconds.Should().BeApproximately(12 * perFrame, 1e-6);
    }

    // Of two flashes the slower one is waited for, whichever stands first.
    [Fact]
    public void The_slowest_flash_of_a_set_up_is_waited_for()
    {
        var plan = HandKit.Plan(
            Sections.Replace("FRAME", "0.5 s", StringComparison.Ordinal) + HandKit.White
                .Replace("flash: one, role: below", "flash: two, role: below", StringComparison.Ordinal)
                .Replace("flash: two, role: above", "flash: one, role: above", StringComparison.Ordinal),
            one: "recycle-time: 60 s");
        var power = plan.Exposures.Single().Lights.Single(light => light.Flash == "one").Power.Fraction;

        (60 * power).Should().BeGreaterThan(0.5);
        Seconds(plan, SessionStepKind.Shooting).Should().BeApproximately(12 * 60 * power, 1e-6);
    }

    private static double Seconds(Plan plan, SessionStepKind kind) => plan.Session!.Steps.Single(step => step.Kind == kind).Time.Seconds;
}
