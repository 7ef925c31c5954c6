using System.Text.Json;
using StudioKit.Kits;

namespace StudioKit.Cli.Tests.Commands;

public sealed class PartsAndWordsTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Parts_beside_a_kit_that_is_not_there_are_file_trouble()
    {
        var run = CommandRun.Of("parts", "--kit", "nowhere.yaml");

        run.ExitCode.Should().Be(3);
        run.Error.Should().Contain("there is no such kit");
    }

    [Fact]
    public void Every_part_of_the_library_is_listed_with_its_figures_and_their_source()
    {
        using var json = JsonDocument.Parse(CommandRun.Of("parts", "--json").Output);
        var parts = json.RootElement.GetProperty("parts").EnumerateArray().ToList();

        parts.Should().HaveCount(PartsCatalogue.Kinds.Sum(kind => PartsLibrary.Embedded.Names(kind).Count)).And.HaveCountGreaterThan(30);
        parts.Should().OnlyContain(part => part.GetProperty("source").GetString()!.Length > 5 && part.GetProperty("figures").GetArrayLength() > 0);
        var cell = parts.Single(part => part.GetProperty("name").GetString() == "aa-nimh-2000");
        cell.GetProperty("figures").EnumerateArray().Should().Contain(figure => figure.GetProperty("key").GetString() == "capacity" && figure.GetProperty("value").GetString() == "2000 mAh");
    }

    [Fact]
    public void Parts_are_picked_by_a_word_and_by_kind()
    {
        var run = CommandRun.Of("parts", "OPAL", "--kind", "sheets");

        run.Output.Should().Contain("opal-acrylic-3").And.NotContain("pvc-u-20");
        CommandRun.Of("parts", "--kind", "pipe").Error.Should().Contain("Did you mean 'pipes'?");
        CommandRun.Of("parts", "unobtainium").Error.Should().Contain("no part is like that");
    }

    [Fact]
    public void A_part_beside_a_kit_is_listed_with_the_others()
    {
        Directory.CreateDirectory(_folder.File("parts/cells"));
        File.WriteAllText(_folder.File("parts/cells/mine.yaml"), "source: weighed\nname: my cell\nmass: 31 g\n");

        CommandRun.Of("parts", "mine", "--kit", _folder.File("kit.yaml")).Output.Should().Contain("my cell").And.Contain("mass 31 g");
    }

    /// <remarks>Illuminance for EV 15 at ISO 100 with C = 250 (ISO 2720): E = C·2^EV/100 = 81,920 lx.</remarks>
    [Fact]
    public void The_table_of_light_values_gives_lux_by_the_standard_constant()
    {
        using var json = JsonDocument.Parse(CommandRun.Of("words", "light", "--json").Output);
        var scenes = json.RootElement.GetProperty("lightValues").EnumerateArray().ToList();

        scenes.Should().HaveCountGreaterThan(5);
        scenes.Should().AllSatisfy(scene =>
            scene.GetProperty("highestLx").GetDouble().Should().BeApproximately(2.5 * Math.Pow(2, scene.GetProperty("highestEvAtIso100").GetDouble()), 1e-3 * scene.GetProperty("highestLx").GetDouble()));
        scenes.Should().OnlyContain(scene => scene.GetProperty("source").GetString()!.Length > 5);
    }

    /// <summary>2.5 lx · 2^15 is 81,920 lx, 2.5 lx · 2^4 is 40 lx; a scene is known to about half a stop.</summary>
    [Fact]
    public void Light_values_are_printed_as_finely_as_a_scene_is_known() =>
        CommandRun.Of("words", "sun").Output.Should().MatchRegex(" 15 +82000 ").And.MatchRegex(" 4 +40 ").And.NotContain("81920");

    [Fact]
    public void Words_are_found_by_their_own_name_and_else_by_what_they_mean()
    {
        CommandRun.Of("words", "white margin").Output.Should().Contain("above").And.NotContain("kerf");
        CommandRun.Of("words", "sawdust").Error.Should().Contain("nothing here says 'sawdust'");
        CommandRun.Of("words").Output.Should().Contain("kerf").And.Contain("Light values");
    }
}
