using System.Text.Json;

namespace StudioKit.Cli.Tests.Commands;

public sealed class SchemaCommandTests
{
    [Fact]
    public void The_schema_is_a_json_document_that_knows_the_sections()
    {
        var run = CommandRun.Of("schema");

        run.ExitCode.Should().Be(0);
        using var schema = JsonDocument.Parse(run.Output);
        schema.RootElement.GetProperty("properties").TryGetProperty("set-ups", out _).Should().BeTrue();
    }

    [Fact]
    public void The_page_for_people_has_every_section_with_its_keys()
    {
        var run = CommandRun.Of("schema", "--as-page");

        run.ExitCode.Should().Be(0);
        run.Output.Should().StartWith("# What a kit can say").And.Contain("## set-up").And.Contain("| **`guide-number`** |");
    }
}
