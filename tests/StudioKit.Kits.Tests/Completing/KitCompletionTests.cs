using StudioKit.Kits.Completing;
using StudioKit.Kits.Editing;
using StudioKit.Kits.Forms;

namespace StudioKit.Kits.Tests.Completing;

/// <summary>What could stand where somebody types, marked by ‸, against what the kit's description and the text itself say in plain sight.</summary>
public sealed class KitCompletionTests
{
    private const char Caret = '‸';
    private static readonly string[] Sound = [.. Directory.GetFiles(KitFolder.Path, "*.yaml").Order(StringComparer.Ordinal).Select(File.ReadAllText), StarterKit.Text, StarterBlocks.AllInUse];

    public static TheoryData<string> Kits => [.. Directory.GetFiles(KitFolder.Path, "*.yaml").Select(file => Path.GetFileName(file))];

    [Theory]
    [InlineData("kit: K\n‸", "camera", "camera:\n  ")]
    [InlineData("‸", "kit", "kit: ")]
    [InlineData("kit: K\nlen‸", "lenses", "lenses:\n  - ")]
    [InlineData("panel:\n  wid‸", "width", "width: ")]
    [InlineData("panel:\n  ‸", "width", "width: ")]
    [InlineData("panel:\n    width: 1 m\n  ‸", "depth", "    depth: ")]
    [InlineData("panel:\n  width: 1 m\n    ‸", "depth", "  depth: ")]
    [InlineData("panel:\n  width: 1 m\n  ‸\nframe:\n  height: 1 m\n", "depth", "depth: ")]
    [InlineData("panel:\n  ‸\n  width: 1 m\n", "depth", "depth: ")]
    [InlineData("panel:\n  w‸: 1 m\n", "width", "width")]
    [InlineData("lenses:\n  - ‸", "name", "name: ")]
    [InlineData("lenses:\n  -‸", "name", " name: ")]
    [InlineData("lenses:\n  ‸", "name", "  - name: ")]
    [InlineData("lenses:\n  - name: a\n    ‸", "focal-length", "focal-length: ")]
    [InlineData("lenses:\n  - name: a\n  ‸", "name", "  - name: ")]
    [InlineData("lenses:\n- name: a\n  ‸", "focal-length", "focal-length: ")]
    [InlineData("set-ups:\n  - name: a\n    lights:\n      - {flash: x, ‸", "role", "role: ")]
    [InlineData("set-ups:\n  - name: a\n    lights:\n      - {fl‸", "flash", "flash: ")]
    [InlineData("set-ups:\n  - name: a\n    lights:\n      - {‸}\n", "flash", "flash: ")]
    [InlineData("set-ups:\n  - name: a\n    lights:\n      - {flash: x,\n         ‸}\n", "role", "role: ")]
    [InlineData("frame: {pegs: {‸", "count", "count: ")]
    [InlineData("pack:\n  items:\n    - name: x\n      si‸ze: 1\n", "size", "size")]
    [InlineData("site:\r\n  ‸", "wind", "wind: ")]
    [InlineData("panel: {part: [\nsite:\n  ‸", "wind", "wind: ")]
    [InlineData("panel: \"x\nsite:\n  ‸", "wind", "wind: ")]
    [InlineData("panel:\n\t‸", "width", "width: ")]
    public void Keys_come_that_are_allowed_there(string marked, string key, string written) => Only(marked, key, KitCandidateKind.Key).Edit.NewText.Should().Be(written);

    [Theory]
    [InlineData("set-ups:\n  - kind: ‸", "white-background", "white-background")]
    [InlineData("set-ups:\n  - kind:‸", "white-background", " white-background")]
    [InlineData("set-ups:\n  - kind: whi‸te\n", "white-background", "white-background")]
    [InlineData("set-ups:\n  - {name: a, kind: d‸, iso: 100}\n", "daylight-fill", "daylight-fill")]
    [InlineData("panel:\n  skirts: ‸", "true", "true")]
    [InlineData("panel:\n  harmed-by: [alcohol, ‸", "solvents", "solvents")]
    [InlineData("panel:\n  harmed-by:\n    - alc‸", "alcohol", "alcohol")]
    [InlineData("set-ups:\n  - aperture: b‸", "best", "best")]
    [InlineData("set-ups:\n  - kind: \"whi‸\"\n", "white-background", "white-background")]
    public void Words_come_that_a_key_allows(string marked, string word, string written) => Only(marked, word, KitCandidateKind.Word).Edit.NewText.Should().Be(written);

    [Theory]
    [InlineData("flashes:\n  - name: sedge\n  - {name: 'the willow', mass: 1 g}\nset-ups:\n  - lights:\n      - {flash: ‸", "the willow")]
    [InlineData("set-ups:\n  - lights:\n      - flash: s‸\nflashes:\n  - name: sedge # below\n", "sedge")]
    [InlineData("subjects:\n  - {name: moth}\nset-ups:\n  - subjects: [‸]\n", "moth")]
    [InlineData("set-ups:\n  - lenses:\n      - ‸\nlenses:\n  - name: reed\n", "reed")]
    public void Names_come_that_the_kit_bears(string marked, string name) => Only(marked, name, KitCandidateKind.Name).Edit.NewText.Should().Be(name);

    [Theory]
    [InlineData("frame:\n  pipe: pvc‸\n", "pvc-u-25x1.25")]
    [InlineData("frame:\n  pipe: {part: ‸}\n", "pvc-u-25x1.25")]
    [InlineData("flashes:\n  - cell: ‸", "aa-nimh-2000")]
    [InlineData("panel:\n  part: op‸", "opal-acrylic-3")]
    [InlineData("camera: ‸", "sensor-36x24")]
    public void Parts_come_with_their_figures(string marked, string name)
    {
        var part = PartsCatalogue.Of(PartsLibrary.Embedded).Single(part => part.Name == name);

        Only(marked, name, KitCandidateKind.Part).Help.Should().StartWith($"{part.Title}: {part.Figures[0].Key} {part.Figures[0].Value}");
    }

    [Theory]
    [InlineData("panel:\n  width: 60‸", "cm", "panel:\n  width: 60 cm")]
    [InlineData("panel:\n  width: 60 c‸ # about\n", "cm", "panel:\n  width: 60 cm # about\n")]
    [InlineData("panel:\n  width: 60 m‸m\n", "mm", "panel:\n  width: 60 mm\n")]
    [InlineData("site: {slope: 4‸}\n", "°", "site: {slope: 4°}\n")]
    [InlineData("camera:\n  sensor: 36 ‸ x 24 mm\n", "mm", "camera:\n  sensor: 36 mm x 24 mm\n")]
    [InlineData("camera:\n  sensor: 36 mm x 24‸\n", "mm", "camera:\n  sensor: 36 mm x 24 mm\n")]
    [InlineData("pack:\n  target-mass: 9‸\n", "kg", "pack:\n  target-mass: 9 kg\n")]
    public void Units_come_behind_a_number(string marked, string unit, string after) => Only(marked, unit, KitCandidateKind.Unit).Edit.ApplyTo(Text(marked)).Should().Be(after);

    [Theory]
    [InlineData("panel:\n  thickness: ‸", "3 mm", KitCandidateKind.Default)]
    [InlineData("panel:\n  width: ‸", "305 mm", KitCandidateKind.Example)]
    public void A_value_can_be_begun_from_what_is_usual(string marked, string value, KitCandidateKind kind) => Only(marked, value, kind).Edit.NewText.Should().Be(value);

    [Theory]
    [InlineData("kit: K\n# len‸")]
    [InlineData("kit: K # len‸")]
    [InlineData("description: >\n  wid‸\n")]
    [InlineData("nonsense:\n  wid‸\n")]
    [InlineData("nonsense: ‸\n")]
    [InlineData("panel: {width: 1 m, # ‸\n")]
    [InlineData("  ‸  kit: K\n")]
    public void Nothing_comes_where_nothing_of_a_kit_can_stand(string marked) => At(marked).Should().BeEmpty();

    [Fact]
    public void Keys_that_are_there_do_not_come_again()
    {
        At("panel:\n  width: 1 m\n  ‸\n  depth: 1 m\nframe:\n  height: 1 m\n").Select(one => one.Label).Should().NotContain(["width", "depth"]).And.Contain(["part", "thickness"]);
        At("frame:\n  pegs: {hold: 3 kg, ‸, guys: yes}\n").Select(one => one.Label).Should().Equal("count");
        At("lenses:\n  - name: a\n    ‸\n  - name: b\n    mass: 1 g\n").Select(one => one.Label).Should().NotContain("name").And.Contain("mass");
    }

    /// <summary>On every place of the demo kits where a key or a word of a choice is written, that word is among the candidates, typed in full, in half or not yet.</summary>
    [Theory]
    [MemberData(nameof(Kits))]
    public void Whatever_a_sound_kit_has_is_among_the_candidates(string file)
    {
        var text = KitText.Of(File.ReadAllText(Path.Combine(KitFolder.Path, file)));
        var fields = KitForm.Of(text, PartsLibrary.Embedded).All().Where(field => field.Written is not null).ToArray();

        fields.Should().HaveCountGreaterThan(60);
        foreach (var field in fields)
        {
            var (start, end) = Key(text.Text, field);
            Labels(text.Text, start).Should().Contain(field.Field.Key, field.Path);
            Labels(text.Text, (start + end) / 2).Should().Contain(field.Field.Key, field.Path);
            KitCompletion.At(text.Text, end).First(one => one.Label == field.Field.Key).Edit.ApplyTo(text.Text).Should().Be(text.Text, field.Path);
            if (field.Field.Kind is FieldKind.Choice or FieldKind.YesNo or FieldKind.Part or FieldKind.Name && field.Written!.Value is KitValue.Scalar word)
            {
                Labels(text.Text, field.Written.Start).Should().Contain(word.Text, field.Path);
                KitCompletion.At(text.Text, field.Written.Start + 1).First(one => one.Label == word.Text).Edit.ApplyTo(text.Text).Should().Be(text.Text, field.Path);
            }
        }
    }

    /// <summary>A candidate for a key, written where the key would stand, gives a text that knows that key there.</summary>
    [Theory]
    [MemberData(nameof(Kits))]
    public void A_key_that_is_taken_up_is_a_key_of_its_section(string file)
    {
        var text = File.ReadAllText(Path.Combine(KitFolder.Path, file));
        foreach (var line in Enumerable.Range(0, text.Length).Where(at => text[at] == '\n').Select(at => at + 1))
        {
            var blank = text.Insert(line, "      \n");
            foreach (var candidate in KitCompletion.At(blank, line + 6).Where(one => one.Kind == KitCandidateKind.Key && one.Edit.NewText.EndsWith(' ')).Take(1))
            {
                var after = new TextEdit(0, 0, "").ApplyTo(candidate.Edit.ApplyTo(blank).Insert(candidate.Edit.Start + candidate.Edit.NewText.Length, "x"));
                KitReader.Parse(after, "kit.yaml", PartsLibrary.Embedded).Diagnostics.Select(fault => fault.Code).Should().NotContain([DiagnosticCodes.Syntax, DiagnosticCodes.UnknownKey, DiagnosticCodes.DuplicateKey], $"{candidate} in\n{after}");
            }
        }
    }

    [Theory]
    [MemberData(nameof(Kits))]
    public void Every_place_of_a_kit_has_an_answer_that_fits_the_text(string file)
    {
        var text = File.ReadAllText(Path.Combine(KitFolder.Path, file));

        Enumerable.Range(-1, text.Length + 3).Should().AllSatisfy(at => Fits(text, at).Should().BeTrue());
    }

    [Fact]
    public void Every_place_of_a_spoilt_text_has_the_same_answer_each_time() =>
        Gen.Select(Gen.Int[0, Sound.Length - 1].SelectMany(at => Gen.OneOf(HostileText.Of(Sound[at]), HostileText.Thinned(Sound[at]))), Gen.Double[0, 1].List[1, 8], Gen.Bool).Sample(
            (spoilt, places, isWindows) =>
            {
                var text = isWindows ? spoilt.ReplaceLineEndings("\r\n") : spoilt;
                return places.All(place => Fits(text, (int)(place * text.Length)) && KitCompletion.At(text, (int)(place * text.Length)).SequenceEqual(KitCompletion.At(text, (int)(place * text.Length))));
            },
            iter: RandomFiles.Runs);

    private static bool Fits(string text, int at) => KitCompletion.At(text, at).All(one => one.Label.Length > 0 && one.Edit.ApplyTo(text).Length > 0
        && one.Edit.Start <= Math.Clamp(at, 0, text.Length) && one.Edit.Start + one.Edit.Length >= Math.Clamp(at, 0, text.Length) && text.IndexOf('\n', one.Edit.Start, one.Edit.Length) < 0);

    private static IEnumerable<string> Labels(string text, int at) => KitCompletion.At(text, at).Select(one => one.Label);

    // The key stands before the value, with a colon between.
    private static (int Start, int End) Key(string text, FormField field)
    {
        var end = text.LastIndexOf(field.Field.Key + ":", field.Written!.Start, StringComparison.Ordinal);
        return (end, end + field.Field.Key.Length);
    }

    private static string Text(string marked) => marked.Remove(marked.IndexOf(Caret, StringComparison.Ordinal), 1);

    private static IReadOnlyList<KitCandidate> At(string marked) => KitCompletion.At(Text(marked), marked.IndexOf(Caret, StringComparison.Ordinal));

    private static KitCandidate Only(string marked, string label, KitCandidateKind kind) => At(marked).Should().ContainSingle(one => one.Label == label && one.Kind == kind).Which;
}
