using StudioKit.Kits;
using StudioKit.Kits.Subjects;
using StudioKit.Planning.Handling;

namespace StudioKit.Planning.Tests.Handling;

public sealed class HandlingPlannerTests
{
    private static string With(string groups) => KitText.Bare + "subjects:\n" + groups;

    [Theory]
    [InlineData("flying-insects")]
    [InlineData("crawling-insects-and-spiders")]
    [InlineData("snails")]
    [InlineData("amphibians")]
    [InlineData("reptiles")]
    [InlineData("plants-and-fungi")]
    public void Every_group_has_a_card_with_local_rules_first(string group)
    {
        var card = KitText.Plan(With($"  - {{name: one, group: {group}, length: 20 mm}}\n")).Handling.Single();

        card.Lines[0].Topic.Should().Be(HandlingTopic.LocalRules);
        card.Lines.Select(line => line.Topic).Should().BeInAscendingOrder()
            .And.Contain([HandlingTopic.Permits, HandlingTopic.HoldTime, HandlingTopic.Holding, HandlingTopic.ShadeAndMoisture, HandlingTopic.Ground, HandlingTopic.Hygiene, HandlingTopic.Danger]);
        card.Lines.Should().OnlyContain(line => line.Source.Length > 0 && line.Published != (line.Source == "common practice, no published source"));
        card.HoldLimit.HasValue.Should().Be(group != "plants-and-fungi");
    }

    [Fact]
    public void Amphibians_are_cleaned_for_by_the_published_code_and_plants_are_not_let_go()
    {
        var cards = KitText.Plan(With("  - {name: frog, group: amphibians, length: 60 mm, hold-limit: 3 min}\n  - {name: sundew, group: plants-and-fungi, length: 50 mm}\n")).Handling;

        cards[0].Lines.Should().Contain(line => line.Source.Contains("Fieldwork Code of Practice", StringComparison.Ordinal) && line.Published);
        cards[0].Subjects.Single().HoldLimit!.Value.Minutes.Should().BeApproximately(3, 1e-9);
        cards[1].Lines.Should().NotContain(line => line.Topic == HandlingTopic.Release || line.Topic == HandlingTopic.Never);
    }

    [Fact]
    public void A_readers_own_guide_takes_the_place_of_ours()
    {
        const string Own = "source: my own\nname: frogs of the quarry\nhold-limit: 2 min\nlines:\n  - {topic: holding, text: Ask the warden., source: warden's letter of May}\n";
        var read = KitReader.Parse(
            With("  - {name: frog, group: amphibians, length: 60 mm}\n"), "kit.yaml", PartsLibrary.FromTexts(new Dictionary<string, string> { ["handling/amphibians"] = Own }));

        var card = KitPlanner.Plan(read).Handling.Single();

        card.Name.Should().Be("frogs of the quarry");
        card.HoldLimit!.Value.Minutes.Should().BeApproximately(2, 1e-9);
        card.Lines.Should().Contain(new HandlingAdvice(HandlingTopic.Holding, "Ask the warden.", "warden's letter of May", Published: true));
    }

    [Fact]
    public void A_fault_in_a_readers_own_guide_names_file_line_and_nearest_word()
    {
        const string Own = "source: my own\nname: frogs\nlines:\n  - {topic: holdin, text: Wet hands.}\n";
        var read = KitReader.Parse(
            With("  - {name: frog, group: amphibians, length: 60 mm}\n"), "kit.yaml", PartsLibrary.FromTexts(new Dictionary<string, string> { ["handling/amphibians"] = Own }));

        var fault = read.Diagnostics.Single();

        fault.File.Should().Be("parts/handling/amphibians.yaml");
        fault.Line.Should().Be(4);
        fault.Hint.Should().Contain("Did you mean 'holding'?");
    }
}
