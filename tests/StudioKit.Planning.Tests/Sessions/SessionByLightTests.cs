using StudioKit.Planning.Checks;
using StudioKit.Planning.Session;

namespace StudioKit.Planning.Tests.Sessions;

/// <summary>No animal waits for another set-up's light; each block of one light has a first round and others that follow it.</summary>
public sealed class SessionByLightTests
{
    private const string Fen = """
        kit: Fen
        camera: {name: body, sensor: 36 mm x 24 mm, iso: 100 to 6400}
        lenses:
          - {name: reed 60, focal-length: 60 mm, aperture: f/2.8 to f/22, largest-magnification: 1:1, magnifications: [1:2]}
        accessories: {filters: [{name: polariser, kind: polariser, loss: 1.5 stops}]}
        flashes:
          - {name: sedge, guide-number: "30 m @ ISO 100, 35 mm", recycle-time: 3 s, flashes-per-set: 150, spare-sets: 5}
          - {name: willow, guide-number: "38 m @ ISO 100, 35 mm", recycle-time: 3.5 s, flashes-per-set: 140, spare-sets: 5}
        panel: {width: 600 mm, depth: 500 mm, underside-reflectance: 0}
        site: {ground-reflectance: 0}
        subjects:
          - {name: newt, group: amphibians, length: 60 mm, hold-limit: 5 min, speed: 0 m/s}
        set-ups:
          - name: white
            kind: white-background
            aperture: f/16
            iso: 400
            ambient: WHITE
            camera-pitch: 90°
            lights:
              - {flash: sedge, role: below, distance: 45 cm}
              - {flash: willow, role: above, distance: 40 cm}
          - name: black
            kind: dark-background
            aperture: f/16
            iso: 400
            ambient: BLACK
            background-distance: 3 m
            lights: [{flash: willow, role: key, distance: 40 cm}]
        session: {setting-up: 10 min, changing: 3 min, settling: 40 s, frame-time: 6 s, test-frames: 3, frames: 10, rounds: 3}

        """;

    // White is planned for EV 8 and black for EV 9; each bears the other's light.
    private static readonly Plan Alike = Planned("EV 8", "EV 9");

    // At EV 16 the black background would have to come from flashes eight stops stronger.
    [Fact]
    public void Set_ups_that_do_not_bear_each_others_light_share_no_round_and_the_animal_is_fetched_anew()
    {
        var session = Planned("EV 10", "EV 2").Session!;

        foreach (var block in session.Blocks)
        {
            block.First.Steps.Select(step => step.SetUp).Distinct().Should().ContainSingle();
            block.First.Steps.Count(step => step.Kind == SessionStepKind.Settling).Should().Be(1);
            block.First.Steps.Count(step => step.Kind == SessionStepKind.Releasing).Should().Be(1);
        }

        session.Blocks.Should().HaveCount(2);
        session.Subjects.Single().HoldTime.Seconds.Should().BeApproximately(40 + (10 * 6), 1e-9, "it is held for one set-up at a time");
    }

    // Once fetched: 40 s, 60 s, then 3 min, 18 s of test and 60 s in the other set-up.
    [Fact]
    public void Set_ups_that_bear_each_others_light_share_a_round_and_the_animal_is_held_through()
    {
        var session = Alike.Session!;

        session.Blocks.Should().ContainSingle().Which.SetUps.Select(setUp => setUp.SetUp).Should().Equal("white", "black");
        session.Subjects.Single().HoldTime.Seconds.Should().BeApproximately(40 + 60 + 180 + 18 + 60, 1e-9);
    }

    /// <summary>First: 10 min, 18 s, 40 s, 60 s, 3 min, 18 s, 60 s. Each that follows goes back first: 3 min in place of the 10.</summary>
    [Fact]
    public void Setting_up_is_done_once_and_each_following_round_goes_back_to_its_beginning()
    {
        var block = Alike.Session!.Blocks.Single();
        const double once = 18 + 40 + 60 + 180 + 18 + 60;

        block.First.Time.Seconds.Should().BeApproximately(600 + once, 1e-9);
        block.Following!.Time.Seconds.Should().BeApproximately(180 + once, 1e-9);
        block.Time.Seconds.Should().BeApproximately(600 + once + (2 * (180 + once)), 1e-9);
        block.Following.Steps.Should().NotContain(step => step.Kind == SessionStepKind.SettingUp);
        (block.First.Frames, block.Following.Frames, block.Frames).Should().Be((26, 26, 78));
        (Alike.Session.Time, Alike.Session.Frames).Should().Be((block.Time, 78));
        Alike.Session.Flashes.Single(use => use.Flash == "willow").Flashes.Should().Be(78);
        Alike.Session.Flashes.Single(use => use.Flash == "sedge").Flashes.Should().Be(39, "it fires on the white panel alone");
    }

    // One set-up at one framing: the rounds that follow neither set up nor test.
    [Fact]
    public void A_studio_that_stays_as_it_is_needs_no_second_test()
    {
        var block = Planned("EV 10", "EV 2").Session!.Blocks.Single(block => block.SetUps[0].SetUp == "white");

        block.Following!.Steps.Select(step => step.Kind).Should().Equal(SessionStepKind.Settling, SessionStepKind.Shooting, SessionStepKind.Releasing);
        block.Following.Time.Seconds.Should().BeApproximately(100, 1e-9);
        block.Parts.Select(part => part.Part).Distinct().Should().Equal(RoundPart.First, RoundPart.Every);
    }

    [Theory]
    [InlineData("clock: 09:00 to 12:00", "clock: 13:00 to 15:00", 2)]
    [InlineData("clock: 09:00 to 13:00", "clock: 12:00 to 15:00", 1)]
    [InlineData("light-window: EV 8 to EV 8.5", "light-window: EV 8.6 to EV 9", 2)]
    public void Hours_and_windows_of_light_of_the_kit_part_set_ups(string white, string black, int blocks)
    {
        var session = KitText.Plan(Text("EV 8", "EV 9")
            .Replace("ambient: EV 8", $"ambient: EV 8\n    {white}", StringComparison.Ordinal)
            .Replace("ambient: EV 9", $"ambient: EV 9\n    {black}", StringComparison.Ordinal)).Session!;

        session.Blocks.Should().HaveCount(blocks);
    }

    // 18 + 40 + 60 s once, after 10 min, and twice 100 s: 15 min 18 s. A quarter of an hour is too short, 16 minutes are not.
    [Theory]
    [InlineData("10:00 to 10:15", false)]
    [InlineData("10:00 to 10:16", true)]
    [InlineData("23:50 to 00:06", true)]
    public void Rounds_that_do_not_fit_their_hours_fail_a_check(string hours, bool passes)
    {
        var plan = KitText.Plan(Text("EV 10", "EV 2").Replace("ambient: EV 10", $"ambient: EV 10\n    clock: {hours}", StringComparison.Ordinal));

        plan.Checks.Single(check => check.Kind == PlanCheckKind.Hours).Passed.Should().Be(passes);
    }

    /// <summary>Planned again in every light of its window a set-up works, and in the stop beyond, where the window ends within four stops, it does not.</summary>
    [Fact]
    public void Windows_are_the_light_in_which_the_exposures_work()
    {
        foreach (var window in Alike.Session!.Blocks.SelectMany(block => block.SetUps))
        {
            var (darkest, brightest) = (window.Works.Darkest.AtIso100, window.Works.Brightest.AtIso100);
            foreach (var light in Enumerable.Range(-4, 9).Select(stops => window.Planned.AtIso100 + stops).Where(light => light >= darkest && light <= brightest))
            {
                WorksAt(window, light).Should().BeTrue("{0} works at EV {1}", window.SetUp, light);
            }

            (brightest - window.Planned.AtIso100 >= 4 || !WorksAt(window, brightest + 1)).Should().BeTrue();
            (window.Planned.AtIso100 - darkest >= 4 || !WorksAt(window, darkest - 1)).Should().BeTrue();
        }
    }

    // The sheet is for the white background alone; before black the animal sits on a perch.
    [Fact]
    public void Only_what_stands_on_the_panel_settles_on_the_sheet() => Planned("EV 10", "EV 2").Session!.Steps
        .Where(step => step.Kind == SessionStepKind.Settling).Should().OnlyContain(step => step.OnPanel == (step.SetUp == "white"));

    // Black has no rim light here.
    [Fact]
    public void Where_no_rim_light_stands_none_is_tested() => Alike.Session!.Steps
        .Where(step => step.Kind == SessionStepKind.Testing).SelectMany(step => step.Tests).Should().NotContain(TestStep.RimAlone);

    [Fact]
    public void A_polariser_is_turned_before_an_animal_is_fetched()
    {
        var plan = KitText.Plan(Text("EV 8", "EV 9").Replace("background-distance: 3 m", "background-distance: 3 m\n    filter: polariser", StringComparison.Ordinal));
        var block = plan.Session!.Blocks.Single();

        foreach (var round in new[] { block.First, block.Following! })
        {
            round.Steps.Should().Contain(step => step.Kind == SessionStepKind.TurningPolariser && step.SetUp == "black");
            round.Steps.Where(step => step.Kind == SessionStepKind.TurningPolariser).Should().OnlyContain(step => !step.Held);
            round.Steps.TakeWhile(step => step.Kind != SessionStepKind.TurningPolariser || step.SetUp != "black").Count(step => step.Kind == SessionStepKind.Settling)
                .Should().Be(round.Steps.TakeWhile(step => step.Kind != SessionStepKind.TurningPolariser || step.SetUp != "black").Count(step => step.Kind == SessionStepKind.Releasing));
        }

        plan.Session.Steps.SelectMany(step => step.Tests).Should().NotContain(TestStep.TurnPolariser);
    }

    // Thin cloud, an umbrella's shade and last light are three lights; nobody can wait through them with a frog in a tub.
    [Fact]
    public void The_fen_is_gone_through_by_its_light()
    {
        var session = KitText.Demo("fen-edge.yaml").Session!;

        session.Blocks.Select(block => string.Join(", ", block.SetUps.Select(setUp => setUp.SetUp))).Should().Equal("habitat by day", "white, black", "dusk");
        session.Steps.Count(step => step.Kind == SessionStepKind.SettingUp).Should().Be(1);
        session.Blocks.Should().OnlyContain(block => block.Following!.Steps.All(step => step.Kind != SessionStepKind.SettingUp));
    }

    private static bool WorksAt(SetUpWindow window, double light)
    {
        var plan = window.SetUp == "white" ? Planned(FormattableString.Invariant($"EV {light}"), "EV 9") : Planned("EV 8", FormattableString.Invariant($"EV {light}"));
        return plan.Exposures.Single(exposure => exposure.SetUp == window.SetUp).Verdict.Verdict == Verdict.Works;
    }

    private static Plan Planned(string white, string black) => KitText.Plan(Text(white, black));

    private static string Text(string white, string black) => Fen.Replace("WHITE", white, StringComparison.Ordinal).Replace("BLACK", black, StringComparison.Ordinal);
}
