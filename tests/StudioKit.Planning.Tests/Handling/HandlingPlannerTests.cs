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
    [InlineData("scorpions")]
    [InlineData("centipedes-and-millipedes")]
    [InlineData("small-mammals")]
    [InlineData("lifeless-things")]
    public void Every_group_has_a_card_with_local_rules_first(string group)
    {
        var card = KitText.Plan(With($"  - {{name: one, group: {group}, length: 20 mm}}\n")).Handling.Single();

        card.Lines[0].Topic.Should().Be(HandlingTopic.LocalRules);
        card.Lines.Select(line => line.Topic).Should().BeInAscendingOrder()
            .And.Contain([HandlingTopic.Permits, HandlingTopic.StopSigns, HandlingTopic.HoldTime, HandlingTopic.Holding, HandlingTopic.ShadeAndMoisture, HandlingTopic.Ground, HandlingTopic.Hygiene, HandlingTopic.Danger]);
        card.Lines.Should().OnlyContain(line => line.Source.Length > 0 && line.Published != (line.Source == "common practice, no published source"));
        card.HoldLimit.HasValue.Should().Be(group is not ("plants-and-fungi" or "lifeless-things"));
    }

    [Fact]
    public void Amphibians_are_cleaned_for_by_the_published_code_and_plants_are_not_let_go()
    {
        var cards = KitText.Plan(With("  - {name: frog, group: amphibians, length: 60 mm, hold-limit: 3 min}\n  - {name: sundew, group: plants-and-fungi, length: 50 mm}\n")).Handling;

        cards[0].Lines.Should().Contain(line => line.Source.Contains("Fieldwork Code of Practice", StringComparison.Ordinal) && line.Published);
        cards[0].Subjects.Single().HoldLimit!.Value.Minutes.Should().BeApproximately(3, 1e-9);
        cards[1].Lines.Should().NotContain(line => line.Topic == HandlingTopic.Release || line.Topic == HandlingTopic.Never);
    }

    /// <summary>Abstracts of Johnson and others 2003, Becker and Gratwicke 2017, Bryan and others 2009.</summary>
    [Theory]
    [InlineData("Fungicidal effects", DisinfectantAgent.Ethanol, 0.70, 20)]
    [InlineData("Minimum lethal concentration", DisinfectantAgent.Hypochlorite, 0.0012, 30)]
    [InlineData("inactivating Ranavirus", DisinfectantAgent.Bleach, 0.03, 60)]
    public void A_disinfectant_has_the_strength_and_contact_time_of_its_source(string title, DisinfectantAgent agent, double strength, double seconds)
    {
        var line = Lines("amphibians").Single(line => line.Source.Contains(title, StringComparison.Ordinal));

        line.Disinfectant!.Agent.Should().Be(agent);
        line.Disinfectant.Strength.Should().BeApproximately(strength, 1e-9);
        line.Disinfectant.ContactTime.Seconds.Should().BeApproximately(seconds, 1e-9);
    }

    [Theory]
    [MemberData(nameof(Groups))]
    public void A_line_that_disinfects_says_strength_and_contact_time_or_leaves_it_to_the_authority_of_the_place(string group) =>
        Lines(group).Where(line => Names(line.Text, "disinfect", "bleach", "hypochlorite", "ethanol", "alcohol") || line.Disinfectant is not null)
            .Should().NotBeEmpty().And.OnlyContain(line => line.Disinfectant != null || line.Text.Contains("authority of the place"));

    /// <summary>Alcohol crazes acrylic that is under stress: Yan and others 2023, abstract.</summary>
    [Theory]
    [MemberData(nameof(Groups))]
    public void No_line_puts_a_disinfectant_or_solvent_on_the_sheet(string group) =>
        Lines(group).Where(line => Names(line.Text, "sheet") && !Names(line.Text, "clear sheet"))
            .Should().NotContain(line => line.Disinfectant != null || Names(line.Text, "disinfect", "alcohol", "ethanol", "spirit", "solvent", "bleach", "acetone"));

    public static TheoryData<string> Groups => [.. Enum.GetValues<SubjectGroup>().Select(group => MemberText.Of(group))];

    private static IReadOnlyList<HandlingAdvice> Lines(string group) =>
        KitText.Plan(With($"  - {{name: one, group: {group}, length: 20 mm}}\n")).Handling.Single().Lines;

    private static bool Names(string text, params string[] words) => words.Any(word => text.Contains(word, StringComparison.OrdinalIgnoreCase));

    [Fact]
    public void What_does_not_live_is_neither_held_nor_let_go_and_does_not_move()
    {
        var plan = KitText.Plan(With("  - {name: whelk, group: lifeless-things, length: 60 mm}\n  - {name: beetle, group: crawling-insects-and-spiders, length: 20 mm}\n"));

        plan.Handling.Single(card => card.Group == SubjectGroup.LifelessThings).Lines.Should().NotContain(line => line.Topic == HandlingTopic.Release || line.Topic == HandlingTopic.Never);
        plan.Kit.Subjects.Select(subject => subject.Speed.MillimetersPerSecond).Should().Equal(0, 5);
        plan.Session?.Subjects.Single(subject => subject.Name == "whelk").HoldLimit.Should().BeNull();
    }

    [Fact]
    public void A_disinfectant_without_strength_or_contact_time_is_refused()
    {
        const string Own = "source: my own\nname: frogs\nlines:\n  - {topic: hygiene, text: Scrub., agent: bleach, strength: 3 %}\n";
        var read = KitReader.Parse(
            With("  - {name: frog, group: amphibians, length: 60 mm}\n"), "kit.yaml", PartsLibrary.FromTexts(new Dictionary<string, string> { ["handling/amphibians"] = Own }));

        read.Diagnostics.Should().ContainSingle().Which.Format().Should().Contain("agent, strength and contact-time");
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
