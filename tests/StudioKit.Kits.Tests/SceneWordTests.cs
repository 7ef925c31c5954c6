using StudioKit.Physics.Exposure.Metering;

namespace StudioKit.Kits.Tests;

/// <summary>Light given by its place in place of a reading: the exposure guide of ANSI PH2.7 has open shade and heavy overcast at EV 12, hazy sun at EV 14.</summary>
public sealed class SceneWordTests
{
    [Theory]
    [InlineData("open shade", 12)]
    [InlineData("open-shade", 12)]
    [InlineData("Open shade on a clear day", 12)]
    [InlineData("heavy overcast", 12)]
    [InlineData("hazy sun", 14)]
    [InlineData("full sun from the side", 14)]
    public void A_place_stands_for_its_published_light(string words, double value) => Read(words).Kit!.Site.Ambient.AtIso100.Should().Be(value);

    /// <summary>Any looked-up light may be a stop off, and the scenes of one name differ by half their range: √(1² + 1²) for EV 10 to 12, 1 where there is one value.</summary>
    [Theory]
    [InlineData("open wood", 1.41421356)]
    [InlineData("open shade", 1)]
    public void It_is_less_sure_than_what_was_metered(string words, double stops)
    {
        var known = Read(words).Uncertainties["site.ambient"];

        known.Kind.Should().Be(UncertaintyKind.InStops);
        known.Amount.Should().BeApproximately(stops, 1e-8);
    }

    [Fact]
    public void What_is_written_of_its_spread_goes_before() => Read("open wood ± 0.5 stop").Uncertainties["site.ambient"].Amount.Should().Be(0.5);

    [Fact]
    public void What_was_taken_is_told_with_its_source() => Read("forest interior").Defaults.Should().ContainSingle(used => used.Path == "site.ambient")
        .Which.Should().Match<DefaultUsed>(used => used.Value == "EV 9 ± 1.4 stop, forest interior" && used.Meaning.Contains("1 to 2 % of full daylight reaches the floor"));

    [Theory]
    [InlineData("opne shade", "Did you mean 'open shade'?")]
    [InlineData("full sun", "It may be 'full sun from the side' or 'full sun from behind'.")]
    [InlineData("under a stone", "open shade")]
    public void Words_that_name_no_place_are_refused_with_the_nearest(string words, string hint)
    {
        var fault = Read(words).Diagnostics.Should().ContainSingle().Which;

        (fault.Code, fault.Line, fault.Column).Should().Be((DiagnosticCodes.UnreadableValue, 4, 17));
        fault.Hint.Should().Contain(hint);
    }

    [Fact]
    public void Every_scene_is_taken_by_its_whole_name_and_editors_accept_it() => SceneLightTable.All.Should().AllSatisfy(scene =>
    {
        Read(scene.Scene).Kit!.Site.Ambient.Should().Be(scene.Typical);
        KitSchemaTests.Faults(Text(scene.Scene)).Should().BeEmpty();
    });

    [Fact]
    public void Places_are_offered_where_light_is_written() => Kits.Completing.KitCompletion.At("site:\n  ambient: open", 21, PartsLibrary.Embedded)
        .Select(candidate => candidate.Label).Should().Equal("open shade on a clear day", "open wood");

    [Fact]
    public void Editors_mark_words_that_name_no_place() => KitSchemaTests.Faults(Text("under a stone")).Should().NotBeEmpty();

    private static KitReadResult Read(string words) => KitReader.Parse(Text(words), "kit.yaml", PartsLibrary.Embedded);

    private static string Text(string words) => $"kit: Any\ncamera: {{name: body, sensor: 36 mm x 24 mm}}\nlenses: [{{name: reed, focal-length: 55 mm}}]\nsite: {{ambient: {words}}}\n";
}
