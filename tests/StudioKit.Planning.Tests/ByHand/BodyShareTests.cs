using StudioKit.Planning.Checks;
using StudioKit.Planning.Packing;

namespace StudioKit.Planning.Tests.ByHand;

/// <summary>What a person carries, bag included, over the person's body mass.</summary>
public sealed class BodyShareTests
{
    // Camera 700 g, lens 300 g, flashes 2 · 300 g, no frame and no panel: 1.6 kg, with the 1.4 kg bag 3 kg, with 9 kg of water 12 kg: a fifth of
    // 60 kg, three twentieths of 80 kg.
    [Theory]
    [InlineData(60, 0.20, 0.25, true)]
    [InlineData(80, 0.15, 0.25, true)]
    [InlineData(60, 0.20, 0.19, false)]
    [InlineData(40, 0.30, 0.25, false)]
    public void Twelve_kilograms_are_a_fifth_of_sixty(double body, double share, double allowed, bool passes)
    {
        var plan = HandKit.Plan(FormattableString.Invariant(
            $$"""
            pack:
              bags: [{name: rucksack, inside: 700 mm x 400 mm x 300 mm, mass: 1.4 kg, carrier: Ada}]
              people: [{name: Ada, body-mass: {{body}} kg}]
              items: [{name: water, mass: 3 kg, count: 3}]
              highest-share: {{allowed}}
            """));

        plan.Pack.Total.Kilograms.Should().BeApproximately(12, 1e-9);
        plan.Pack.Bags.Single().ShareOfBodyMass.Should().BeApproximately(share, 1e-9);
        plan.Pack.People.Single().Share.Should().BeApproximately(share, 1e-9);
        var check = plan.Checks.Single(check => check.Kind == PlanCheckKind.Burden);
        check.Passed.Should().Be(passes);
        check.Ratio.Should().BeApproximately(share / allowed, 1e-9);
    }

    // 1.6 kg of camera, lens and flashes, 3 kg of seats, 2 kg of water, a bag of 1.4 kg: 8 kg. To come to 5.5 kg with the bag all three seats stay at home.
    [Fact]
    public void A_target_counts_the_bags_too()
    {
        var plan = HandKit.Plan(
            """
            pack:
              bags: [{name: rucksack, inside: 700 mm x 400 mm x 300 mm, mass: 1.4 kg}]
              items:
                - {name: water, mass: 2 kg}
                - {name: stool, mass: 1 kg, essential: no}
                - {name: chair, mass: 1 kg, essential: no}
                - {name: crate, mass: 1 kg, essential: no}
              target-mass: 5.5 kg

            """ + HandKit.White, panel: "mass: 1 g", frame: "mass: 1 g");

        plan.Pack.LeaveAtHome!.Left.Should().BeEquivalentTo(["stool", "chair", "crate"]);
        var small = plan.Pack.Items.Where(item => item.Part == StudioPart.Hardware).Sum(item => item.Mass.Kilograms);
        small.Should().BeInRange(0.1, 0.3, "clips, cloths, spanner and level of a frame that was weighed with its pins and feet");
        plan.Pack.LeaveAtHome.Mass.Kilograms.Should().BeApproximately(5.0 + small, 0.01);
    }

    // Two bags on one back: 3 kg and 9 kg of things that may go nowhere else, 1 kg each for the bags, 1.6 kg of camera and flashes.
    [Fact]
    public void Who_carries_two_bags_carries_both()
    {
        var plan = HandKit.Plan(
            """
            pack:
              bags:
                - {name: back, inside: 700 mm x 400 mm x 300 mm, mass: 1 kg, carrier: Ada}
                - {name: front, inside: 400 mm x 300 mm x 200 mm, mass: 1 kg, carrier: Ada}
              people: [{name: Ada, body-mass: 78 kg}]
              items: [{name: water, mass: 3 kg, bag: front}, {name: sand, mass: 9 kg, bag: back}]
            """);

        plan.Pack.People.Single().Mass.Kilograms.Should().BeApproximately(15.6, 1e-9);
        plan.Pack.People.Single().Share.Should().BeApproximately(0.2, 1e-9);
        plan.Pack.Bags.Sum(bag => bag.ShareOfBodyMass).Should().BeApproximately(0.2, 1e-9);
    }
}
