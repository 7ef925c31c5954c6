using StudioKit.Kits.Cards;

namespace StudioKit.Kits.Tests;

/// <summary>Whatever a file holds, reading it ends soon and with a kit or with diagnostics, never with an exception.</summary>
public sealed class HostileKitTests
{
    // The design's figure for a hostile file; all that is ever allocated, so more than is held at once [bytes].
    private const long MostMemory = 50_000_000;

    // Codes that speak of the shape of a file, which the schema knows as well as the reader.
    private static readonly string[] OfShape = [DiagnosticCodes.UnknownKey, DiagnosticCodes.MissingKey, DiagnosticCodes.WrongShape];

    private static readonly Gen<string> Documents = Gen.OneOf(
        [SchemaDocuments.Any, .. new[] { "fen-edge.yaml", "heath-ultralight.yaml", "tall-stand.yaml" }
            .Select(file => File.ReadAllText(Path.Combine(KitFolder.Path, file)))
            .SelectMany(text => new[] { HostileText.Thinned(text), HostileText.Shuffled(text) })]);

    [Theory]
    [InlineData("fen-edge.yaml")]
    [InlineData("heath-ultralight.yaml")]
    [InlineData("pond-edge.yaml")]
    [InlineData("tall-stand.yaml")]
    public void A_damaged_kit_is_read_or_diagnosed(string file) => HostileText.Of(File.ReadAllText(Path.Combine(KitFolder.Path, file)))
        .Sample(text =>
        {
            var before = GC.GetAllocatedBytesForCurrentThread();
            IsReadOrDiagnosed(KitReader.Parse(text, "kit.yaml", PartsLibrary.Embedded));
            (GC.GetAllocatedBytesForCurrentThread() - before).Should().BeLessThan(MostMemory, "a hostile file costs no more than that in all");
        }, iter: RandomFiles.Runs, threads: 1);

    [Fact]
    public void A_kit_with_values_in_the_wrong_places_is_read_or_diagnosed() => HostileText.Shuffled(StarterBlocks.AllInUse)
        .Sample(text => IsReadOrDiagnosed(KitReader.Parse(text, "kit.yaml", PartsLibrary.Embedded)), iter: RandomFiles.Runs, threads: 1);

    [Fact]
    public void Random_bytes_are_diagnosed() => Gen.Byte.Array[0, 5000]
        .Sample(bytes => IsReadOrDiagnosed(KitReader.Read(new MemoryStream(bytes), "kit.yaml")), iter: RandomFiles.Runs, threads: 1);

    [Fact]
    public void Random_text_of_the_characters_that_yaml_lives_on_is_diagnosed() => Gen.Char["{}[]:,-?&*!|>'\"%@` \n\tab01.#"].Array[0, 2000]
        .Sample(letters => IsReadOrDiagnosed(KitReader.Parse(new string(letters), "kit.yaml", PartsLibrary.Embedded)), iter: RandomFiles.Runs, threads: 1);

    [Fact]
    public void A_damaged_card_template_is_read_or_diagnosed() => HostileText.Of(CardTemplates.Text("A6")).Sample(text =>
    {
        var read = CardTemplateReader.Parse(text, "card.yaml");
        (read.Template is null).Should().Be(read.Diagnostics.Any(fault => fault.Severity == DiagnosticSeverity.Error));
    }, iter: RandomFiles.Runs, threads: 1);

    [Fact]
    public void What_the_reader_takes_an_editor_takes_and_what_an_editor_takes_has_the_right_shape_for_the_reader() => Documents.Sample(text =>
    {
        var read = KitReader.Parse(text, "kit.yaml", PartsLibrary.Embedded);
        IsReadOrDiagnosed(read);
        var marked = KitSchemaTests.Faults(text);
        if (!read.HasErrors)
        {
            marked.Should().BeEmpty(text);
        }
        else if (marked.Count == 0)
        {
            read.Diagnostics.Where(fault => OfShape.Contains(fault.Code)).Should().BeEmpty(text);
        }
    }, iter: RandomFiles.Runs, threads: 1);

    [Theory]
    [InlineData("cameras", "camera: PART")]
    [InlineData("cameras", "camera: {part: PART}")]
    [InlineData("cells", "camera: sensor-36x24\nflashes:\n  - {name: low, guide-number: 30 m, cell: PART}")]
    [InlineData("pipes", "camera: sensor-36x24\nframe: {pipe: PART}")]
    [InlineData("fittings", "camera: sensor-36x24\nframe: {fittings: PART}")]
    [InlineData("sheets", "camera: sensor-36x24\npanel: PART")]
    public void A_part_of_the_library_stands_for_a_whole_section_to_the_reader_and_to_an_editor(string kind, string pattern)
    {
        PartsLibrary.Embedded.Names(kind).Should().NotBeEmpty();
        foreach (var part in PartsLibrary.Embedded.Names(kind))
        {
            var text = $"kit: Small\nlenses:\n  - {{name: reed, focal-length: 55 mm}}\n{pattern.Replace("PART", part, StringComparison.Ordinal)}\n";

            KitReader.Parse(text, "kit.yaml", PartsLibrary.Embedded).Diagnostics.Should().BeEmpty(text);
            KitSchemaTests.Faults(text).Should().BeEmpty(text);
        }
    }

    private static void IsReadOrDiagnosed(KitReadResult read) =>
        read.HasErrors.Should().Be(read.Diagnostics.Any(fault => fault.Severity == DiagnosticSeverity.Error));
}
