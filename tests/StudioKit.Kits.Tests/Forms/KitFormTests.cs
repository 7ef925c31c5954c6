using System.Text.Json;
using StudioKit.Kits.Editing;
using StudioKit.Kits.Forms;

namespace StudioKit.Kits.Tests.Forms;

/// <summary>What forms show of a kit, against the JSON Schema, the reader and what the demo kit's file says in plain sight.</summary>
public sealed class KitFormTests
{
    private static readonly KitText Fen = KitText.Of(File.ReadAllText(Path.Combine(KitFolder.Path, "fen-edge.yaml")));
    private static readonly KitForm Form = KitForm.Of(Fen, PartsLibrary.Embedded);
    private static readonly string[] Sound = [.. Directory.GetFiles(KitFolder.Path, "*.yaml").Order(StringComparer.Ordinal).Select(File.ReadAllText), StarterKit.Text, StarterBlocks.AllInUse];

    public static TheoryData<string> Kits => [.. Directory.GetFiles(KitFolder.Path, "*.yaml").Select(file => Path.GetFileName(file))];

    [Fact]
    public void The_description_has_the_keys_of_the_schema_in_its_order()
    {
        var schema = JsonDocument.Parse(KitSchema.Write()).RootElement;

        Keys(KitGroup.Whole).Should().Equal(Keys(schema, schema));
    }

    [Fact]
    public void Every_field_has_a_label_and_help_for_people_and_none_is_told_twice_in_a_group()
    {
        foreach (var group in Groups(KitGroup.Whole))
        {
            group.Fields.Select(field => field.Label).Should().OnlyHaveUniqueItems().And.AllSatisfy(label => label.Should().MatchRegex("^[A-Z][A-Za-z' ,-]+$"));
            group.Fields.Should().AllSatisfy(field => field.Help.Should().MatchRegex(@"^(\p{L}).*\.$"));
            group.Help.Should().EndWith(".");
            group.Fields.Should().NotContain(field => field.Kind == FieldKind.Quantity && field.UsualUnit == null);
            group.Fields.Should().NotContain(field => field.Kind == FieldKind.Choice && field.Choices.Count == 0);
        }
    }

    /// <summary>As the keys' sources of truth say it: the parameters in the sections' lines.</summary>
    [Fact]
    public void A_field_tells_what_it_takes()
    {
        var power = KitGroup.FieldAt("flashes[0].guide-number")!;
        (power.Label, power.Kind, power.IsRequired, power.Least, power.Most, power.Noun).Should().Be(("Guide number", FieldKind.Setting, true, "1 m", "300 m", "a guide number"));
        var thickness = KitGroup.FieldAt("panel.thickness")!;
        (thickness.Kind, thickness.UsualUnit, thickness.Default, thickness.TakesUncertainty, thickness.Noun).Should().Be((FieldKind.Quantity, "mm", "3 mm", true, "a length"));
        thickness.Units.Should().StartWith("mm").And.Contain(["cm", "in", "ft"]).And.OnlyHaveUniqueItems();
        var kind = KitGroup.FieldAt("set-ups[3].kind")!;
        kind.Kind.Should().Be(FieldKind.Choice);
        kind.Choices.Should().Contain(new FieldChoice("white-background", "White background"));
        KitGroup.FieldAt("panel.skirts")!.Kind.Should().Be(FieldKind.YesNo);
        KitGroup.FieldAt("flashes[0].cell-count")!.Kind.Should().Be(FieldKind.WholeNumber);
        KitGroup.FieldAt("camera.sensor")!.Kind.Should().Be(FieldKind.Size);
        KitGroup.FieldAt("lenses[0].aperture")!.Kind.Should().Be(FieldKind.Range);
        KitGroup.FieldAt("panel.transmittance")!.Kind.Should().Be(FieldKind.Number);
        KitGroup.FieldAt("site.name")!.Kind.Should().Be(FieldKind.Text);
        KitGroup.FieldAt("frame.pipe.part")!.Should().Match<KitField>(field => field.Kind == FieldKind.Part && field.PartKind == "pipes");
        KitGroup.FieldAt("set-ups[0].lights[0].flash")!.Should().Match<KitField>(field => field.Kind == FieldKind.Name && field.NamesOf == "flashes" && field.IsRequired);
        KitGroup.FieldAt("set-ups[0].magnifications")!.IsList.Should().BeTrue();
        KitGroup.FieldAt("set-ups")!.Group!.Fields.Select(field => field.Key).Should().StartWith("name");
        KitGroup.FieldAt("panle.width").Should().BeNull();
    }

    [Fact]
    public void The_defaults_of_the_description_are_those_that_the_reader_reports()
    {
        const string Smallest = "kit: K\ncamera: {name: body, sensor: 36 mm x 24 mm}\nlenses:\n  - {name: reed, focal-length: 55 mm}\n";
        var used = KitReader.Parse(Smallest, "kit.yaml", PartsLibrary.Embedded).Defaults.ToDictionary(used => used.Path, used => used.Value, StringComparer.Ordinal);

        used.Should().HaveCountGreaterThan(90);
        used.Should().AllSatisfy(pair => KitGroup.FieldAt(pair.Key)!.Default.Should().Be(pair.Value, pair.Key));
    }

    /// <summary>What the files of the kit and of its parts say, and the values that stand beside the records' members.</summary>
    [Theory]
    [InlineData("flashes[0].lowest-power", "1/128", ValueOrigin.Written)]
    [InlineData("set-ups[0].lights[1].distance", "40 cm", ValueOrigin.Written)]
    [InlineData("set-ups[1].subjects", "hawk-moth, common frog", ValueOrigin.Written)]
    [InlineData("frame.pipe.part", "pvc-u-25x1.25", ValueOrigin.Written)]
    [InlineData("frame.pipe.outside-diameter", "25 mm", ValueOrigin.Part)]
    [InlineData("flashes[1].cell.chemistry", "nickel-metal-hydride", ValueOrigin.Part)]
    [InlineData("frame.fittings.corner.price", "0.95", ValueOrigin.Written)]
    [InlineData("set-ups[0].veil-limit", "0.7 stop", ValueOrigin.Default)]
    [InlineData("site.gust-factor", "1.66", ValueOrigin.Default)]
    [InlineData("set-ups[0].filter", null, ValueOrigin.None)]
    public void A_field_tells_the_value_that_counts_and_where_it_comes_from(string path, string? value, ValueOrigin origin)
    {
        var field = Form.Find(path)!;

        (field.InEffect, field.Origin).Should().Be((value ?? field.InEffect, origin));
        (field.InEffect is null).Should().Be(value is null);
    }

    [Theory]
    [MemberData(nameof(Kits))]
    public void What_counts_is_what_the_reader_says_it_took(string file)
    {
        var text = KitText.Of(File.ReadAllText(Path.Combine(KitFolder.Path, file)));
        var read = KitReader.Parse(text.Text, "kit.yaml", PartsLibrary.Embedded);
        var form = KitForm.Of(text, PartsLibrary.Embedded);
        var fields = form.All().ToArray();

        fields.Where(field => field.Origin == ValueOrigin.Default).Select(field => (field.Path, field.InEffect)).Should().BeEquivalentTo(read.Defaults.Select(used => (used.Path, used.Value)));
        fields.Where(field => field.Written is { Value: KitValue.Scalar }).Should().AllSatisfy(field => field.InEffect.Should().BeOneOf(read.Written.GetValueOrDefault(field.Path), field.Groups.Count > 0 ? null : field.InEffect));
        fields.Should().AllSatisfy(field => field.IsMissing.Should().BeFalse(field.Path));
        fields.Where(field => field.Written is not null).Should().AllSatisfy(field => text.Find(field.Path).Should().Be(field.Written));
    }

    [Fact]
    public void Faults_stand_at_the_field_or_section_that_they_are_about()
    {
        var form = KitForm.Of(KitText.Of("""
            kit: K
            camera:
              name: body
              sensor: 24 mm x 36 mm
              iso: 100
            lenses:
              - focal-length: 55
                magnifications: [1:2, big]
                colour: black
            panel: opal
            set-ups:
              - {name: white, kind: white, lights: [{flash: sedge, role: below}]}
            """), PartsLibrary.Embedded);

        Codes("camera.iso").Should().Equal(DiagnosticCodes.UnreadableValue);
        Codes("lenses[0].focal-length").Should().Equal(DiagnosticCodes.UnreadableValue);
        Codes("lenses[0].magnifications").Should().Equal(DiagnosticCodes.UnreadableValue);
        Codes("set-ups[0].kind").Should().Equal(DiagnosticCodes.UnreadableValue);
        Codes("set-ups[0].lights[0].flash").Should().Equal(DiagnosticCodes.UnknownName);
        form.Find("lenses")!.Groups[0].Diagnostics.Select(fault => fault.Code).Should().BeEquivalentTo(DiagnosticCodes.MissingKey, DiagnosticCodes.UnknownKey);
        form.Find("panel")!.Groups[0].Diagnostics.Select(fault => fault.Code).Should().Equal(DiagnosticCodes.MissingPart);
        form.Find("set-ups[0].lights")!.Groups[0].Diagnostics.Select(fault => fault.Code).Should().Equal(DiagnosticCodes.MissingKey);
        (form.Find("lenses[0].name")!.IsMissing, form.Find("set-ups[0].lights[0].distance")!.IsMissing, form.Find("camera.name")!.IsMissing, form.Find("flashes")!.IsMissing).Should().Be((true, true, false, false));
        form.Elsewhere.Should().BeEmpty();

        IEnumerable<string> Codes(string path) => form.Find(path)!.Diagnostics.Select(fault => fault.Code);
    }

    [Fact]
    public void A_fault_of_a_later_entry_of_a_list_stands_at_that_entry()
    {
        var form = KitForm.Of(KitText.Of("""
            flashes:
              - {name: sedge, mass: 300 g}
              - {name: willow, mass: heavy}
            set-ups:
              - {name: white, kind: white-background}
              - name: dusk
                kind: low-light-fill
                lights:
                  - {flash: willow, role: fill, distance: 30 cm}
                  - {flash: willow, role: fill, distance: far}
            """), PartsLibrary.Embedded);

        form.Find("flashes[1].mass")!.Diagnostics.Should().ContainSingle();
        form.Find("set-ups[1].lights[1].distance")!.Diagnostics.Should().ContainSingle();
        form.Find("flashes[0].mass")!.Diagnostics.Should().BeEmpty();
        form.Find("set-ups[1].lights[0].distance")!.Diagnostics.Should().BeEmpty();
    }

    [Fact]
    public void A_fault_under_a_key_that_no_kit_has_stands_at_the_section() => KitForm.Of(KitText.Of("camera: {name: body A, colour: *shade}\n"), PartsLibrary.Embedded)
        .Find("camera")!.Groups[0].Diagnostics.Select(fault => fault.Code).Should().Contain(DiagnosticCodes.RefusedFeature);

    [Theory]
    [InlineData("{part: sensor-36x24}", false)]
    [InlineData("{part: no-such-sensor}", false)]
    [InlineData("{name: body A}", true)]
    public void What_a_part_gives_or_should_have_given_is_not_missing_in_the_section(string camera, bool isMissing) =>
        KitForm.Of(KitText.Of($"camera: {camera}\n"), PartsLibrary.Embedded).All()
            .Any(field => field.Path.StartsWith("camera.", StringComparison.Ordinal) && field.IsMissing).Should().Be(isMissing);

    /// <summary>Nothing that the reader says is lost or told twice, whatever the text.</summary>
    [Fact]
    public void Every_fault_stands_in_the_form_once() => Gen.Int[0, Sound.Length - 1].SelectMany(at => Gen.OneOf(HostileText.Of(Sound[at]), HostileText.Shuffled(Sound[at]), HostileText.Thinned(Sound[at]))).Sample(
        spoilt =>
        {
            var form = KitForm.Of(KitText.Of(spoilt), PartsLibrary.Embedded);
            var told = form.All().SelectMany(field => field.Diagnostics.Concat(field.Groups.SelectMany(group => group.Diagnostics))).Concat(form.Whole.Diagnostics).Concat(form.Elsewhere);

            return told.Order(Comparer<Diagnostic>.Create((a, b) => string.CompareOrdinal(a.ToString(), b.ToString()))).SequenceEqual(form.Reading.Diagnostics.Order(Comparer<Diagnostic>.Create((a, b) => string.CompareOrdinal(a.ToString(), b.ToString()))));
        },
        iter: RandomFiles.Runs);

    [Theory]
    [InlineData("panel.width", "60 cm", "600 mm")]
    [InlineData("panel.width", "24 in", "609.6 mm")]
    [InlineData("set-ups[0].aperture", "f8", "f/8")]
    [InlineData("set-ups[0].aperture", " best ", "best")]
    [InlineData("set-ups[0].lights[0].flash", "willow", "willow")]
    [InlineData("set-ups[0].magnifications", "1:2", "0.5")]
    [InlineData("frame.pipe.part", "pvc-u-20x1.5", "pvc-u-20x1.5")]
    [InlineData("panel.skirts", "true", "yes")]
    [InlineData("flashes[0].guide-number", "30 m ± 0.3 stop", "30 m @ ISO 100")]
    public void Typed_text_is_read_as_the_kit_would_be(string path, string typed, string meaning)
    {
        var check = Form.Check(path, typed);

        check.Diagnostics.Should().BeEmpty();
        check.Meaning.Should().Be(meaning);
    }

    /// <summary>What is said of the typed text is what the reader says once it stands in the kit.</summary>
    [Theory]
    [InlineData("panel.width", "60")]
    [InlineData("panel.width", "60 cmm")]
    [InlineData("panel.width", "1 mm")]
    [InlineData("panel.width", "60 cm ± 100 km")]
    [InlineData("set-ups[0].aperture", "11")]
    [InlineData("set-ups[0].kind", "white")]
    [InlineData("set-ups[0].lights[0].flash", "wilow")]
    [InlineData("set-ups[0].lights[0].flash", "rush")]
    [InlineData("frame.pipe.part", "pvc-u-20x1.55")]
    [InlineData("frame.pipe.part", "../x")]
    [InlineData("flashes[0].cell-count", "4.5")]
    public void Typed_text_gets_the_readers_own_faults(string path, string typed)
    {
        var check = Form.Check(path, typed);
        var read = KitReader.Parse(Fen.Set(path == "frame.pipe.part" ? "frame.pipe" : path, typed).After.Text, "kit.yaml", PartsLibrary.Embedded);

        check.IsGood.Should().BeFalse();
        check.Diagnostics.Select(fault => (fault.Code, fault.Message, fault.Hint)).Should().Equal(read.Diagnostics.Select(fault => (fault.Code, fault.Message, fault.Hint)));
    }

    [Fact]
    public void A_kit_that_is_broken_YAML_still_has_a_form()
    {
        var form = KitForm.Of(KitText.Of("kit: [\n"), PartsLibrary.Embedded);

        form.Elsewhere.Should().ContainSingle().Which.Code.Should().Be(DiagnosticCodes.Syntax);
        form.Whole.Fields.Should().HaveCount(KitGroup.Whole.Fields.Count);
    }

    private static IEnumerable<string> Keys(KitGroup group) => group.Fields.SelectMany(field => field.Group is null ? [field.Key] : Keys(field.Group).Prepend(field.Key));

    private static IEnumerable<KitGroup> Groups(KitGroup group) => group.Fields.Select(field => field.Group).OfType<KitGroup>().SelectMany(Groups).Prepend(group);

    private static IEnumerable<string> Keys(JsonElement section, JsonElement root) => section.GetProperty("properties").EnumerateObject().SelectMany(key => Inner(key.Value, root) is { } inner ? Keys(inner, root).Prepend(key.Name) : [key.Name]);

    private static JsonElement? Inner(JsonElement value, JsonElement root)
    {
        if (value.TryGetProperty("items", out var items))
        {
            return Inner(items, root);
        }

        if (value.TryGetProperty("$ref", out var reference))
        {
            var target = root.GetProperty("$defs").GetProperty(reference.GetString()!["#/$defs/".Length..]);
            return target.TryGetProperty("properties", out _) ? target : null;
        }

        return value.TryGetProperty("anyOf", out var choices) ? choices.EnumerateArray().Select(choice => Inner(choice, root)).FirstOrDefault(inner => inner is not null) : null;
    }
}
