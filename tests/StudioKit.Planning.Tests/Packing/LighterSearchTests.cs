using StudioKit.Kits;
using StudioKit.Planning.Packing;
using StudioKit.Planning.Tests.ByHand;
using UnitsNet;

namespace StudioKit.Planning.Tests.Packing;

/// <summary>What a target mass costs: the kit is changed as proposed and planned again.</summary>
public sealed class LighterSearchTests
{
    private const string Cells = "cell: {name: cell, chemistry: nickel-metal-hydride, voltage: 1.2 V, capacity: 2 Ah, mass: 27 g}, cell-count: 4, spare-sets: 3";

    private static string Kit(string target) => HandKit.Of(
        $$"""
        subjects: [{name: moth, group: flying-insects, length: 30 mm}]
        pack:
          target-mass: {{target}}
          items: [{name: stool, mass: 400 g, essential: no}]

        """ + HandKit.White, one: Cells, two: Cells, panel: "width: 600 mm, depth: 400 mm", frame: "pipe: {part: pvc-u-25x1.9}, fittings: pvc-u-25, pegs: {count: 4, hold: 3 kg}");

    /// <summary>The kit weighs some 6 kg: a stool of 0.4 kg and spare cells leave it over each of these, so panel and pipe have to give.</summary>
    [Theory]
    [InlineData("5 kg")]
    [InlineData("4 kg")]
    [InlineData("3 kg")]
    [InlineData("1.5 kg")]
    public void Each_step_gives_the_mass_and_loses_the_framings_that_it_says(string target)
    {
        var read = KitText.Read(Kit(target));
        var plan = KitPlanner.Plan(read);
        var home = plan.Pack.LeaveAtHome!;
        var (kit, before) = (read.Kit!, plan);

        foreach (var step in home.Lighter)
        {
            kit = step.Change.Of(kit);
            var after = KitPlanner.Plan(read with { Kit = kit });

            after.Pack.Total.Grams.Should().BeApproximately(step.Total.Grams, 1e-6);
            (before.Pack.Total - after.Pack.Total).Grams.Should().BeApproximately(step.Saved.Grams, 1e-6);
            Working(before).Except(Working(after)).Should().BeEquivalentTo(step.Lost);
            step.MarginChange!.Value.Value.Should().BeApproximately(Margin(after) - Margin(before), 1e-9);
            after.Checks.Where(check => !check.Passed).Select(check => check.Kind).Should().BeSubsetOf(before.Checks.Where(check => !check.Passed).Select(check => check.Kind));
            before = after;
        }

        home.Mass.Should().BeLessThanOrEqualTo(before.Pack.Total);
        home.Reached.Should().Be(home.Mass <= home.Target);
    }

    /// <summary>A panel of 600 × 400 mm is cut down to what one framing from above needs, before white is given up.</summary>
    [Fact]
    public void The_purpose_stays_where_a_smaller_panel_or_a_lighter_pipe_does()
    {
        var plan = KitPlanner.Plan(KitText.Read(Kit("4 kg")));
        var home = plan.Pack.LeaveAtHome!;

        home.Lighter.Select(step => step.Change).OfType<LighterChange.SmallerPanel>().Should().ContainSingle()
            .Which.Should().Match<LighterChange.SmallerPanel>(panel => panel.Width <= plan.Panel.Width && panel.Width >= plan.Panel.RequiredWidth && panel.Depth >= plan.Panel.RequiredDepth);
        home.Lost.Should().BeEmpty();
        home.Left.Should().NotContain(plan.Pack.Items.Where(item => item.Part is not null).Select(item => item.Name));
        home.Reached.Should().BeTrue();
    }

    /// <summary>1.5 kg come off the fen's kit of 13.7 kg, frame, panel and skirts kept: by a panel that its flash still fits under, a lighter pipe, spare cells and idle lenses.</summary>
    [Fact]
    public void A_kit_for_two_comes_down_by_an_eighth_and_loses_no_framing()
    {
        var kit = KitText.Demo("fen-edge.yaml").Kit;
        var target = KitText.Demo("fen-edge.yaml").Pack.Total * (7.0 / 8);
        var home = KitPlanner.Plan(new KitReadResult(kit with { Pack = kit.Pack with { TargetMass = target } }, [], [], new())).Pack.LeaveAtHome!;

        home.Reached.Should().BeTrue();
        home.Lost.Should().BeEmpty();
        home.Lighter.Should().Contain(step => step.Change is LighterChange.SmallerPanel).And.OnlyContain(step => step.Lost.Count == 0);
    }

    /// <summary>Two exposures that need no panel go before one that does, though that leaves more behind.</summary>
    [Fact]
    public void What_is_shot_on_the_panel_goes_last()
    {
        PackedItem[] items =
        [
            Item("panel", 900) with { Part = StudioPart.Panel }, Item("long lens", 700), Item("wide lens", 300),
        ];
        GearUse[] uses =
        [
            new("day", "far", true, ["long lens"], [], false, null), new("day", "wide", true, ["wide lens"], [], false, null), new("white", "1:2", true, [], [], true, null),
        ];
        var kit = KitText.Read(Kit("1 kg")).Kit!;

        var choice = HomeChoice.Of(kit, items, Mass.FromGrams(1900), uses)!;

        choice.Left.Should().BeEquivalentTo(["long lens", "wide lens"]);
        choice.Lost.Should().BeEquivalentTo(["day, far", "day, wide"]);
    }

    [Fact]
    public void Nothing_is_changed_where_dispensable_things_are_enough()
    {
        var heavy = KitPlanner.Plan(KitText.Read(Kit("20 kg"))).Pack;
        heavy.LeaveAtHome.Should().BeNull();

        var target = heavy.Total - Mass.FromGrams(300);
        KitPlanner.Plan(KitText.Read(Kit(FormattableString.Invariant($"{target.Grams:0} g")))).Pack.LeaveAtHome!.Should().Match<LeaveAtHomePlan>(home => home.Lighter.Count == 0 && home.Left.Single() == "stool");
    }

    private static PackedItem Item(string name, double grams) => new()
    {
        Name = name,
        Count = 1,
        Mass = Mass.FromGrams(grams),
        Origin = Physics.Packing.MassOrigin.Weighed,
        Stage = StudioKit.Kits.Carrying.PackItemStage.Shooting,
        Essential = false,
    };

    private static IEnumerable<string> Working(Plan plan) => plan.Exposures.Where(exposure => exposure.IsUsable).Select(exposure => $"{exposure.SetUp}, {exposure.Framing.Name}");

    private static double Margin(Plan plan) => plan.Exposures.Where(exposure => exposure is { IsUsable: true, WhiteMargin: not null }).Min(exposure => exposure.WhiteMargin!.Value.Value);
}
