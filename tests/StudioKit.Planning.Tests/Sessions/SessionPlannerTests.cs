using StudioKit.Kits.Subjects;
using StudioKit.Planning.Checks;
using StudioKit.Planning.Session;
using UnitsNet;

namespace StudioKit.Planning.Tests.Sessions;

public sealed class SessionPlannerTests
{
    private const string Pond = """
        kit: Pond
        camera: {name: body, sensor: 36 mm x 24 mm}
        lenses:
          - {name: reed 60, focal-length: 60 mm, largest-magnification: 1:1, magnifications: [1:4, 1:2, 1:1]}
        flashes:
          - {name: sedge, guide-number: "30 m @ ISO 100, 35 mm", recycle-time: 3 s, flashes-per-set: 150, spare-sets: 1}
          - {name: willow, guide-number: "38 m @ ISO 100, 35 mm", recycle-time: 3.5 s, flashes-per-set: 140, spare-sets: 1}
        panel: {width: 600 mm, depth: 500 mm, underside-reflectance: 0}
        site: {ground-reflectance: 0}
        subjects:
          - {name: weevil, group: crawling-insects-and-spiders, length: 8 mm}
          - {name: frog, group: amphibians, length: 60 mm}
          - {name: sundew, group: plants-and-fungi, length: 50 mm}
        set-ups:
          - name: white
            kind: white-background
            aperture: f/16
            iso: 400
            camera-pitch: 90°
            lights:
              - {flash: sedge, role: below, distance: 45 cm}
              - {flash: willow, role: above, distance: 40 cm}
        session: {setting-up: 10 min, reframing: 1 min, settling: 40 s, frame-time: 6 s, test-frames: 3, frames: 10, rounds: ROUNDS}

        """;

    /// <summary>By hand: settling 40 s and ten frames every 6 s (the flashes are ready sooner) hold the frog for 100 s.
    /// It comes first, at 1:4 (150 mm wide; at 1:2 only 72 mm, which holds 60 mm): so 1:2; the weevil at 1:1; the sundew at 1:2.</summary>
    [Fact]
    public void The_frog_comes_first_and_is_held_for_settling_and_frames_alone()
    {
        var session = KitText.Plan(Pond.Replace("ROUNDS", "1", StringComparison.Ordinal)).Session!;

        session.Subjects.Select(subject => subject.Name).Should().Equal("frog", "weevil", "sundew");
        session.Subjects[0].HoldTime.Seconds.Should().BeApproximately(100, 1e-9);
        session.Subjects[0].HoldLimit!.Value.Minutes.Should().BeApproximately(5, 1e-9);
        session.Subjects[2].HoldTime.Seconds.Should().Be(0);
        session.Steps.Select(step => step.Kind).Should().StartWith(
            [SessionStepKind.SettingUp, SessionStepKind.Testing, SessionStepKind.Settling, SessionStepKind.Shooting, SessionStepKind.Releasing]);
        session.Steps.First(step => step.Kind == SessionStepKind.Testing).SubjectLength.Millimeters.Should().BeApproximately(60, 1e-9);
        session.Steps.Where(step => step.Held).Should().OnlyContain(step => step.Subject != "sundew");

        // 10 min; 18 s test; 100 s frog; 1 min; 18 s; 100 s weevil; 1 min; 18 s; 60 s sundew.
        session.Time.Seconds.Should().BeApproximately(600 + 18 + 100 + 60 + 18 + 100 + 60 + 18 + 60, 1e-6);
    }

    /// <summary>Thirteen frames at each of three framings, each firing both heads: 39 flashes of each in the first round. Each following one begins at 1:2, where the
    /// one before ended and was tested: 3 fewer. 39 + 99·36 = 3603 in a hundred.</summary>
    [Theory]
    [InlineData("1", 39, true)]
    [InlineData("2", 75, true)]
    [InlineData("100", 3603, false)]
    public void Flashes_are_counted_over_all_rounds_and_short_cells_fail_a_check(string rounds, int flashes, bool enough)
    {
        var plan = KitText.Plan(Pond.Replace("ROUNDS", rounds, StringComparison.Ordinal));

        plan.Session!.Flashes.Should().OnlyContain(use => use.Flashes == flashes && use.SetsCarried == 2);
        plan.Session.Flashes.Any(use => !use.Enough).Should().Be(!enough);
        plan.Checks.Where(check => check.Kind == PlanCheckKind.Cells).Select(check => check.Passed)
            .Should().Equal(plan.Session.Flashes.Select(use => use.SetsNeeded <= 2));
    }

    [Fact]
    public void What_sits_in_its_habitat_is_photographed_before_anything_is_held()
    {
        foreach (var block in KitText.Demo("fen-edge.yaml").Session!.Blocks)
        {
            block.First.Steps.SkipWhile(step => !step.Held).Should().NotContain(step => step.WhereItSits);
        }
    }

    [Fact]
    public void Nothing_is_held_over_its_limit_without_a_failing_check()
    {
        var plan = KitText.Demo("fen-edge.yaml");

        plan.Session!.Subjects.Should().NotBeEmpty();
        EveryHoldTimeIsChecked(plan);
    }

    [Theory]
    [InlineData("1 s", false)]
    [InlineData("99 s", false)]
    [InlineData("100 s", true)]
    [InlineData("10 min", true)]
    public void A_limit_that_is_too_short_fails(string limit, bool passes)
    {
        var plan = KitText.Plan(Pond.Replace("ROUNDS", "1", StringComparison.Ordinal)
            .Replace("group: amphibians, length: 60 mm", $"group: amphibians, length: 60 mm, hold-limit: {limit}", StringComparison.Ordinal));

        plan.Checks.Single(check => check.Kind == PlanCheckKind.HoldTime && check.Parts[0] == "frog").Passed.Should().Be(passes);
        EveryHoldTimeIsChecked(plan);
    }

    [Fact]
    public void Long_names_other_alphabets_and_forty_lenses_still_plan()
    {
        var lenses = string.Concat(Enumerable.Range(1, 40).Select(i => FormattableString.Invariant(
            $"  - {{name: \"φακός {i} με πολύ μακρύ όνομα для прибора {i}\", focal-length: {40 + i} mm, magnifications: [1:2]}}\n")));
        var yaml = Pond.Replace("ROUNDS", "1", StringComparison.Ordinal)
            .Replace("set-ups:", string.Concat("  - {name: \"", new string('й', 80), "\", group: snails, length: 20 mm}\nset-ups:"), StringComparison.Ordinal)
            .Replace("flashes:\n", lenses + "flashes:\n", StringComparison.Ordinal);

        var plan = KitText.Plan(yaml);

        plan.Framings.Should().HaveCount(43);
        plan.Session!.Subjects.Should().Contain(subject => subject.Name.Length == 80 && subject.Group == SubjectGroup.Snails);
        plan.Pack.Items.Should().HaveCountGreaterThan(43);
    }

    [Fact]
    public void Without_subjects_or_set_ups_there_is_no_session()
    {
        var plan = KitText.Plan(KitText.Bare);

        plan.Session.Should().BeNull();
        plan.Handling.Should().BeEmpty();
        plan.Checks.Should().NotContain(check => check.Kind == PlanCheckKind.HoldTime);
    }

    private static void EveryHoldTimeIsChecked(Plan plan)
    {
        foreach (var subject in plan.Session!.Subjects.Where(subject => subject.HoldTime > Duration.Zero))
        {
            subject.HoldLimit.Should().NotBeNull();
            plan.Checks.Single(check => check.Kind == PlanCheckKind.HoldTime && check.Parts[0] == subject.Name).Passed.Should().Be(subject.HoldTime <= subject.HoldLimit);
        }
    }
}
