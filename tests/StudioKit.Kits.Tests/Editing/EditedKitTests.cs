using StudioKit.Kits.Editing;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Optics;
using UnitsNet;

namespace StudioKit.Kits.Tests.Editing;

/// <summary>Changes of single values of the demo kits: the text differs in that value alone, and the kit read of it as a record's own copy with that value does.</summary>
public sealed class EditedKitTests
{
    private static readonly KitText Fen = KitText.Of(File.ReadAllText(Path.Combine(KitFolder.Path, "fen-edge.yaml")));
    private static readonly KitSpec FenKit = Read(Fen);

    public static TheoryData<string, string, string, string> Values => new()
    {
        { "flashes[0].lowest-power", "1/64", "    lowest-power: 1/128\n    power-step: third\n    head: 70", "    lowest-power: 1/64\n    power-step: third\n    head: 70" },
        { "set-ups[0].lights[1].distance", "16 in", "modifier: small softbox, distance: 40 cm, azimuth", "modifier: small softbox, distance: 16 in, azimuth" },
        { "lenses[0].magnifications[1]", "1:3", "[1:4, 1:2, 1:1]   # 1:1 needs", "[1:4, 1:3, 1:1]   # 1:1 needs" },
        { "flashes[1].zooms[0]", "30 m @ ISO 100, 24 mm", "\"28 m @ ISO 100, 24 mm\"", "\"30 m @ ISO 100, 24 mm\"" },
        { "camera.mass", "1.5 kg", "mass: 740 g", "mass: 1.5 kg" },
        { "frame.pegs.hold", "5 kg", "{count: 4, hold: 3 kg, guys: yes}   #", "{count: 4, hold: 5 kg, guys: yes}   #" },
        { "panel.skirts", "no", "skirts: yes                          #", "skirts: no                          #" },
        { "site.name", "Bank: east, by the #3 post", "Fen edge, east bank", "\"Bank: east, by the #3 post\"" },
    };

    [Theory]
    [MemberData(nameof(Values))]
    public void A_value_gives_way_to_another_and_nothing_else_changes(string path, string value, string before, string after)
    {
        var result = Fen.Set(path, value);

        result.Refusal.Should().BeNull();
        result.After.Text.Should().Be(Replaced(Fen.Text, before, after));
        result.Edit.ApplyTo(Fen.Text).Should().Be(result.After.Text);
        result.Inverse.ApplyTo(result.After.Text).Should().Be(Fen.Text);
    }

    [Fact]
    public void The_kit_read_afterwards_has_just_that_value_changed()
    {
        Kit("flashes[0].lowest-power", "1/64").Should().Be(FenKit with { Flashes = FenKit.Flashes.At(0, flash => flash with { LowestPower = new FlashPower(1.0 / 64) }) });
        Kit("set-ups[0].lights[1].distance", "16 in").Should().Be(FenKit with { SetUps = FenKit.SetUps.At(0, setUp => setUp with { Lights = setUp.Lights.At(1, light => light with { Distance = Length.FromMillimeters(406.4) }) }) });
        Kit("lenses[0].magnifications[1]", "0.25").Should().Be(FenKit with { Lenses = FenKit.Lenses.At(0, lens => lens with { Magnifications = lens.Magnifications.At(1, _ => new Magnification(0.25)) }) });
        Kit("site.name", "Bank: east, by the #3 post").Should().Be(FenKit with { Site = FenKit.Site with { Name = "Bank: east, by the #3 post" } });
        Kit("camera.reports-effective-f-number", "yes").Should().Be(FenKit with { Camera = FenKit.Camera with { ReportsEffectiveFNumber = true } });
        Kit("panel.sweep-radius", "30 cm").Should().Be(FenKit with { Panel = FenKit.Panel with { SweepRadius = Length.FromMillimeters(300) } });
        Kit("kit", "yes").Should().Be(FenKit with { Name = "yes" });
    }

    [Theory]
    [InlineData("flashes[0].zoom", "35 mm", "± 0.3 stop\n", "± 0.3 stop\n    zoom: 35 mm\n")]
    [InlineData("flashes[0].beam-width", "60°", "    lowest-power: 1/128\n    power-step: third\n    head: 70", "    lowest-power: 1/128\n    beam-width: 60°\n    power-step: third\n    head: 70")]
    [InlineData("camera.clip-point", "+1/3", "  iso: 100 to 6400\n", "  iso: 100 to 6400\n  clip-point: +1/3\n")]
    [InlineData("set-ups[0].lights[0].zoom", "24 mm", "role: below, distance: 45 cm}", "role: below, distance: 45 cm, zoom: 24 mm}")]
    [InlineData("set-ups[0].lights[0].modifier", "dome", "role: below, distance: 45 cm}", "role: below, modifier: dome, distance: 45 cm}")]
    [InlineData("frame.fittings.cross.price", "1.10", "    tee: {price: 0.60}\n", "    tee: {price: 0.60}\n    cross:\n      price: 1.10\n")]
    [InlineData("frame.pipe.wall", "2 mm", "pipe: pvc-u-25x1.25  ", "pipe: {part: pvc-u-25x1.25, wall: 2 mm}  ")]
    [InlineData("pack.target-mass", "20 kg", "kind: animal-care, stage: packing-down}\n", "kind: animal-care, stage: packing-down}\n  target-mass: 20 kg\n")]
    [InlineData("stock.offcuts[1]", "50 cm", "[740 mm, 740 mm]", "[740 mm, 50 cm]")]
    public void A_key_that_is_not_there_yet_comes_where_the_order_of_keys_puts_it(string path, string value, string before, string after) =>
        Fen.Set(path, value).After.Text.Should().Be(Replaced(Fen.Text, before, after));

    [Theory]
    [InlineData("kit: K\ncamera: {name: b, sensor: 36 mm x 24 mm}\nsite:\n  wind: 3 m/s\n", "frame.height", "50 cm", "kit: K\ncamera: {name: b, sensor: 36 mm x 24 mm}\nframe:\n  height: 50 cm\nsite:\n  wind: 3 m/s\n")]
    [InlineData("lenses:\n  - name: a\n\n# About the place.\nsite:\n  wind: 3 m/s\n", "panel.width", "50 cm", "lenses:\n  - name: a\n\npanel:\n  width: 50 cm\n\n# About the place.\nsite:\n  wind: 3 m/s\n")]
    [InlineData("panel:\n  width: 1 m\n\nframe:\n  height: 1 m\n\n# site: later\n", "stock.kerf", "2 mm", "panel:\n  width: 1 m\n\nframe:\n  height: 1 m\n\n# site: later\n\nstock:\n  kerf: 2 mm\n")]
    [InlineData("panel:\n  width: 1 m", "stock.kerf", "2 mm", "panel:\n  width: 1 m\nstock:\n  kerf: 2 mm")]
    [InlineData("panel:\n  width: 1 m", "panel.depth", "2 mm", "panel:\n  width: 1 m\n  depth: 2 mm")]
    [InlineData("panel:\r\n  width: 1 m\r\n", "panel.depth", "2 mm", "panel:\r\n  width: 1 m\r\n  depth: 2 mm\r\n")]
    [InlineData("", "kit", "K", "kit: K\n")]
    [InlineData("# Mine.\n", "panel.width", "1 m", "# Mine.\n\npanel:\n  width: 1 m\n")]
    [InlineData("flashes: []  # none yet\n", "flashes[0].name", "sedge", null)]
    [InlineData("panel:   # white\n", "panel.width", "1 m", "panel:   # white\n  width: 1 m\n")]
    [InlineData("panel:\n  width:   # measure\n", "panel.width", "1 m", "panel:\n  width: 1 m   # measure\n")]
    [InlineData("panel: {width: 1 m}\n", "panel.material", "opal, white", "panel: {material: \"opal, white\", width: 1 m}\n")]
    [InlineData("panel: {}\n", "panel.width", "1 m", "panel: {width: 1 m}\n")]
    [InlineData("panel: {width}\n", "panel.width", "1 m", "panel: {width: 1 m}\n")]
    [InlineData("lenses:\n- name: a\n  mass: 1 g\n", "flashes[0].name", "b", "lenses:\n- name: a\n  mass: 1 g\nflashes:\n- name: b\n")]
    [InlineData("lenses:\n  - mass: 1 g\n", "lenses[0].name", "a", "lenses:\n  - name: a\n    mass: 1 g\n")]
    [InlineData("lenses:\n  -\n", "lenses[0].name", "a", "lenses:\n  - {name: a}\n")]
    [InlineData("description: >  # folded\n  Moths\n  at night.\n\nkit: K\n", "description", "Moths by day.", "description: Moths by day.  # folded\n\nkit: K\n")]
    [InlineData("description: Moths\n  at night.\nkit: K\n", "description", "Moths by day.", "description: Moths by day.\nkit: K\n")]
    [InlineData("\uFEFFkit: K\n", "kit", "L", "\uFEFFkit: L\n")]
    [InlineData("kit: 'it''s'\n", "kit", "isn't", "kit: 'isn''t'\n")]
    [InlineData("kit: \"a\"\n", "kit", "say \"b\\c\"", "kit: \"say \\\"b\\\\c\\\"\"\n")]
    [InlineData("set-ups:\n  - camera-pitch: 30°\n", "set-ups[0].camera-pitch[0]", "45°", "set-ups:\n  - camera-pitch: 45°\n")]
    public void The_text_keeps_its_own_style(string text, string path, string value, string? after)
    {
        var result = KitText.Of(text).Set(path, value);

        (result.Refusal is null ? result.After.Text : null).Should().Be(after);
        result.Inverse.ApplyTo(result.After.Text).Should().Be(text);
    }

    [Theory]
    [InlineData("*moth", "\"*moth\"")]
    [InlineData("moths: two", "\"moths: two\"")]
    [InlineData("moths #2", "\"moths #2\"")]
    [InlineData("yes", "\"yes\"")]
    [InlineData("Off", "\"Off\"")]
    [InlineData("null", "\"null\"")]
    [InlineData("~", "\"~\"")]
    [InlineData("55", "\"55\"")]
    [InlineData("-1.5e3", "\"-1.5e3\"")]
    [InlineData("2026-06-01", "\"2026-06-01\"")]
    [InlineData("12:30", "\"12:30\"")]
    [InlineData("0x1F", "\"0x1F\"")]
    [InlineData("moth:", "\"moth:\"")]
    [InlineData("- moth", "\"- moth\"")]
    [InlineData("@moth", "\"@moth\"")]
    [InlineData("\"moth\" x", "'\"moth\" x'")]
    [InlineData("a\\b: c", "'a\\b: c'")]
    [InlineData("it's", "it's")]
    [InlineData("12 moths", "12 moths")]
    [InlineData("c:d", "c:d")]
    [InlineData("moth, [white] {wet}", "moth, [white] {wet}")]
    [InlineData("🦋 fen", "🦋 fen")]
    public void A_word_stands_between_quotation_marks_where_YAML_would_take_it_for_something_else(string value, string written)
    {
        var after = KitText.Of("kit: K # mine\n").Set("kit", value).After;

        after.Text.Should().Be($"kit: {written} # mine\n");
        after.Find("kit")!.Value.Should().Be(KitValue.Of(value));
    }

    [Fact]
    public void A_quantity_is_not_quoted() => KitText.Of("set-ups:\n  - {iso: 100, camera-pitch: [1°]}\n").Set("set-ups[0].iso", "400").After.Text.Should().Be("set-ups:\n  - {iso: 400, camera-pitch: [1°]}\n");

    [Theory]
    [InlineData("kit: &a K\n", "kit", KitEditRefusalKind.AliasOrAnchor)]
    [InlineData("kit: &a K\ndescription: *a\n", "description", KitEditRefusalKind.AliasOrAnchor)]
    [InlineData("panel: &p\n  width: 1 m\n", "panel.width", KitEditRefusalKind.AliasOrAnchor)]
    [InlineData("panel: !!map\n  width: 1 m\n", "panel.width", KitEditRefusalKind.AliasOrAnchor)]
    [InlineData("kit: K\npanel:\n  <<: *p\n  width: 1 m\n", "panel.width", KitEditRefusalKind.MergeKey)]
    [InlineData("kit: K\n---\nkit: L\n", "kit", KitEditRefusalKind.SeveralDocuments)]
    [InlineData("kit: K\n...\nkit: L\n", "kit", KitEditRefusalKind.SeveralDocuments)]
    [InlineData("panel:\n\twidth: 1 m\n", "panel.width", KitEditRefusalKind.Tab)]
    [InlineData("panel: [\n", "panel.width", KitEditRefusalKind.Unreadable)]
    [InlineData("kit: K\0\n", "kit", KitEditRefusalKind.Unreadable)]
    [InlineData("kit: K\nkit: L\n", "kit", KitEditRefusalKind.RepeatedKey)]
    [InlineData("kit: K\n", "panle.width", KitEditRefusalKind.UnknownKey)]
    [InlineData("kit: K\n", "panel.widht", KitEditRefusalKind.UnknownKey)]
    [InlineData("kit: K\n", "kit.name", KitEditRefusalKind.NoSuchPlace)]
    [InlineData("kit: K\n", "lenses[1].name", KitEditRefusalKind.NoSuchPlace)]
    [InlineData("kit: K\n", "lenses.name", KitEditRefusalKind.NoSuchPlace)]
    [InlineData("lenses:\n  - name: a\n", "lenses.name", KitEditRefusalKind.NoSuchPlace)]
    [InlineData("kit: K\n", "kit[0]x", KitEditRefusalKind.NoSuchPlace)]
    [InlineData("kit: K\n", "", KitEditRefusalKind.NoSuchPlace)]
    [InlineData("kit: K\n", ".", KitEditRefusalKind.NoSuchPlace)]
    [InlineData("kit: K\n", "kit[99999999999]", KitEditRefusalKind.NoSuchPlace)]
    public void What_cannot_be_changed_safely_is_refused_with_a_reason(string text, string path, KitEditRefusalKind kind)
    {
        var result = KitText.Of(text).Set(path, "1 m");

        result.Refusal!.Kind.Should().Be(kind);
        result.Refusal.Message.Should().EndWith(".");
        result.After.Text.Should().Be(text);
        result.Edit.IsNone.Should().BeTrue();
    }

    [Theory]
    [InlineData("a\nb")]
    [InlineData("a\tb")]
    [InlineData("a\u0085b")]
    [InlineData("a\u2028b")]
    [InlineData("a\u001b[2J")]
    public void A_value_with_a_control_character_is_refused(string value) => KitText.Of("kit: K\n").Set("kit", value).Refusal!.Kind.Should().Be(KitEditRefusalKind.UnwritableCharacter);

    [Fact]
    public void Half_a_character_is_refused() => new[] { "a\ud83e", "\udd8b" }.Should().AllSatisfy(half => KitText.Of("kit: K\n").Set("kit", half).Refusal!.Kind.Should().Be(KitEditRefusalKind.UnwritableCharacter));

    [Theory]
    [InlineData("")]
    [InlineData("  ")]
    public void Nothing_is_no_value(string value) => KitText.Of("kit: K\n").Set("kit", value).Refusal!.Kind.Should().Be(KitEditRefusalKind.NoValue);

    [Fact]
    public void An_anchor_elsewhere_stays() => KitText.Of("kit: &a K\nsite:\n  name: x\ndescription: *a\n").Set("site.name", "z").After.Text.Should().Be("kit: &a K\nsite:\n  name: z\ndescription: *a\n");

    [Fact]
    public void An_entry_comes_in_its_siblings_style()
    {
        Fen.Insert("flashes", 2, KitValue.SectionOf(("name", "rush"), ("guide-number", "20 m"))).After.Text.Should().Be(Replaced(Fen.Text, "    mass: 340 g\n", "    mass: 340 g\n\n  - name: rush\n    guide-number: 20 m\n"));
        Fen.Insert("lenses", 1, KitValue.SectionOf(("name", "rush"), ("focal-length", "90 mm"))).After.Text.Should().Be(Replaced(Fen.Text, "  # Long reach", "  - name: rush\n    focal-length: 90 mm\n\n  # Long reach"));
        Fen.Insert("lenses", 0, KitValue.SectionOf(("name", "rush"), ("focal-length", "90 mm"))).After.Text.Should().Be(Replaced(Fen.Text, "  # The workhorse", "  - name: rush\n    focal-length: 90 mm\n\n  # The workhorse"));
        Fen.Insert("pack.people", 1, KitValue.SectionOf(("name", "Cy"), ("body-mass", "70 kg"))).After.Text.Should().Be(Replaced(Fen.Text, "    - {name: Bo,", "    - {name: Cy, body-mass: 70 kg}\n    - {name: Bo,"));
        Fen.Insert("set-ups[0].camera-pitch", 3, KitValue.Of("0°")).After.Text.Should().Be(Replaced(Fen.Text, "[30°, 60°, 90°]", "[30°, 60°, 90°, 0°]"));
        Fen.Insert("set-ups[0].camera-pitch", 1, KitValue.Of("0°")).After.Text.Should().Be(Replaced(Fen.Text, "[30°, 60°, 90°]", "[30°, 0°, 60°, 90°]"));
        Fen.Insert("set-ups[1].camera-pitch", 1, KitValue.Of("10°")).After.Text.Should().Be(Replaced(Fen.Text, "camera-pitch: 20°", "camera-pitch: [20°, 10°]"));
        Fen.Insert("set-ups[0].lenses", 0, KitValue.Of("reed 55")).After.Text.Should().Be(Replaced(Fen.Text, "    kind: white-background\n", "    kind: white-background\n    lenses: [\"reed 55\"]\n".Replace("\"", "", StringComparison.Ordinal)));
        KitText.Of("flashes: []  # none yet\n").Insert("flashes", 0, KitValue.SectionOf(("name", "rush"))).After.Text.Should().Be("flashes:  # none yet\n  - name: rush\n");
    }

    [Fact]
    public void What_is_taken_away_leaves_its_comments_unless_they_are_to_go()
    {
        Fen.Remove("camera.mass").After.Text.Should().Be(Replaced(Fen.Text, "  mass: 740 g\n", ""));
        Fen.Remove("lenses[0].pupil-ratio").After.Text.Should().Be(Replaced(Fen.Text, "    pupil-ratio: 1                     # the opening", "    # the opening"));
        Fen.Remove("lenses[0].pupil-ratio", withComments: true).After.Text.Should().Be(Replaced(Fen.Text, "    pupil-ratio: 1                     # the opening looks as wide from behind as from in front\n", ""));
        Fen.Remove("flashes[0].name").After.Text.Should().Be(Replaced(Fen.Text, "  - name: sedge                        # lies under the panel\n", "  - # lies under the panel\n"));
        Fen.Remove("flashes[0].name", withComments: true).After.Text.Should().Be(Replaced(Fen.Text, "  - name: sedge                        # lies under the panel\n    guide", "  - guide"));
        Fen.Remove("subjects[0].name").After.Text.Should().Be(Replaced(Fen.Text, "  - name: hawk-moth\n    group", "  - group"));
        Fen.Remove("pack.people[0]").After.Text.Should().Be(Replaced(Fen.Text, "    - {name: Ada, body-mass: 68 kg}\n", ""));
        Fen.Remove("pack.items[0].count").After.Text.Should().Be(Replaced(Fen.Text, "mass: 1 kg, count: 2,", "mass: 1 kg,"));
        Fen.Remove("pack.people").After.Text.Should().Be(Replaced(Fen.Text, "  people:\n    - {name: Ada, body-mass: 68 kg}\n    - {name: Bo, body-mass: 75 kg}\n", ""));
        Fen.Remove("accessories.filters[0]").After.Text.Should().Be(Replaced(Fen.Text, "  filters:\n    - {name: polariser, kind: polariser, loss: 1.5 stops, mass: 35 g}\n", "  filters: []\n"));
        Fen.Remove("flashes[1]").After.Text.Should().Contain("    mass: 300 g\n\n  # above, or as key and fill\n    # cards name the compensation beside the power\n\nmodifiers:");
        Fen.Remove("site").After.Text.Should().Contain("# twelve animals a day\n\nstock:");
        KitText.Of("kit: K\n\nsite:\n  wind: 1 m/s").Remove("site").After.Text.Should().Be("kit: K");
        KitText.Of("kit: K\n\nsite:\n  wind: 1 m/s\n").Remove("site").After.Text.Should().Be("kit: K\n");
        KitText.Of("site:  # here\n  wind: 1 m/s  # strong\n").Remove("site.wind").After.Text.Should().Be("site: {}  # here\n  # strong\n");
    }

    [Fact]
    public void An_entry_moves_with_what_is_said_of_it()
    {
        var moved = Fen.Move("lenses[1]", 0).After.Text;

        moved.Should().Contain("lenses:\n  # Long reach for shy animals; its focal length shortens close up.\n  - name: alder 180\n").And.Contain("    mass: 1090 g\n\n  # The workhorse").And.Contain("    mass: 290 g\n\naccessories:");
        moved.Split('\n').Order(StringComparer.Ordinal).Should().Equal(Fen.Text.Split('\n').Order(StringComparer.Ordinal));
        Fen.Move("set-ups[0].camera-pitch[0]", 2).After.Text.Should().Be(Replaced(Fen.Text, "[30°, 60°, 90°]", "[60°, 90°, 30°]"));
        KitText.Of("subjects:\n  - name: a\n  - name: b").Move("subjects[1]", 0).After.Text.Should().Be("subjects:\n  - name: b\n  - name: a");
    }

    [Fact]
    public void A_list_or_section_becomes_another_value_by_value()
    {
        Fen.Set("lenses[0].magnifications", KitValue.ListOf("1:4", "1:3")).After.Text.Should().Be(Replaced(Fen.Text, "[1:4, 1:2, 1:1]   # 1:1 needs", "[1:4, 1:3]   # 1:1 needs"));
        Fen.Set("frame.pegs", KitValue.SectionOf(("count", "6"), ("hold", "3 kg"))).After.Text.Should().Be(Replaced(Fen.Text, "{count: 4, hold: 3 kg, guys: yes}", "{count: 6, hold: 3 kg}"));
        Fen.Set("frame.pegs", KitValue.Of("x")).After.Text.Should().Be(Replaced(Fen.Text, "{count: 4, hold: 3 kg, guys: yes} ", "x "));
        Fen.Set("lenses[0].magnifications", KitValue.Of("1:1")).After.Text.Should().Be(Replaced(Fen.Text, "[1:4, 1:2, 1:1]   # 1:1 needs", "1:1   # 1:1 needs"));
        Fen.Set("panel", KitValue.Of("opal-acrylic-3")).After.Text.Should().Contain("panel: opal-acrylic-3\n  # measure yours").And.Contain("  # thin white cloth on three sides\n\nframe:");
    }

    [Fact]
    public void A_written_value_tells_where_it_stands()
    {
        Slice("flashes[1].zooms").Should().Be("[\"28 m @ ISO 100, 24 mm\", \"50 m @ ISO 100, 85 mm\"]");
        Slice("frame.pegs").Should().Be("{count: 4, hold: 3 kg, guys: yes}");
        Slice("panel.transmittance").Should().Be("0.5 ± 0.05");
        Slice("stock.lengths").Should().Be("- {length: 2 m, price: 3.20}\n    - {length: 3 m, price: 4.40}");
        Fen.Find("camera.name").Should().Be(new WrittenValue("camera.name", Fen.Text.IndexOf("body A", StringComparison.Ordinal), 6, 8, 9, KitValue.Of("body A")));
        Fen.Find("camera.clip-point").Should().BeNull();
        KitText.Of("kit: [").Find("kit").Should().BeNull();
    }

    [Fact]
    public void A_value_that_is_there_already_changes_nothing()
    {
        var result = Fen.Set("camera.mass", " 740 g ");

        (result.IsDone, result.Edit.IsNone, result.After.Text).Should().Be((true, true, Fen.Text));
    }

    [Fact]
    public void The_hash_is_the_SHA_256_of_the_bytes() =>
        // FIPS 180-4's example: SHA-256 of "abc".
        KitText.Of("abc").Hash.Should().Be("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");

    private static string Slice(string path) => Fen.Find(path) is { } found ? Fen.Text.Substring(found.Start, found.Length) : "";

    private static KitSpec Kit(string path, string value) => Read(Fen.Set(path, value).After);

    private static KitSpec Read(KitText text) => KitReader.Parse(text.Text, "kit.yaml", PartsLibrary.Embedded).Kit!;

    private static string Replaced(string text, string before, string after)
    {
        var at = text.IndexOf(before, StringComparison.Ordinal);
        at.Should().BeGreaterThanOrEqualTo(0);
        text.IndexOf(before, at + 1, StringComparison.Ordinal).Should().Be(-1);
        return text.Replace(before, after, StringComparison.Ordinal);
    }
}
