using StudioKit.Kits;
using StudioKit.Planning.Changes;
using StudioKit.Planning.Exploring;
using KitTextFile = StudioKit.Kits.Editing.KitText;

namespace StudioKit.Planning.Tests.Exploring;

/// <summary>What a kit leaves open, and what is wrong with it.</summary>
public sealed class DesignSpaceTests
{
    // The line after 'explore:' and 'choices:'.
    private static readonly int LineOfChoice = OpenKits.Small.Split('\n').ToList().FindIndex(line => line.StartsWith("explore:", StringComparison.Ordinal)) + 3;

    [Fact]
    public void A_choice_among_values_one_of_which_the_kit_has_takes_that_for_its_own_however_it_is_written()
    {
        var space = Open("- {name: height, key: frame.height, values: [45 cm, 0.5 m, 55 cm]}").Space!;

        space.Choices[0].Options.Select(option => (option.Name, option.IsOwn)).Should().Equal(("45 cm", false), ("0.5 m", true), ("55 cm", false));
        space.Own.ToString().Should().Be("2");
    }

    [Fact]
    public void Where_no_option_is_what_the_kit_has_the_kit_as_it_is_stands_beside_them() =>
        Open("- {name: height, key: frame.height, values: [45 cm, 55 cm]}").Space!.Choices[0].Options.Select(option => option.IsOwn).Should().Equal(true, false, false);

    [Fact]
    public void A_range_has_both_ends_and_every_step_between_them() =>
        Open("- {name: height, key: frame.height, from: 40 cm, to: 60 cm, step: 2.5 cm}").Space!.Choices[0].Options.Select(option => option.Name)
            .Should().Equal("40 cm", "42.5 cm", "45 cm", "47.5 cm", "50 cm", "52.5 cm", "55 cm", "57.5 cm", "60 cm");

    [Theory]
    [InlineData("- {name: a, key: panel.wide, values: [46 cm]}", DesignProblemKind.CannotBeWritten)]
    [InlineData("- {name: a, key: \"set-ups[black].iso\", values: [200]}", DesignProblemKind.NoSuchPlace)]
    [InlineData("- {name: a, leave-out: [\"holders[stand]\"]}", DesignProblemKind.NoSuchPlace)]
    [InlineData("- {name: a, key: panel.width, values: [46 cm, 46]}", DesignProblemKind.CannotBeRead)]
    [InlineData("- {name: a, leave-out: [\"flashes[two]\"]}", DesignProblemKind.CannotBeRead)]
    [InlineData("- {name: a, key: panel.width, values: [46 cm, 460 mm]}", DesignProblemKind.SameAsOther)]
    [InlineData("- {name: a, key: panel.width, values: [50 cm]}", DesignProblemKind.NothingChanges)]
    public void What_cannot_be_left_open_is_said_with_its_line(string choice, DesignProblemKind kind)
    {
        var reading = Open(choice);

        reading.Space.Should().BeNull();
        reading.Problems.Select(problem => (problem.Kind, problem.At?.Line)).Should().Equal((kind, LineOfChoice));
    }

    [Fact]
    public void Two_choices_of_one_key_contradict_each_other()
    {
        var reading = Open("- {name: low, key: frame.height, values: [45 cm]}\n    - {name: high, key: frame.height, values: [55 cm]}");

        reading.Problems.Select(problem => (problem.Kind, problem.Choice, problem.Other)).Should().Equal((DesignProblemKind.WrittenTwice, "high", "low"));
    }

    [Fact]
    public void An_entry_that_an_option_writes_out_is_added_to_its_list()
    {
        var space = Open("""
            - name: third light
                  options:
                    - {name: two}
                    - {name: three, writes: [{key: "flashes[2]", value: "{name: three, guide-number: 20 m @ ISO 100, head: 10 mm x 10 mm, mass: 200 g}"}]}
            """).Space!;

        space.Read(new([1]))!.Kit!.Flashes.Select(flash => flash.Name).Should().Equal("one", "two", "three");
    }

    [Fact]
    public void A_kit_that_marks_nothing_as_open_is_varied_in_what_usually_is()
    {
        var reading = OpenKits.Reading(OpenKits.Small[..OpenKits.Small.IndexOf("explore:", StringComparison.Ordinal)]);

        reading.IsUsual.Should().BeTrue();
        reading.Problems.Should().BeEmpty();
        reading.Space!.Choices.Select(choice => choice.Name).Should().Contain(["width of the sheet", "height", "skirts", "one below, white"]);
        reading.Space.Choices.Should().OnlyContain(choice => choice.Options.Count > 1 && choice.Options.Count(option => option.IsOwn) == 1);
    }

    /// <summary>A transmittance that was metered through one sheet, a pipe that was weighed and a fitting that was measured say nothing of others; what the library gives for those is taken.</summary>
    [Fact]
    public void What_was_measured_on_a_part_is_not_said_of_the_part_that_takes_its_place()
    {
        var measured = OpenKits.Small[..OpenKits.Small.IndexOf("explore:", StringComparison.Ordinal)]
            .Replace("panel: {transmittance: 0.5,", "panel: {part: opal-acrylic-3, transmittance: 0.41,", StringComparison.Ordinal)
            .Replace("frame: {height: 500 mm}", "frame: {height: 500 mm, pipe: {part: pvc-u-20x1.5, mass-per-length: 99 g/m}, fittings: {part: pvc-u-20, corner: {take-off: 12.5 mm, price: 0.8}}}", StringComparison.Ordinal);
        var space = OpenKits.Reading(measured).Space!;

        Kits(space, "sheet").Select(one => (one.Option, one.Kit.Panel.Transmittance)).Should().BeEquivalentTo([("opal-acrylic-2", 0.6), ("opal-acrylic-3", 0.41), ("opal-acrylic-4", 0.45), ("opal-acrylic-5", 0.4)]);
        Kits(space, "pipe").Should().AllSatisfy(one =>
        {
            var isOwn = one.Option == "pvc-u-20x1.5";
            (one.Kit.Frame.Pipe.MassPerLength?.GramsPerMeter ?? 0).Should().Match(mass => Math.Abs(mass - 99) < 1e-9 == isOwn);
            one.Kit.Frame.Fittings.Corner.TakeOff.Millimeters.Should().Match(takeOff => Math.Abs(takeOff - 12.5) < 1e-9 == one.Option.Contains("-20x", StringComparison.Ordinal));
            one.Kit.Frame.Fittings.Corner.Price.Should().Be(0.8m);
        });
    }

    private static IEnumerable<(string Option, KitSpec Kit)> Kits(DesignSpace space, string choice)
    {
        var place = space.Choices.ToList().FindIndex(one => one.Name == choice);
        return space.Choices[place].Options.Select((option, i) => (option.Name, space.Read(space.Own.With(place, i))!.Kit!));
    }

    [Fact]
    public void Options_put_in_together_come_to_the_kit_that_comes_of_writing_them_in_turn()
    {
        var space = OpenKits.OfLarge;
        Gen.Int[0, 1000].Array[space.Choices.Count].Sample(
            drawn =>
            {
                var code = new DesignCode([.. drawn.Zip(space.Choices, (number, choice) => number % choice.Options.Count)]);
                var turn = space.OptionsOf(code).SelectMany(option => option.Settings).OrderBy(setting => setting.Value is null)
                    .Aggregate(KitTextFile.Of(OpenKits.Large), (text, setting) => SettingWriter.Write(text, setting).After);
                return OpenKits.Read(turn.Text).Kit == space.Read(code)!.Kit;
            },
            iter: 40,
            threads: 1);
    }

    [Fact]
    public void Two_entries_of_one_list_can_be_left_out_together()
    {
        var space = Open("- {name: a, leave-out: [\"uprights[back]\"]}\n    - {name: b, leave-out: [\"uprights[side]\"]}", "uprights:\n  - {name: back, width: 50 cm, height: 40 cm}\n  - {name: side, width: 50 cm, height: 40 cm}\n").Space!;

        space.Read(new([1, 1]))!.Kit!.Uprights.Should().BeEmpty();
        space.Read(new([0, 1]))!.Kit!.Uprights.Select(upright => upright.Name).Should().Equal("back");
    }

    [Fact]
    public void Both_entries_of_a_list_can_go_where_a_comment_stands_between_them() =>
        Open("- {name: a, leave-out: [\"uprights[back]\"]}\n    - {name: b, leave-out: [\"uprights[side]\"]}", "uprights:\n  - {name: back, width: 50 cm, height: 40 cm}\n  # for plants\n  - {name: side, width: 50 cm, height: 40 cm}\n")
            .Space!.Read(new([1, 1]))!.Kit!.Uprights.Should().BeEmpty();

    [Fact]
    public void Two_keys_that_are_new_in_one_section_are_both_written()
    {
        var kit = Open("- {name: thickness, key: panel.thickness, values: [4 mm]}\n    - {name: margin, key: panel.margin, values: [25 mm]}").Space!.Read(new([1, 1]))!.Kit!;

        (kit.Panel.Thickness.Millimeters, kit.Panel.Margin.Millimeters, kit.Panel.Width!.Value.Millimeters).Should().Be((4, 25, 500));
    }

    private static DesignSpaceReading Open(string choices, string more = "") =>
        OpenKits.Reading(OpenKits.Small[..OpenKits.Small.IndexOf("explore:", StringComparison.Ordinal)] + $"explore:\n  choices:\n    {choices}\n{more}");
}
