using StudioKit.Kits.Triggers;

namespace StudioKit.Kits.Tests;

/// <summary>What fires the flashes of a kit.</summary>
public sealed class TriggerKeysTests
{
    private const string Text = """
        kit: Moths
        camera: {name: body, sensor: 36 mm x 24 mm, flash-sync: 1/200 s}
        lenses: [{name: reed, focal-length: 55 mm}]

        """;

    private const string Radios = "triggers: [{name: sender, kind: radio-sender, channel: 5, sync: 1/160 s}, {name: other, kind: radio-sender, channel: 6, sync: 1/80 s}, {name: receiver, kind: radio-receiver, count: 2}, {name: cord, kind: cord}]\n";

    private const string Flash = "flashes: [{name: rush, guide-number: 30 m}]\n";

    [Theory]
    [InlineData("", "trigger: receiver, ", "sender", 1.0 / 160)]
    [InlineData("sender: other, ", "trigger: receiver, ", "other", 1.0 / 80)]
    [InlineData("", "trigger: cord, ", null, 1.0 / 200)]
    [InlineData("", "", null, 1.0 / 200)]
    public void A_set_up_is_sent_to_by_the_radio_that_it_names_else_the_first_and_is_no_faster_than_that(string sender, string trigger, string? sends, double sync)
    {
        var kit = Read($"{Flash}{Radios}set-ups: [{{name: dusk, kind: low-light-fill, {sender}lights: [{{flash: rush, {trigger}role: fill, distance: 1 m}}]}}]\n").Kit!;

        kit.SenderOf(kit.SetUps[0])?.Name.Should().Be(sends);
        kit.SyncOf(kit.SetUps[0]).Seconds.Should().BeApproximately(sync, 0.02 * sync, "speeds are those of the third-stop series");
    }

    [Fact]
    public void What_stands_in_for_keys_that_are_left_out_is_told()
    {
        var read = Read("triggers: [{name: sender, kind: radio-sender, channel: 5}, {name: eye, kind: optical-cell}, {name: thumb, kind: hand}]\n");

        read.Defaults.Where(used => used.Path.StartsWith("triggers", StringComparison.Ordinal)).Select(used => $"{used.Path}: {used.Value}").Should().BeEquivalentTo(
        [
            "triggers[0].count: 1", "triggers[0].groups: 1", "triggers[0].sets-power: no", "triggers[0].range: 30 m",
            "triggers[1].count: 1", "triggers[1].range: 5 m",
        ], "a cell has neither channel nor groups, and nobody carries a hand");
    }

    [Fact]
    public void Groups_are_letters_from_A()
    {
        TriggerGroup.Letter(2).Should().Be("C");
        TriggerGroup.Place("C").Should().Be(2);
        TriggerGroup.Place("c").Should().BeNull();
        TriggerGroup.Place("AB").Should().BeNull();
        TriggerGroup.Place("Q").Should().BeNull("that is the seventeenth");
    }

    [Theory]
    [InlineData("triggers: [{kind: cord}]", "name")]
    [InlineData("triggers: [{name: wand, kind: wand}]", "optical-cell")]
    [InlineData("triggers: [{name: sender, kind: radio-sender}]", "channel: 5")]
    [InlineData("triggers: [{name: sender, kind: radio-sender, channel: 0}]", "channel")]
    [InlineData("triggers: [{name: cord, kind: cord, channel: 4}]", "is for a radio")]
    [InlineData("triggers: [{name: cord, kind: cord, groups: 4}]", "is for a radio")]
    [InlineData("triggers: [{name: ear, kind: radio-receiver, sets-power: yes}]", "the radio on the camera")]
    [InlineData("triggers: [{name: ear, kind: radio-receiver, groups: 17}]", "groups")]
    [InlineData("triggers: [{name: eye, kind: optical-cell, sync: 1/100 s}]", "'sync' changes nothing")]
    [InlineData("triggers: [{name: thumb, kind: hand, range: 1 m}]", "'range' changes nothing")]
    [InlineData("triggers: [{name: thumb, kind: hand, mass: 1 g}]", "'mass' changes nothing")]
    [InlineData("triggers: [{name: thumb, kind: hand, count: 2}]", "'count' changes nothing")]
    [InlineData("triggers: [{name: cord, kind: cord, built-into: rush}]", "receiver or a cell")]
    [InlineData("triggers: [{name: ear, kind: radio-receiver, built-into: reed}]", "reed")]
    [InlineData("triggers: [{name: ear, kind: radio-receiver, cell-count: 2}]", "without 'cell'")]
    [InlineData("triggers: [{name: cord, kind: cord, range: 3}]", "length")]
    [InlineData("triggers: [{name: cord, kind: cord}, {name: cord, kind: cord}]", "cord")]
    public void What_cannot_be_is_refused_in_its_line(string text, string says) => Refused($"{text}\n", says);

    [Theory]
    [InlineData("", "trigger: sedge, ", "sedge")]
    [InlineData("", "trigger: cord, group: a, ", "capital letter")]
    [InlineData("", "trigger: cord, group: red, ", "capital letter")]
    [InlineData("", "group: B, ", "without 'trigger'")]
    [InlineData("sender: sender, ", "", "no light has a 'trigger'")]
    public void A_light_is_fired_by_what_the_kit_has(string setUp, string light, string says) =>
        Refused($"set-ups: [{{name: dusk, kind: low-light-fill, {setUp}lights: [{{flash: rush, {light}role: fill, distance: 1 m}}]}}]\n{Flash}{Radios}", says);

    private static void Refused(string text, string says)
    {
        var read = Read(text);

        read.Kit.Should().BeNull();
        read.Diagnostics.Should().ContainSingle(found => found.Severity == DiagnosticSeverity.Error && (found.Message + found.Hint).Contains(says, StringComparison.Ordinal)).Which.Line.Should().Be(5);
    }

    private static KitReadResult Read(string more) => KitReader.Parse(Text + "\n" + more, "moths.yaml", PartsLibrary.Embedded);
}
