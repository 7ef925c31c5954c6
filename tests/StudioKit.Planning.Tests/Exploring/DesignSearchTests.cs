using StudioKit.Kits;
using StudioKit.Kits.Exploring;
using StudioKit.Planning.Exploring;
using KitTextFile = StudioKit.Kits.Editing.KitText;

namespace StudioKit.Planning.Tests.Exploring;

/// <summary>What a search shows, held against planning every kit by itself from a text that was written value by value.</summary>
public sealed class DesignSearchTests
{
    private static readonly string[] Widths = ["460 mm", "500 mm"];
    private static readonly string[] Thicknesses = ["1 mm", "3 mm", "5 mm"];
    private static readonly string[] Distances = ["40 cm", "45 cm"];

    [Fact]
    public void Of_few_designs_those_shown_are_exactly_the_ones_that_no_other_beats()
    {
        // Brute force: each text by itself, its plan afresh, its figures read here, and dominance by its definition.
        var all = (from width in Widths
                   from thickness in Thicknesses
                   from distance in Distances
                   select (Key: $"{width}, {thickness}, {distance}", Plan: PlanOf(width, thickness, distance))).ToList();
        var standing = all.Where(design => design.Plan.Stands)
            .Select(design => (design.Key, Mass: Math.Round(design.Plan.Pack.Total.Grams), Margin: Math.Round(design.Plan.LeastWhiteMargin!.Value.Value, 2), Wind: WindOf(design.Plan))).ToList();
        var best = standing.Where(one => !standing.Exists(other => other.Mass <= one.Mass && other.Margin >= one.Margin && other.Wind >= one.Wind
            && (other.Mass < one.Mass || other.Margin > one.Margin || other.Wind > one.Wind)));

        var shown = OpenKits.SmallSearched.Shown.SelectMany(design => design.Alike.Prepend(design.Code)).Select(code => string.Join(", ", OpenKits.OfSmall.OptionsOf(code).Select(option => option.Name)));

        standing.Should().HaveCountLessThan(all.Count, "a sheet of 1 mm sags, which a frontier must notice");
        shown.Should().BeEquivalentTo(best.Select(design => design.Key));
        OpenKits.SmallSearched.IsComplete.Should().BeTrue();
    }

    [Fact]
    public void Each_design_shown_gives_the_same_figures_when_its_written_kit_is_planned_afresh()
    {
        foreach (var design in OpenKits.SmallSearched.Shown.Concat(OpenKits.LargeSearched.Shown.Take(5)))
        {
            var space = design.Code.Options.Count == OpenKits.OfSmall.Choices.Count ? OpenKits.OfSmall : OpenKits.OfLarge;
            var text = space.TextOf(design.Code)!.Text;

            FigureReader.Of(KitPlanner.Plan(OpenKits.Read(text)), space.PriceOf(design.Code)).Should().Be(design.Figures);
        }
    }

    [Fact]
    public void A_written_kit_keeps_its_comments_and_all_that_no_choice_is_about()
    {
        var thick = OpenKits.OfSmall.TextOf(new([0, 2, 0]))!.Text;

        thick.Should().Be(OpenKits.Small
            .Replace("width: 500 mm, depth: 400 mm}", "width: 460 mm, depth: 400 mm, thickness: 5 mm}", StringComparison.Ordinal)
            .Replace("role: below, distance: 45 cm", "role: below, distance: 40 cm", StringComparison.Ordinal));
    }

    [Fact]
    public void No_single_change_of_a_choice_improves_a_design_that_is_said_to_be_closed()
    {
        var (space, result) = (OpenKits.OfLarge, OpenKits.LargeSearched);
        result.IsComplete.Should().BeFalse();
        result.IsClosed.Should().BeTrue();
        var session = new PlanSession();

        foreach (var design in result.Shown.Take(3))
        {
            foreach (var beside in space.BesideOf(design.Code))
            {
                var plan = session.Plan(space.Read(beside)!);
                (plan.Stands && FigureReader.Of(plan, 0).Beats(design.Figures, result.Aim.Measures)).Should().BeFalse($"{beside} differs from {design.Code} in one choice");
            }
        }
    }

    [Fact]
    public void No_design_drawn_at_random_beats_one_that_is_shown()
    {
        var (space, result) = (OpenKits.OfLarge, OpenKits.LargeSearched);
        var (session, chance) = (new PlanSession(), new Random(20260501));
        for (var i = 0; i < 2000; i++)
        {
            var drawn = new DesignCode([.. space.Choices.Select(choice => chance.Next(choice.Options.Count))]);
            var plan = session.Plan(space.Read(drawn)!);
            if (plan.Stands)
            {
                var figures = FigureReader.Of(plan, 0);
                result.Shown.Where(design => figures.Beats(design.Figures, result.Aim.Measures)).Select(design => $"{drawn} beats {design.Code}").Should().BeEmpty();
            }
        }
    }

    [Fact]
    public void However_many_are_planned_at_once_the_answer_is_the_same() =>
        OpenKits.Search(OpenKits.OfLarge, 150, atOnce: 3).Shown.Should().Equal(OpenKits.Search(OpenKits.OfLarge, 150).Shown);

    [Fact]
    public void A_search_taken_one_design_at_a_time_gives_the_answer_of_one_in_long_steps()
    {
        var (space, aim) = (OpenKits.OfLarge, OpenKits.AimOf(OpenKits.OfLarge));
        var steps = new DesignSearchSteps(space, aim, new DesignSearchOptions { Most = 150, InAStep = 1 });
        var told = new List<int> { steps.Progress.Tried };
        while (steps.Next())
        {
            told.Add(steps.Progress.Tried);
        }

        var (one, whole) = (steps.Result(), OpenKits.Search(space, 150));

        told.Should().Equal(Enumerable.Range(1, told.Count), "each step tries one more");
        one.Shown.Should().Equal(whole.Shown);
        one.Effects.Should().Equal(whole.Effects);
        one.Tried.Should().Equal(whole.Tried);
        one.IsStopped.Should().BeFalse();
    }

    [Fact]
    public void A_search_that_is_left_between_two_steps_has_what_was_found_until_then()
    {
        var steps = new DesignSearchSteps(OpenKits.OfSmall, OpenKits.AimOf(OpenKits.OfSmall), new DesignSearchOptions { InAStep = 1 });
        var early = steps.Result();
        steps.Next().Should().BeTrue();
        steps.Next().Should().BeTrue();

        var left = steps.Result();

        (early.Count, left.Count).Should().Be((1, 3), "the kit as it is written comes first");
        left.IsStopped.Should().BeTrue();
        left.Own.Should().Be(OpenKits.SmallSearched.Own);
    }

    [Fact]
    public void A_search_that_is_stopped_gives_what_there_is_and_says_so()
    {
        using var stop = new CancellationTokenSource();
        var heard = new Heard(_ => stop.Cancel());

        var result = DesignSearch.Run(OpenKits.OfLarge, OpenKits.AimOf(OpenKits.OfLarge), new DesignSearchOptions { Most = 300 }, heard, stop.Token);

        result.IsStopped.Should().BeTrue();
        result.IsComplete.Should().BeFalse();
        result.Count.Should().BeInRange(1, 100);
        result.Shown.Should().NotBeEmpty();
        result.Own.Figures.Should().NotBeNull();
    }

    [Fact]
    public void Designs_beyond_a_limit_are_not_shown_and_the_best_that_stand_are_told()
    {
        var heaviest = OpenKits.SmallSearched.Own.Figures![DesignMeasure.Mass]!.Value - 1;
        var aim = new DesignAim([DesignMeasure.Mass, DesignMeasure.Wind], [new DesignLimit(DesignMeasure.Mass, heaviest, "")]);

        var result = DesignSearch.Run(OpenKits.OfSmall, aim, new DesignSearchOptions());

        result.Shown.Should().NotBeEmpty().And.OnlyContain(design => design.Figures[DesignMeasure.Mass] <= heaviest);
        result.Tried.Should().Contain(tally => tally.Verdict == DesignVerdict.BeyondLimit);
        result.Best.Single(best => best.Measure == DesignMeasure.Mass).Amount.Should().Be(result.Shown.Min(design => design.Figures[DesignMeasure.Mass]));
    }

    [Fact]
    public void A_choice_that_changes_nothing_compared_is_said_to_change_nothing()
    {
        var result = OpenKits.LargeSearched;

        result.Effects.Select(effect => effect.Choice.Name).Should().BeEquivalentTo(OpenKits.OfLarge.Choices.Select(choice => choice.Name));
        result.Effects.Single(effect => effect.Choice.Name == "cells").IsNone.Should().BeFalse("the heavier cells hold more");
        result.Effects.Single(effect => effect.Choice.Name == "sensor").Largest[0].Should().Be(200, "a lighter body saves its own 200 g and nothing else");
    }

    [Fact]
    public void What_a_choice_does_is_measured_between_designs_that_stand()
    {
        var (space, result) = (OpenKits.OfSmall, OpenKits.SmallSearched);
        double MassOf(int thickness) => KitPlanner.Plan(space.Read(space.Own.With(1, thickness))!).Pack.Total.Grams;
        var effect = result.Effects.Single(effect => effect.Choice.Name == "thickness");

        effect.Largest[0].Should().BeApproximately(MassOf(2) - MassOf(1), 1, "the sheet of 1 mm, lighter still, does not stand");
        effect.Spoils.Should().BePositive();
    }

    [Fact]
    public void A_body_that_an_option_buys_counts_with_its_price()
    {
        var space = OpenKits.OfLarge;
        var bought = space.Own.With(space.Choices.Count - 1, 1);

        space.PriceOf(space.Own).Should().Be(0);
        space.PriceOf(bought).Should().Be(300);
        FigureReader.Of(KitPlanner.Plan(space.Read(bought)!), space.PriceOf(bought))[DesignMeasure.Price].Should().Be(300);
    }

    private static Plan PlanOf(string width, string thickness, string distance) => KitText.Plan(KitTextFile.Of(OpenKits.Small)
        .Set("panel.width", width).After.Set("panel.thickness", thickness).After.Set("set-ups[0].lights[0].distance", distance).After.Text);

    // The highest wind by the checks of whole plans, a tenth of a metre a second at a time about what the search says.
    private static double WindOf(Plan plan)
    {
        var said = FigureReader.Of(plan, 0)[DesignMeasure.Wind]!.Value;
        StandsIn(plan, said).Should().BeTrue();
        StandsIn(plan, said + 0.1).Should().BeFalse();
        return said;
    }

    private static bool StandsIn(Plan plan, double wind) =>
        KitPlanner.Plan(new KitReadResult(plan.Kit with { Site = plan.Kit.Site with { Wind = UnitsNet.Speed.FromMetersPerSecond(wind) } }, [], [], new())).Stands;

    private sealed class Heard(Action<DesignProgress> hear) : IProgress<DesignProgress>
    {
        public void Report(DesignProgress value) => hear(value);
    }
}
