namespace StudioKit.Kits.Tests;

/// <summary>What is put up against sun and wind.</summary>
public sealed class ShelterKeysTests
{
    private const string Text = """
        kit: Moths
        camera: {name: body, sensor: 36 mm x 24 mm}
        lenses: [{name: reed, focal-length: 55 mm}]

        """;

    [Fact]
    public void What_stands_in_for_keys_that_are_left_out_is_told()
    {
        var read = Read("shelters: [{name: brolly, kind: umbrella, size: 1.1 m x 1.1 m}, {name: cloth, kind: shade-cloth, size: 2 m x 1 m}, {name: screen, kind: wind-break, size: 3 m x 1.2 m}]\n");

        read.Defaults.Where(used => used.Path.StartsWith("shelters", StringComparison.Ordinal)).Select(used => $"{used.Path}: {used.Value}").Should().BeEquivalentTo(
        [
            "shelters[0].transmittance: 0.1", "shelters[0].distance: 800 mm", "shelters[0].held: no", "shelters[0].highest-wind: 5.4 m/s",
            "shelters[1].transmittance: 0.5", "shelters[1].distance: 800 mm", "shelters[1].held: no", "shelters[1].highest-wind: 5.4 m/s",
            "shelters[2].porosity: 0.35", "shelters[2].distance: 1.5 m", "shelters[2].held: no", "shelters[2].highest-wind: 10.7 m/s",
        ]);
    }

    [Theory]
    [InlineData("shelters: [{name: brolly, kind: umbrella}]", "size")]
    [InlineData("shelters: [{kind: umbrella, size: 1 m x 1 m}]", "name")]
    [InlineData("shelters: [{name: brolly, kind: parasol, size: 1 m x 1 m}]", "umbrella")]
    [InlineData("shelters: [{name: brolly, kind: umbrella, size: 1 m x 2 m}]", "not round")]
    [InlineData("shelters: [{name: brolly, kind: umbrella, size: 1.1 m}]", "1.1 m")]
    [InlineData("shelters: [{name: brolly, kind: umbrella, size: 1 m x 1 m, porosity: 10 %}]", "stops no wind")]
    [InlineData("shelters: [{name: screen, kind: wind-break, size: 3 m x 1 m, transmittance: 10 %}]", "beside the subject")]
    [InlineData("shelters: [{name: screen, kind: wind-break, size: 3 m x 1 m, porosity: 2}]", "porosity")]
    [InlineData("shelters: [{name: brolly, kind: umbrella, size: 1 m x 1 m, transmittance: 2}]", "transmittance")]
    [InlineData("shelters: [{name: brolly, kind: umbrella, size: 1 m x 1 m, distance: 80}]", "length")]
    [InlineData("shelters: [{name: brolly, kind: umbrella, size: 1 m x 1 m, highest-wind: 4}]", "a speed needs one")]
    [InlineData("shelters: [{name: brolly, kind: umbrella, size: 1 m x 1 m, held: perhaps}]", "neither yes nor no")]
    [InlineData("shelters: [{name: brolly, kind: umbrella, size: 1 m x 1 m}, {name: brolly, kind: umbrella, size: 2 m x 2 m}]", "brolly")]
    [InlineData("set-ups: [{name: dusk, kind: low-light-fill, shelters: [brolly], lights: []}]", "brolly")]
    [InlineData("set-ups: [{name: dusk, kind: daylight-fill, sun-share: 80 %, lights: []}]", "nothing is put up")]
    public void What_cannot_be_is_refused_in_its_line(string text, string says)
    {
        var read = Read(text + "\n");

        read.Kit.Should().BeNull();
        read.Diagnostics.Should().Contain(found => found.Severity == DiagnosticSeverity.Error && found.Line == 5 && (found.Message + found.Hint).Contains(says, StringComparison.Ordinal));
    }

    private static KitReadResult Read(string more) => KitReader.Parse(Text + "\n" + more, "moths.yaml", PartsLibrary.Embedded);
}
