using System.Text;
using StudioKit.Kits;
using StudioKit.Kits.Exploring;
using StudioKit.Planning;
using StudioKit.Planning.Exploring;
using StudioKit.Web.Results;

namespace StudioKit.Web.Tests.Engine;

/// <summary>What the page is told of a kit's designs, held against the core's own search of the same text.</summary>
public sealed class DesignsTests
{
    internal const string Kit =
        """
        kit: Sallow carr
        camera: {name: body, sensor: 36 mm x 24 mm, flash-sync: 1/200 s, iso: 100 to 6400, mass: 700 g}   # weighed in spring
        lenses:
          - {name: rush 60, focal-length: 60 mm, aperture: f/2.8 to f/32, largest-magnification: 1:1, magnifications: [1:4, 1:2], mass: 300 g}
        flashes:
          - {name: one, guide-number: "24 m @ ISO 100, 35 mm", mass: 250 g, flashes-per-set: 120, cell: aa-nimh-2000, cell-count: 4, spare-sets: 1}
        modifiers:
          - {name: dome, kind: dome, size: 75 mm x 50 mm, transmittance: 0.8, mass: 25 g}
        pack:
          bags:
            - {name: shoulder bag, inside: 420 mm x 280 mm x 160 mm, mass: 1.2 kg}
        subjects:
          - {name: crane fly, group: flying-insects, length: 30 mm, height: 6 mm, speed: 1 mm/s}
        set-ups:
          - name: black
            kind: dark-background
            aperture: f/16
            shutter: 1/200 s
            iso: 400
            ambient: EV 4
            lights:
              - {flash: one, role: key, modifier: dome, distance: 40 cm}   # an arm's length
        session: {frames: 20, rounds: 2}
        explore:
          measures: [mass, energy]
          limits: [mass 9 kg]
          choices:
            - {name: dome, leave-out: ["modifiers[dome]", "set-ups[black].lights[one].modifier"]}
            - {name: place, key: "set-ups[black].lights[one].distance", values: [30 cm, 40 cm, 60 cm]}
            - {name: cells, key: "flashes[one].cell", values: [aa-nimh-2000, aa-nimh-2500, aa-lithium]}

        """;

    private static readonly string[] MassAndEnergy = ["mass", "energy"];

    [Fact]
    public void What_is_found_step_by_step_is_what_the_core_finds_at_once()
    {
        var found = Searched(new Asked(), Kit, MassAndEnergy).Found!;
        var core = Core(Kit, DesignMeasure.Mass, DesignMeasure.Energy);

        found.Designs.Select(design => design.Code).Should().Equal(core.Shown.Select(design => design.Code.ToString()));
        found.Hash.Should().Be(core.Space.AsWritten.ContentHash);
        found.Measures.Should().Equal("mass carried", "energy");
        found.Proof.Should().Contain("All there are: no other design beats one that is shown.");
        found.Effects.Should().HaveCount(3).And.Contain(effect => effect.Subject == "place" && effect.Second != "not tried");
        core.Shown.Should().HaveCountGreaterThan(1, "else nothing is chosen between");
    }

    [Fact]
    public void What_a_design_wins_is_where_it_is_better_than_the_kit_and_what_it_gives_up_where_it_is_worse()
    {
        var found = Searched(new Asked(), Kit, MassAndEnergy).Found!;
        var core = Core(Kit, DesignMeasure.Mass, DesignMeasure.Energy);
        var (mass, energy) = (core.Own.Figures![DesignMeasure.Mass]!.Value, core.Own.Figures[DesignMeasure.Energy]!.Value);

        foreach (var (design, shown) in found.Designs.Zip(core.Shown))
        {
            design.Wins.Any(words => words.StartsWith("saves", StringComparison.Ordinal)).Should().Be(shown.Figures[DesignMeasure.Mass] < mass);
            design.GivesUp.Any(words => words.StartsWith("weighs", StringComparison.Ordinal)).Should().Be(shown.Figures[DesignMeasure.Mass] > mass);
            design.Wins.Any(words => words.EndsWith("less out of the cells", StringComparison.Ordinal)).Should().Be(shown.Figures[DesignMeasure.Energy] < energy);
            design.GivesUp.Should().NotContain(words => words.Contains("less out of the cells", StringComparison.Ordinal));
        }

        found.Designs.Should().Contain(design => design.Wins.Count > 0);
    }

    [Fact]
    public void Each_step_tries_one_design_and_lets_another_question_in()
    {
        var asked = new Asked();
        var request = Request(Kit, MassAndEnergy);
        asked.For(EngineQuestions.Search, request).Tried.Should().Be(1, "the kit as it is comes first");

        var typed = asked.Plan(Kit.Replace("f/16", "f/11", StringComparison.Ordinal));
        var next = asked.For(EngineQuestions.Search, request with { Step = 1 });

        typed.Verdict.Standing.Should().NotBe(Standing.Unread);
        (next.IsDone, next.Tried, next.Of).Should().Be((false, 2, 18));
        next.Said.Should().Be("2 of 18 designs tried, 1 of them beaten by none.");
    }

    [Fact]
    public void A_search_that_is_stopped_tells_what_it_found_and_that_it_was_stopped()
    {
        var asked = new Asked();
        var request = Request(Kit, MassAndEnergy);
        foreach (var step in Enumerable.Range(0, 5))
        {
            asked.For(EngineQuestions.Search, request with { Step = step });
        }

        var last = asked.For(EngineQuestions.Search, request with { Step = 5, IsLast = true });

        last.IsDone.Should().BeTrue();
        last.Tried.Should().Be(5, "stopping tries no more");
        last.Found!.Designs.Should().NotBeEmpty();
        last.Found.Said.Should().StartWith("Stopped before all was tried");
        last.Found.Proof.Should().Contain(line => line.StartsWith("5 of 18 designs were tried", StringComparison.Ordinal));
    }

    [Fact]
    public void A_designs_kit_is_the_kits_text_with_its_values_and_every_comment()
    {
        var asked = new Asked();
        var found = Searched(asked, Kit, MassAndEnergy).Found!;
        var space = SpaceOf(Kit);

        foreach (var design in found.Designs)
        {
            var kit = asked.For(EngineQuestions.Design, new DesignRequest(design.Code));

            kit.Problem.Should().BeEmpty();
            kit.Text.Should().Be(space.TextOf(DesignCode.Read(design.Code, space.Choices)!)!.Text).And.Contain("# weighed in spring").And.Contain("# an arm's length");
            Figures(kit.Text).Should().Equal(design.Figures, "a kit taken is the design that was shown");
        }
    }

    [Fact]
    public void A_limit_is_read_as_the_command_line_reads_it_and_kept()
    {
        var asked = new Asked();
        var without = Searched(asked, Kit, MassAndEnergy).Found!;
        var lightest = Core(Kit, DesignMeasure.Mass, DesignMeasure.Energy).Shown.Min(design => design.Figures[DesignMeasure.Mass]!.Value);

        var within = Searched(asked, Kit, MassAndEnergy, new FormValue("mass", FormattableString.Invariant($"{lightest / 1000} kg"))).Found!;

        within.Designs.Should().NotBeEmpty().And.HaveCountLessThan(without.Designs.Count);
        within.Proof.Should().Contain(line => line.Contains("are beyond a limit", StringComparison.Ordinal));
    }

    [Fact]
    public void A_limit_that_cannot_be_read_is_refused_at_its_measure_and_nothing_is_searched()
    {
        var answer = new Asked().For(EngineQuestions.Search, Request(Kit, MassAndEnergy, new FormValue("mass", "3 stone"), new FormValue("energy", "4 Wh")));

        (answer.IsDone, answer.Found).Should().Be((true, null));
        answer.Refused.Should().ContainSingle().Which.Key.Should().Be("mass");
        answer.Refused[0].Text.Should().Contain("stone");
    }

    [Fact]
    public void Limits_that_no_design_keeps_are_answered_with_the_best_that_stand()
    {
        var found = Searched(new Asked(), Kit, MassAndEnergy, new FormValue("mass", "100 g")).Found!;

        found.Designs.Should().BeEmpty();
        found.Picture.Should().BeNull();
        found.Said.Should().StartWith("No design that was tried stands within the limits").And.Contain("mass carried").And.Contain("The kit as it is lies beyond a limit.");
    }

    [Theory]
    [InlineData("mass", DesignMeasure.Mass)]
    [InlineData("price", DesignMeasure.Price)]
    public void One_measure_alone_is_answered_with_its_best_design(string key, DesignMeasure measure)
    {
        var found = Searched(new Asked(), Kit, [key]).Found!;
        var core = Core(Kit, measure);

        found.Designs.Should().ContainSingle().Which.Code.Should().Be(core.Shown.Single().Code.ToString());
        found.Picture.Should().BeNull("one measure has no picture");
    }

    [Fact]
    public void A_measure_that_the_plan_has_no_figure_for_says_what_would_give_one()
    {
        var asked = new Asked();
        var open = Open(asked, Kit);
        var answer = asked.For(EngineQuestions.Search, Request(Kit, ["mass", "white-margin"]));

        open.Measures.Single(measure => measure.Key == "white-margin").Unknown.Should().Contain("no set-up lights a sheet that is to be white");
        (answer.IsDone, answer.Found).Should().Be((true, null));
        answer.Said.Should().Contain("no set-up lights a sheet that is to be white");
    }

    [Theory]
    [InlineData]
    [InlineData("mass", "price", "flashes", "energy", "cards")]
    public void Designs_are_compared_by_no_more_than_four_measures_and_by_one_at_least(params string[] measures)
    {
        var answer = new Asked().For(EngineQuestions.Search, Request(Kit, measures));

        (answer.IsDone, answer.Found).Should().Be((true, null));
        answer.Said.Should().Contain("two to four measures");
    }

    [Fact]
    public void What_is_open_is_told_with_how_the_kit_settles_it_and_what_it_is_usually_compared_by()
    {
        var open = Open(new Asked(), Kit);

        open.Obstacle.Should().BeEmpty();
        open.Said.Should().Be("The kit's own choices: 3 choices, 18 designs.");
        open.Choices[1].Should().Be(new StatePair("place", "40 cm", "30 cm, 60 cm"));
        open.Measures.Where(measure => measure.IsUsual).Select(measure => measure.Key).Should().Equal("mass", "energy");
        open.Limits.Should().Equal("mass 9 kg");
        open.Measures.Should().HaveCount(DesignFigures.Measures.Count).And.OnlyContain(measure => (measure.Now.Length == 0) == (measure.Unknown.Length > 0));
        open.Measures.Select(measure => DesignLimitText.TryRead($"{measure.Key} {measure.LimitExample}", out _, out var problem) ? "" : problem).Should().OnlyContain(problem => problem.Length == 0, "an example is one that can be typed");
    }

    [Fact]
    public void What_is_open_is_read_a_choice_at_a_time_and_once()
    {
        var asked = new Asked();
        foreach (var step in Enumerable.Range(0, 3))
        {
            asked.For(EngineQuestions.Designs, new DesignsRequest(Kit, "kit.yaml", step)).IsDone.Should().BeFalse("there are three choices");
            asked.Plan(Kit.Replace("f/16", "f/11", StringComparison.Ordinal)).Verdict.Standing.Should().NotBe(Standing.Unread);
        }

        asked.For(EngineQuestions.Designs, new DesignsRequest(Kit, "kit.yaml", 3)).Choices.Should().HaveCount(3);
        asked.For(EngineQuestions.Designs, new DesignsRequest(Kit, "kit.yaml", 0)).Choices.Should().HaveCount(3, "it was read before");
    }

    [Fact]
    public void A_kit_that_marks_nothing_is_varied_in_what_usually_is_open()
    {
        var open = Open(new Asked(), Kit[..Kit.IndexOf("explore:", StringComparison.Ordinal)]);

        open.Said.Should().StartWith("The kit marks nothing as open, so what usually is open is varied");
        open.Choices.Select(choice => choice.Subject).Should().Contain("spare cells of one");
    }

    [Theory]
    [InlineData("key: \"flashes[one].cell\"", "key: \"flashes[two].cell\"", "changes what the kit has not")]
    [InlineData("values: [30 cm, 40 cm, 60 cm]", "values: [40 cm]", "is empty")]
    [InlineData("key: \"flashes[one].cell\", values: [aa-nimh-2000, aa-nimh-2500, aa-lithium]", "key: \"set-ups[black].lights[one].distance\", values: [35 cm, 50 cm]", "contradict each other")]
    public void A_choice_that_is_closed_empty_or_contradicts_another_is_told_with_its_line(string at, string instead, string says)
    {
        var text = Kit.Replace(at, instead, StringComparison.Ordinal);
        var asked = new Asked();

        var open = Open(asked, text);
        var answer = asked.For(EngineQuestions.Search, Request(text, MassAndEnergy));

        open.Obstacle.Should().NotBeEmpty();
        open.Faults.Should().Contain(fault => fault.Message.Contains(says, StringComparison.Ordinal));
        open.Faults.Should().NotContain(fault => fault.Line > 0 && !text.Split('\n')[fault.Line - 1].Contains("name:", StringComparison.Ordinal));
        (answer.IsDone, answer.Found, answer.Said.Length > 0).Should().Be((true, null, true));
    }

    [Fact]
    public void A_kit_that_cannot_be_read_is_not_explored()
    {
        var text = Kit.Replace("mass: 700 g", "mass: 700", StringComparison.Ordinal);
        var asked = new Asked();

        Open(asked, text).Obstacle.Should().Contain("cannot be read");
        asked.For(EngineQuestions.Search, Request(text, MassAndEnergy)).Said.Should().Contain("cannot be read");
    }

    [Fact]
    public void What_was_measured_for_a_kit_counts_in_its_designs()
    {
        var fen = Asked.Demo();
        var asked = new Asked();
        var before = Open(asked, fen).Measures.Single(measure => measure.Key == "white-margin").Now;

        asked.For(EngineQuestions.Correct, new CorrectionTexts(["correction-of: Fen edge\ndate: 2026-05-09\npanel-transmittance: {stops: 0.11, plus-minus: 0.12, before: 0.5, after: 0.54}\n"])).Faults.Should().BeEmpty();
        var after = Open(asked, fen).Measures.Single(measure => measure.Key == "white-margin").Now;

        after.Should().NotBe(before, "a sheet that lets more light through is whiter");
    }

    [Fact]
    public void A_correction_that_comes_during_a_search_ends_it_with_what_was_found()
    {
        var asked = new Asked();
        var request = Request(Kit, MassAndEnergy);
        asked.For(EngineQuestions.Search, request);
        asked.For(EngineQuestions.Search, request with { Step = 1 });
        asked.For(EngineQuestions.Correct, new CorrectionTexts([]));

        var last = asked.For(EngineQuestions.Search, request with { Step = 2 });

        (last.IsDone, last.Tried).Should().Be((true, 2));
        last.Found!.Said.Should().StartWith("Stopped before all was tried");
    }

    [Fact]
    public void The_table_of_the_designs_is_the_core_s()
    {
        var asked = new Asked();
        asked.Invoking(room => room.Take("designs.csv")).Should().Throw<ArgumentException>("nothing was found yet");
        Searched(asked, Kit, MassAndEnergy);

        Encoding.UTF8.GetString(asked.Take("designs.csv")).Should().Be(DesignTable.Of(Core(Kit, DesignMeasure.Mass, DesignMeasure.Energy)));
    }

    /// <summary>The picture is held against the figures that it is of, where more stands further right and higher.</summary>
    [Fact]
    public void In_the_picture_a_heavier_design_stands_further_right_and_one_that_takes_more_energy_higher()
    {
        var picture = Searched(new Asked(), Kit, MassAndEnergy).Found!.Picture!;
        var shown = Core(Kit, DesignMeasure.Mass, DesignMeasure.Energy).Shown;
        var points = picture.Points.Where(point => point.Number > 0).ToList();

        (picture.AcrossName, picture.UpName).Should().Be(("mass carried", "energy"));
        points.Should().HaveCount(shown.Count);
        foreach (var (one, other) in points.SelectMany(one => points.Select(other => (one, other))))
        {
            var (here, there) = (shown[one.Number - 1].Figures, shown[other.Number - 1].Figures);
            Math.Sign(one.X - other.X).Should().Be(Math.Sign(here[DesignMeasure.Mass]!.Value - there[DesignMeasure.Mass]!.Value));
            Math.Sign(one.Y - other.Y).Should().Be(-Math.Sign(here[DesignMeasure.Energy]!.Value - there[DesignMeasure.Energy]!.Value));
        }

        picture.Points.Should().OnlyContain(point => point.X >= picture.Frame[0] && point.X <= picture.Frame[2] && point.Y >= picture.Frame[1] && point.Y <= picture.Frame[3]);
        picture.Up.Should().OnlyContain(tick => tick.Text.Length * 8 < picture.Frame[0], "an amount stands beside the axis as a whole");
        picture.Across.Concat(picture.Up).Should().HaveCountGreaterThan(2).And.OnlyContain(tick => tick.Text.Length > 0);
    }

    private static OpenDesigns Open(Asked asked, string text)
    {
        for (var step = 0; ; step++)
        {
            if (asked.For(EngineQuestions.Designs, new DesignsRequest(text, "kit.yaml", step)) is { IsDone: true } open)
            {
                return open;
            }
        }
    }

    private static SearchRequest Request(string text, IReadOnlyList<string> measures, params FormValue[] limits) => new(text, "kit.yaml", measures, limits, 300, 0);

    private static SearchAnswer Searched(Asked asked, string text, IReadOnlyList<string> measures, params FormValue[] limits)
    {
        var request = Request(text, measures, limits);
        for (var step = 0; ; step++)
        {
            if (asked.For(EngineQuestions.Search, request with { Step = step }) is { IsDone: true } answer)
            {
                answer.Found.Should().NotBeNull(answer.Said);
                return answer;
            }
        }
    }

    private static KitReadResult Read(string text) => KitReader.Parse(text, "kit.yaml", PartsLibrary.Embedded);

    private static DesignSpace SpaceOf(string text) => DesignSpace.Of(StudioKit.Kits.Editing.KitText.Of(text), Read(text), Read).Space!;

    private static DesignSearchResult Core(string text, params DesignMeasure[] measures) =>
        DesignSearch.Run(SpaceOf(text), new DesignAim([.. measures], Read(text).Kit!.Explore!.Limits), new DesignSearchOptions());

    private static List<string> Figures(string text)
    {
        var figures = FigureReader.Of(KitPlanner.Plan(Read(text)), 0);
        return [.. new[] { DesignMeasure.Mass, DesignMeasure.Energy }.Select(measure => StudioKit.Wording.DesignText.Amount(measure, figures[measure], ""))];
    }
}
