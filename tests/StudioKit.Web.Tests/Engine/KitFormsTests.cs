using StudioKit.Kits;
using StudioKit.Web.Results;

namespace StudioKit.Web.Tests.Engine;

/// <summary>The form that the page shows, against what stands in plain sight in the demo kit's file.</summary>
public sealed class KitFormsTests
{
    private static readonly string Fen = Asked.Demo();
    private readonly Asked _asked = new();

    [Fact]
    public void Gear_and_animals_share_the_kits_sections_out_and_leave_none_away()
    {
        var gear = Form(FormRoom.Gear).Sections.Select(section => section.Path).ToList();
        var animals = Form(FormRoom.Animals).Sections.Select(section => section.Path).ToList();

        gear.Should().Equal("camera", "lenses", "accessories", "supports", "flashes", "modifiers", "covers", "uprights", "holders", "triggers", "shelters", "panel", "frame", "pack", "stock", "explore");
        animals.Should().Equal("subjects", "set-ups", "session", "site");
        Form(FormRoom.Gear).Lines.Select(line => line.Path).Should().Equal("kit", "description");
        Form(FormRoom.Animals).Lines.Should().BeEmpty();
    }

    [Fact]
    public void Only_what_is_opened_has_its_fields_along()
    {
        var form = Form(FormRoom.Animals, "set-ups[0].lights[1]");

        var setUps = form.Sections.Single(section => section.Path == "set-ups");
        setUps.Groups.Select(group => (group.Title, group.IsOpen)).Should().Equal(("white", true), ("habitat by day", false), ("dusk", false), ("black", false));
        setUps.Groups.Skip(1).Should().OnlyContain(group => group.Lines.Count == 0);
        var light = setUps.Groups[0].Sections.Single(section => section.Path == "set-ups[0].lights").Groups[1];
        light.Lines.Single(line => line.Path == "set-ups[0].lights[1].distance").Values.Should().Equal("40 cm");
        light.Lines.Single(line => line.Path == "set-ups[0].lights[1].flash").Choices.Select(choice => choice.Word).Should().Equal("sedge", "willow");
    }

    [Fact]
    public void A_field_tells_its_unit_its_bounds_and_what_stands_in_for_it()
    {
        var thickness = Line("panel", "panel.thickness");
        var skirts = Line("panel", "panel.skirts");

        thickness.Values.Should().BeEmpty();
        thickness.StandIn.Should().Be("3 mm, as the part says");
        thickness.Form.Should().Contain("a length").And.Contain("Units: mm,").And.Contain("± 5 %");
        skirts.Choices.Select(choice => choice.Word).Should().Equal("yes", "no");
        Line("flashes[0]", "flashes[0].guide-number").Form.Should().Contain("From 1 m to 300 m.");
    }

    [Fact]
    public void A_written_value_keeps_its_comment_and_every_other_byte()
    {
        var edited = _asked.For(EngineQuestions.FormEdit, new(Fen, FormEditKind.Write, "panel.transmittance", [new("", "0.45")]));

        edited.Refusal.Should().BeEmpty();
        edited.Text.Should().Be(Fen.Replace("transmittance: 0.5 ± 0.05            # measure", "transmittance: 0.45            # measure", StringComparison.Ordinal));
        edited.Text.Should().NotBe(Fen);
    }

    [Fact]
    public void A_lens_is_added_whole_and_the_kit_can_be_read_at_once()
    {
        var needed = _asked.For(EngineQuestions.Form, new(Fen, "kit.yaml", FormRoom.Gear, "", "lenses")).Sections.Single(section => section.Path == "lenses").NewEntry;
        needed.Select(line => line.Path).Should().Equal("lenses[2].name", "lenses[2].focal-length");

        var edited = _asked.For(EngineQuestions.FormEdit, new(Fen, FormEditKind.Add, "lenses", [new("name", "sallow 90"), new("focal-length", "90 mm")], 2));

        edited.Refusal.Should().BeEmpty();
        KitReader.Parse(edited.Text, "kit.yaml", PartsLibrary.Embedded).Kit!.Lenses.Select(lens => lens.Name).Should().Equal("reed 55", "alder 180", "sallow 90");
    }

    [Fact]
    public void An_entry_moved_and_moved_back_leaves_the_text_as_it_was()
    {
        var moved = _asked.For(EngineQuestions.FormEdit, new(Fen, FormEditKind.Move, "flashes[0]", [], 1));
        var back = _asked.For(EngineQuestions.FormEdit, new(moved.Text, FormEditKind.Move, "flashes[1]", [], 0));

        KitReader.Parse(moved.Text, "kit.yaml", PartsLibrary.Embedded).Kit!.Flashes.Select(flash => flash.Name).Should().Equal("willow", "sedge");
        back.Text.Should().Be(Fen);
    }

    [Fact]
    public void A_part_named_in_short_is_changed_in_short()
    {
        var pipe = Line("frame.pipe", "frame.pipe.part");
        pipe.Values.Should().Equal("pvc-u-25x1.25");

        var edited = _asked.For(EngineQuestions.FormEdit, new(Fen, FormEditKind.Write, pipe.WritePath, [new("", "pvc-u-32x1.8")]));

        edited.Text.Should().Be(Fen.Replace("pipe: pvc-u-25x1.25 ", "pipe: pvc-u-32x1.8 ", StringComparison.Ordinal)).And.NotBe(Fen);
    }

    // An inch is 25.4 mm by definition.
    [Theory]
    [InlineData("panel.width", "24 in", "609.6 mm", "")]
    [InlineData("panel.width", "24", "", "unit")]
    [InlineData("set-ups[0].lights[0].flash", "sedg", "", "sedge")]
    [InlineData("set-ups[0].lights[0].distance", "45 kg", "", "length")]
    public void What_is_typed_is_read_as_the_kit_would_be(string path, string typed, string meaning, string problem)
    {
        var check = _asked.For(EngineQuestions.FieldCheck, new(Fen, path, typed));

        check.Meaning.Should().Be(meaning);
        (check.Problem.Length > 0).Should().Be(meaning.Length == 0);
        check.Problem.Contains(problem, StringComparison.Ordinal).Should().BeTrue(check.Problem);
    }

    [Fact]
    public void What_is_wrong_is_told_at_its_field_and_at_its_line()
    {
        var text = Fen.Replace("distance: 45 cm", "distance: 45", StringComparison.Ordinal);
        var line = text[..text.IndexOf("distance: 45}", StringComparison.Ordinal)].Count(letter => letter == '\n') + 1;

        var form = _asked.For(EngineQuestions.Form, new(text, "kit.yaml", FormRoom.Animals, "set-ups[0].lights[0]", ""));

        form.Faults.Should().ContainSingle();
        form.Faults[0].Should().Match<FormFault>(fault => fault.Path == "set-ups[0].lights[0].distance" && fault.Group == "set-ups[0].lights[0]" && fault.Room == FormRoom.Animals && fault.Fault.Line == line);
        form.Sections.Single(section => section.Path == "set-ups").Groups.Select(group => group.FaultCount).Should().Equal(1, 0, 0, 0);
        form.Sections.SelectMany(section => section.Groups).Single(group => group.IsOpen).Sections.Single(section => section.Path.EndsWith("lights", StringComparison.Ordinal))
            .Groups[0].Lines.Single(one => one.Path.EndsWith("distance", StringComparison.Ordinal)).Faults.Should().ContainSingle();
    }

    [Fact]
    public void A_text_that_is_no_yaml_says_what_stands_in_the_way()
    {
        Form(FormRoom.Gear).Obstacle.Should().BeEmpty();

        _asked.For(EngineQuestions.Form, new("kit: [Bog", "kit.yaml", FormRoom.Gear, "", "")).Obstacle.Should().StartWith("Line 1 ");
        _asked.For(EngineQuestions.FormEdit, new("kit: [Bog", FormEditKind.Write, "panel.width", [new("", "60 cm")])).Should().Match<FormEditAnswer>(made => made.Text == "kit: [Bog" && made.Refusal.StartsWith("Line 1 "));
    }

    [Fact]
    public void Parts_are_found_by_every_word_of_a_search()
    {
        var found = _asked.For(EngineQuestions.Parts, new("sheets", "opal 3"));

        found.Parts.Select(part => part.Name).Should().Contain("opal-acrylic-3").And.OnlyContain(name => name.Contains("opal") && name.Contains('3'));
        found.Of.Should().Be(Directory.GetFiles(Path.Combine(Asked.Repository(), "kits", "parts", "sheets")).Length);
        _asked.For(EngineQuestions.Parts, new("sheets", "opal of nowhere")).Parts.Should().BeEmpty();
    }

    [Fact]
    public void Two_states_differ_in_what_was_changed_and_in_nothing_else()
    {
        var heavier = Fen.Replace("{name: water, mass: 1 kg, count: 2", "{name: water, mass: 1 kg, count: 3", StringComparison.Ordinal);

        var compared = _asked.For(EngineQuestions.Compare, new(Fen, heavier, "kit.yaml"));

        // One more bottle of 1 kg.
        compared.Mass.Should().Be("The second is 1.00 kg heavier.");
        compared.Measures.Where(pair => pair.Differs).Select(pair => pair.Subject).Should().Equal("carried");
        compared.Differences.Select(pair => pair.Subject).Should().Contain("mass").And.NotContain("panel");
        _asked.For(EngineQuestions.Compare, new(Fen, Fen, "kit.yaml")).Should().Match<CompareAnswer>(same => same.Mass == "Both weigh the same." && same.Differences.Count == 0);
    }

    private FormAnswer Form(FormRoom room, string opened = "") => _asked.For(EngineQuestions.Form, new(Fen, "kit.yaml", room, opened, ""));

    private FormLine Line(string group, string path) => Groups(Form(FormRoom.Gear, group).Sections).SelectMany(open => open.Lines).Single(line => line.Path == path);

    private static IEnumerable<FormGroupLine> Groups(IEnumerable<FormSection> sections) => sections.SelectMany(section => section.Groups).SelectMany(group => Groups(group.Sections).Prepend(group));
}
