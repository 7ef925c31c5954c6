using StudioKit.Kits.Completing;
using StudioKit.Kits.Forms;

namespace StudioKit.Kits.Tests;

/// <summary>Photometric files beside a kit, which say how a flash or what is before it spreads its light.</summary>
public sealed class LightDistributionTests
{
    // An invented head: half of its light at 30° across and at 20° along.
    private const string Head = "IESNA:LM-63-2002\n[TEST] invented\nTILT=NONE\n1 -1 1 4 2 1 2 0.07 0.04 0\n1 1 50\n0 20 30 90\n0 90\n400 300 200 0\n400 200 100 0\n";

    [Theory]
    [InlineData("sedge.ies")]
    [InlineData("sedge")]
    public void A_flash_names_its_file_with_the_ending_or_without(string named)
    {
        var beam = Read($"light-distribution: {named}", "kind: dome").Kit!.Flashes[0].LightDistribution!;

        beam.FileName.Should().Be("sedge.ies");
        beam.IsAbsolute.Should().BeTrue();
        (Math.Round(beam.BeamWidth.Degrees, 9), Math.Round(beam.BeamHeight.Degrees, 9)).Should().Be((60, 40));
    }

    [Fact]
    public void What_is_before_a_flash_may_have_a_file_of_its_own() =>
        Read("zoom: 35 mm", "kind: softbox, light-distribution: sedge.ies").Kit!.Modifiers[0].LightDistribution!.Name.Should().Be("sedge");

    [Fact]
    public void A_fault_of_the_file_is_told_with_its_own_line_and_column()
    {
        var fault = Read("light-distribution: sedge.ies", "kind: dome", Head.Replace("300 200", "300 oops", StringComparison.Ordinal)).Diagnostics.Should().ContainSingle().Which;

        (fault.Code, fault.File, fault.Line, fault.Column).Should().Be((DiagnosticCodes.Photometry, "parts/light-distributions/sedge.ies", 8, 9));
        fault.SourceLine.Should().Be("400 300 oops 0");
        fault.Message.Should().Contain("'oops' is not a number");
    }

    [Fact]
    public void A_file_that_serves_twice_tells_its_fault_once() =>
        Read("light-distribution: sedge", "kind: dome, light-distribution: sedge.ies", "no photometry").Diagnostics.Should().ContainSingle().Which.Code.Should().Be(DiagnosticCodes.Photometry);

    [Fact]
    public void A_file_that_is_nowhere_is_missed_by_its_place()
    {
        var read = Read("light-distribution: sege", "kind: dome");

        var fault = read.Diagnostics.Should().ContainSingle().Which;
        (fault.Code, fault.Hint).Should().Be((DiagnosticCodes.MissingPart, "Did you mean 'sedge'?"));
        read.MissingParts.Should().Equal("light-distributions/sege");
        KitReader.Parse(Text("light-distribution: sedge", "kind: dome"), "kit.yaml", PartsLibrary.Embedded).Diagnostics[0].Hint.Should().Contain("parts/light-distributions/sedge.ies");
    }

    [Theory]
    [InlineData("../sedge.ies")]
    [InlineData("'parts/sedge'")]
    [InlineData(".ies")]
    public void A_name_that_leads_elsewhere_is_refused(string named) =>
        Read($"light-distribution: {named}", "kind: dome").Diagnostics.Should().ContainSingle().Which.Code.Should().Be(DiagnosticCodes.PartName);

    [Theory]
    [InlineData("light-distribution: sedge, beam-width: 60°", "kind: dome", "beam-width")]
    [InlineData("light-distribution: sedge, beam-width: 60°, beam-height: 40°", "kind: dome", "beam-height")]
    [InlineData("zoom: 35 mm", "kind: dome, light-distribution: sedge, lobe-exponent: 2", "lobe-exponent")]
    [InlineData("zoom: 35 mm", "kind: dome, light-distribution: sedge, half-ball: yes", "half-ball")]
    public void What_the_file_has_already_changes_nothing_beside_it(string flash, string modifier, string key)
    {
        var read = Read(flash, modifier);

        read.Diagnostics.Should().AllSatisfy(fault => fault.Code.Should().Be(DiagnosticCodes.WithoutEffect)).And.Contain(fault => fault.Message.Contains($"'{key}'", StringComparison.Ordinal));
    }

    [Fact]
    public void Beside_a_file_no_exponent_stands_in() =>
        Read("zoom: 35 mm", "kind: dome, light-distribution: sedge").Defaults.Should().NotContain(used => used.Path.EndsWith("lobe-exponent", StringComparison.Ordinal) || used.Path.EndsWith("half-ball", StringComparison.Ordinal));

    [Fact]
    public void Another_file_of_the_same_name_makes_another_kit() => Read("light-distribution: sedge", "kind: dome").ContentHash
        .Should().NotBe(Read("light-distribution: sedge", "kind: dome", Head.Replace("300", "310", StringComparison.Ordinal)).ContentHash);

    [Fact]
    public void The_same_file_read_twice_makes_an_equal_kit() => Read("light-distribution: sedge", "kind: dome").Kit.Should().Be(Read("light-distribution: sedge", "kind: dome").Kit);

    [Fact]
    public void Files_beside_a_kit_are_offered_where_one_may_be_named()
    {
        const string Text = "flashes:\n  - name: one\n    light-distribution: ";

        KitCompletion.At(Text, Text.Length, Library(Head)).Should().ContainSingle(one => one.Kind == KitCandidateKind.Part).Which.Label.Should().Be("sedge");
        PartsCatalogue.Of(Library(Head), PartsLibrary.LightDistributions).Should().ContainSingle().Which.Figures.Select(figure => figure.Value).Should().Equal("60°", "40°");
    }

    [Fact]
    public void A_form_takes_the_name_of_a_file() => KitForm.Of(Kits.Editing.KitText.Of(Text("light-distribution: sedge.ies", "kind: dome")), Library(Head))
        .Find("flashes[0].light-distribution")!.InEffect.Should().Be("sedge.ies");

    [Fact]
    public void A_kit_on_disk_finds_its_file_beside_it()
    {
        var folder = Directory.CreateTempSubdirectory();
        try
        {
            var kit = Path.Combine(folder.FullName, "kit.yaml");
            Directory.CreateDirectory(Path.Combine(folder.FullName, "parts", "light-distributions"));
            File.WriteAllText(Path.Combine(folder.FullName, "parts", "light-distributions", "sedge.ies"), Head.ReplaceLineEndings("\r\n"));
            File.WriteAllText(kit, Text("light-distribution: sedge.ies", "kind: dome"));

            KitReader.Read(kit).Kit!.Flashes[0].LightDistribution.Should().NotBeNull();
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static KitReadResult Read(string flash, string modifier, string head = Head) => KitReader.Parse(Text(flash, modifier), "kit.yaml", Library(head));

    private static PartsLibrary Library(string head) => PartsLibrary.FromTexts(new Dictionary<string, string> { ["light-distributions/sedge"] = head });

    private static string Text(string flash, string modifier) =>
        "kit: Any\ncamera: {name: body, sensor: 36 mm x 24 mm}\nlenses: [{name: reed, focal-length: 55 mm}]\n"
        + $"flashes: [{{name: one, guide-number: \"30 m @ ISO 100\", {flash}}}]\nmodifiers: [{{name: two, {modifier}}}]\n";
}
