using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Kits.Triggers;
using StudioKit.Planning.Cautions;
using StudioKit.Planning.Checks;
using StudioKit.Planning.Firing;
using StudioKit.Planning.Mending;
using StudioKit.Planning.Session;

namespace StudioKit.Planning.Tests.ByHand;

/// <summary>Which trigger fires which flash, and what stands in its way. Common practice, no source, but for the straight ways, which are geometry.</summary>
public sealed class TriggerTests
{
    private static readonly int Kits = int.TryParse(Environment.GetEnvironmentVariable("STUDIOKIT_RANDOM_KITS"), System.Globalization.CultureInfo.InvariantCulture, out var kits) ? kits : 24;

    private static readonly string[] Ways = ["", "trigger: ear", "trigger: inner", "trigger: deaf", "trigger: lead", "trigger: eye", "trigger: ear, group: B", "trigger: inner, group: B", "trigger: sender"];

    private const string Radios =
        "{name: sender, kind: radio-sender, channel: 5, groups: 3}, {name: receiver, kind: radio-receiver, count: 2, groups: 3}";

    [Fact]
    public void A_kit_that_says_nothing_of_triggers_is_planned_as_ever()
    {
        var plan = HandKit.Plan(HandKit.White);

        plan.Checks.Should().NotContain(check => check.Kind == PlanCheckKind.Triggers);
        plan.Exposures.SelectMany(exposure => exposure.Lights).Should().OnlyContain(light => light.FiredBy == null);
        plan.Exposures.Should().OnlyContain(exposure => !exposure.TestSteps.Contains(TestStep.EachFires));
        plan.Cautions.Should().NotContain(caution => caution.Kind == CautionKind.SharedChannel);
    }

    [Fact]
    public void A_flash_by_radio_is_on_its_senders_channel_and_in_its_group()
    {
        var plan = White(Radios, "trigger: receiver, group: A", "trigger: receiver, group: B");

        Check(plan).Passed.Should().BeTrue();
        plan.Exposures[0].Lights.Select(light => light.FiredBy).Should().Equal(
            new FiringPlan("receiver", TriggerKind.RadioReceiver, "sender", 5, "A"), new FiringPlan("receiver", TriggerKind.RadioReceiver, "sender", 5, "B"));
        plan.Exposures[0].TestSteps[0].Should().Be(TestStep.EachFires);
        plan.Pack.Items.Where(item => item.Name is "sender" or "receiver").Select(item => (item.Name, item.Count)).Should().Equal(("sender", 1), ("receiver", 2));
    }

    [Theory]
    [InlineData(Radios, "trigger: receiver", "", TriggerFaultKind.NotFired)]
    [InlineData(Radios, "trigger: receiver", "trigger: sender", TriggerFaultKind.SenderAtFlash)]
    [InlineData("{name: ear, kind: radio-receiver, count: 2}", "trigger: ear", "trigger: ear", TriggerFaultKind.NoSender)]
    [InlineData("{name: sender, kind: radio-sender, channel: 5}, {name: ear, kind: radio-receiver}, {name: lead, kind: cord, range: 3 m}", "trigger: ear", "trigger: lead", TriggerFaultKind.ShoeTaken)]
    [InlineData("{name: lead, kind: cord, range: 3 m}, {name: other, kind: cord, range: 3 m}", "trigger: lead", "trigger: other", TriggerFaultKind.ShoeTaken)]
    [InlineData("{name: sender, kind: radio-sender, channel: 5}, {name: ear, kind: radio-receiver}", "trigger: ear", "trigger: ear", TriggerFaultKind.UsedTwice)]
    [InlineData("{name: sender, kind: radio-sender, channel: 5}, {name: ear, kind: radio-receiver}, {name: inner, kind: radio-receiver, built-into: one}", "trigger: ear", "trigger: inner", TriggerFaultKind.InOtherFlash)]
    [InlineData("{name: sender, kind: radio-sender, channel: 5}, {name: ear, kind: radio-receiver}, {name: deaf, kind: radio-receiver, channel: 6}", "trigger: ear", "trigger: deaf", TriggerFaultKind.OtherChannel)]
    [InlineData(Radios, "trigger: receiver", "trigger: receiver, group: D", TriggerFaultKind.UnknownGroup)]
    [InlineData("{name: sender, kind: radio-sender, channel: 5, groups: 3, sets-power: yes}, {name: ear, kind: radio-receiver, count: 2, groups: 3}", "trigger: ear", "trigger: ear", TriggerFaultKind.SharesGroup)]
    [InlineData("{name: lead, kind: cord, range: 3 m}, {name: eye, kind: optical-cell, range: 20 cm}", "trigger: lead", "trigger: eye", TriggerFaultKind.OutOfRange)]
    [InlineData("{name: eye, kind: optical-cell, count: 2}", "trigger: eye", "trigger: eye", TriggerFaultKind.NothingToSee)]
    [InlineData("{name: lead, kind: cord, range: 3 m}, {name: thumb, kind: hand}", "trigger: lead", "trigger: thumb", TriggerFaultKind.ShutterTooShort)]
    public void What_stands_in_the_way_of_a_flash_is_found(string triggers, string below, string above, TriggerFaultKind kind)
    {
        var check = Check(White(triggers, below, above));

        check.Passed.Should().BeFalse();
        check.Findings.OfType<CheckFinding.OfTrigger>().Should().Contain(finding => finding.Fault.Kind == kind && finding.Fault.Flash == "two");
    }

    [Theory]
    [InlineData("{name: lead, kind: cord, range: 3 m}, {name: eye, kind: optical-cell}", "trigger: eye", "trigger: lead")]
    [InlineData("{name: sender, kind: radio-sender, channel: 5}, {name: inner, kind: radio-receiver, built-into: one}, {name: outer, kind: radio-receiver, built-into: two}", "trigger: inner", "trigger: outer")]
    public void Cells_follow_a_cord_and_built_in_radios_are_not_carried(string triggers, string below, string above)
    {
        var plan = White(triggers, below, above);

        Check(plan).Passed.Should().BeTrue();
        plan.Pack.Items.Should().NotContain(item => item.Name == "inner" || item.Name == "outer");
    }

    // Seen through the sheet only; EV 15 is the sun; a metered flash sends one ahead.
    [Fact]
    public void An_optical_cell_comes_with_what_may_blind_it()
    {
        var plan = HandKit.Plan(
            Setting("{name: lead, kind: cord, range: 3 m}, {name: eye, kind: optical-cell}", "trigger: eye", "trigger: lead").Replace("iso: 400", "iso: 400\n    ambient: EV 15", StringComparison.Ordinal), two: "metered: yes");

        Check(plan).Caveats.OfType<CheckCaveat.OfTrigger>().Select(caveat => caveat.Caveat.Kind).Should()
            .Equal(TriggerCaveatKind.CellUnderSheet, TriggerCaveatKind.CellInSun, TriggerCaveatKind.CellBeforeTime);
    }

    // The camera looks straight down from s above the subject, the flash hangs d under the sheet: s + d, and a fifth more for a cord; the subject's own height is some millimetres.
    [Fact]
    public void A_cord_runs_from_the_camera_to_the_flash_and_a_fifth_further()
    {
        var long_ = White("{name: lead, kind: cord, range: 3 m}, {name: eye, kind: optical-cell}", "trigger: lead", "trigger: eye");
        var way = (long_.Exposures[0].Framing.SubjectToSensor.Meters + 0.45) * 1.2;

        Check(long_).Passed.Should().BeTrue();
        foreach (var (metres, reaches) in new[] { (way + 0.02, true), (way - 0.02, false) })
        {
            var plan = White(FormattableString.Invariant($"{{name: lead, kind: cord, range: {metres:0.000} m}}, {{name: eye, kind: optical-cell}}"), "trigger: lead", "trigger: eye");
            Check(plan).Findings.OfType<CheckFinding.OfTrigger>().Any(finding => finding.Fault.Kind == TriggerFaultKind.OutOfRange).Should().Be(!reaches);
        }
    }

    [Fact]
    public void Flashes_of_one_power_may_share_a_group_whose_power_the_camera_sets()
    {
        const string Both = """
            triggers: [{name: sender, kind: radio-sender, channel: 5, groups: 3, sets-power: yes}, {name: ear, kind: radio-receiver, count: 2, groups: 3}]
            set-ups: [{name: dusk, kind: low-light-fill, aperture: f/8, ambient: EV 8, lights: [{flash: one, trigger: ear, role: fill, distance: 1 m}, {flash: two, trigger: ear, role: fill, distance: 1 m}]}]

            """;

        Check(HandKit.Plan(Both)).Passed.Should().BeTrue("both fill with the same power from the same distance");
        Check(HandKit.Plan(Both.Replace("distance: 1 m}]", "distance: 2 m}]", StringComparison.Ordinal))).Passed.Should().BeFalse("two stops more power from twice as far");
    }

    [Theory]
    [InlineData("", 200)]
    [InlineData(", sync: 1/100 s", 100)]
    [InlineData(", sync: 1/400 s", 200)]
    public void A_slow_radio_keeps_the_shutter_open_for_longer_and_never_for_less_than_the_camera_asks(string sync, double over)
    {
        var plan = White($"{{name: sender, kind: radio-sender, channel: 5{sync}}}, {{name: receiver, kind: radio-receiver, count: 2}}", "trigger: receiver", "trigger: receiver");

        // A 200th of the third-stop series is 1/203 s, a 100th 1/102 s.
        (1 / plan.Exposures[0].Shutter.Seconds).Should().BeApproximately(over, over * 0.03);
    }

    [Fact]
    public void A_slow_radio_shows_where_daylight_is_too_bright_for_its_shutter()
    {
        const string Noon = "triggers: [{name: sender, kind: radio-sender, channel: 5 SYNC}, {name: ear, kind: radio-receiver}]\nset-ups: [{name: noon, kind: daylight-fill, aperture: f/5.6, ambient: EV 12, lights: [{flash: one, trigger: ear, role: fill, distance: 40 cm}]}]\n";

        // EV 12 at f/5.6 (f/8.4 at half life size, 6.1 stops from f/1) asks for 1/60 s at ISO 100.
        Too(Noon.Replace(" SYNC", "", StringComparison.Ordinal)).Should().BeFalse("the camera's own 200th is enough");
        Too(Noon.Replace(" SYNC", ", sync: 1/30 s", StringComparison.Ordinal)).Should().BeTrue("its thirtieth is a stop too long");

        static bool Too(string text) => HandKit.Plan(text).Exposures[0].Verdict.Missed.Any(missed => missed is Physics.Exposure.SetUps.MissedLimit.AmbientTooBright);
    }

    [Fact]
    public void Triggers_are_set_once_and_again_only_where_a_set_up_asks_for_another_group()
    {
        var steps = Steps("group: B");
        steps.Should().HaveCount(2);
        steps[0].Fired.Select(flash => flash.Flash).Should().Equal("one", "two");
        steps[1].Fired.Should().Equal(new FlashFiring("one", LightRole.Key, new FiringPlan("receiver", TriggerKind.RadioReceiver, "sender", 5, "B")));
        Steps("group: A").Should().ContainSingle("the second set-up finds all as it was");

        static List<SessionStep> Steps(string group) => [.. HandKit.Plan(
            Setting(Radios, "trigger: receiver, group: A", "trigger: receiver, group: B")
            + $"  - {{name: black, kind: dark-background, aperture: f/16, ambient: EV 0, background-distance: 3 m, lights: [{{flash: one, trigger: receiver, {group}, role: key, distance: 40 cm}}]}}\n"
            + "subjects: [{name: moth, group: flying-insects, length: 30 mm}]\n").Session!.Steps.Where(step => step.Kind == SessionStepKind.SettingTriggers)];
    }

    [Fact]
    public void Neighbours_on_the_channel_are_warned_of_where_a_radio_fires()
    {
        const string Moth = "subjects: [{name: moth, group: flying-insects, length: 30 mm}]\n";

        HandKit.Plan(Setting(Radios, "trigger: receiver", "trigger: receiver") + Moth).Cautions.Single(caution => caution.Kind == CautionKind.SharedChannel).Channels.Should().Equal(5);
        HandKit.Plan(Setting("{name: lead, kind: cord}, {name: eye, kind: optical-cell}", "trigger: lead", "trigger: eye") + Moth).Cautions.Should().NotContain(caution => caution.Kind == CautionKind.SharedChannel);
    }

    /// <summary>Whoever makes the change that is offered, and plans again, has a flash that fires.</summary>
    [Theory]
    [InlineData("{name: sender, kind: radio-sender, channel: 5}, {name: ear, kind: radio-receiver}", "trigger: ear", "trigger: ear")]
    [InlineData(Radios, "trigger: receiver", "")]
    [InlineData(Radios, "trigger: receiver", "trigger: receiver, group: D")]
    [InlineData("{name: sender, kind: radio-sender, channel: 5}, {name: ear, kind: radio-receiver}, {name: deaf, kind: radio-receiver, channel: 6}", "trigger: ear", "trigger: deaf")]
    [InlineData("{name: sender, kind: radio-sender, channel: 5, groups: 3, sets-power: yes}, {name: ear, kind: radio-receiver, count: 2, groups: 3}", "trigger: ear", "trigger: ear")]
    [InlineData("{name: lead, kind: cord, range: 10 cm}, {name: long lead, kind: cord, range: 3 m}, {name: eye, kind: optical-cell}", "trigger: lead", "trigger: eye")]
    public void What_is_offered_for_a_flash_that_is_not_fired_makes_it_fire(string triggers, string below, string above)
    {
        var read = KitText.Read(HandKit.Of(Setting(triggers, below, above)));
        var plan = KitPlanner.Plan(read);

        var mend = new CheckMender(plan, changes => KitPlanner.Plan(Changed(read, changes))).Of(Check(plan));

        mend.Should().NotBeNull();
        mend!.Breaks.Should().BeEmpty();
        Check(KitPlanner.Plan(Changed(read, mend.Changes))).Passed.Should().BeTrue();
    }

    /// <summary>Whatever triggers the two flashes are given: what is offered makes the check pass in a plan made afresh.</summary>
    [Fact]
    public void What_is_offered_for_any_triggers_is_kept()
    {
        const string Bag = "{name: sender, kind: radio-sender, channel: 5, groups: 2, sets-power: yes}, {name: ear, kind: radio-receiver, groups: 2}, {name: inner, kind: radio-receiver, groups: 2, built-into: two}, "
            + "{name: deaf, kind: radio-receiver, channel: 6}, {name: lead, kind: cord, range: 3 m}, {name: eye, kind: optical-cell}";
        var trigger = Gen.Int[0, Ways.Length - 1].Select(way => Ways[way]);
        var kept = 0;
        Gen.Select(trigger, trigger).Sample(
            pair =>
            {
                var read = KitText.Read(HandKit.Of(Setting(Bag, pair.Item1, pair.Item2)));
                var plan = KitPlanner.Plan(read);
                if (Check(plan).Passed || new CheckMender(plan, changes => KitPlanner.Plan(Changed(read, changes))).Of(Check(plan)) is not { } mend)
                {
                    return;
                }

                Check(KitPlanner.Plan(Changed(read, mend.Changes))).Passed.Should().BeTrue("{0} and {1} were changed by {2}", pair.Item1, pair.Item2, mend.Changes);
                kept++;
            },
            iter: Kits,
            threads: 1);

        kept.Should().BeGreaterThan(0, "a test of nothing must not pass");
    }

    private static KitReadResult Changed(KitReadResult read, Physics.ValueList<Changes.KitChange> changes) => read with { Kit = changes.Aggregate(read.Kit!, (kit, change) => change.Apply(kit)) };

    private static string Setting(string triggers, string below, string above) => $"triggers: [{triggers}]\n" + HandKit.White
        .Replace("flash: one, ", $"flash: one, {More(below)}", StringComparison.Ordinal)
        .Replace("flash: two, ", $"flash: two, {More(above)}", StringComparison.Ordinal);

    private static Plan White(string triggers, string below, string above) => HandKit.Plan(Setting(triggers, below, above));

    private static PlanCheck Check(Plan plan) => plan.Checks.First(check => check.Kind == PlanCheckKind.Triggers);

    private static string More(string keys) => keys.Length == 0 ? "" : keys + ", ";
}
