using System.Text.Json;
using System.Text.RegularExpressions;

namespace StudioKit.Kits.Tests;

/// <summary>The page about kits says what the reader takes; the schema, which another test holds to the reader, is what it is held to.</summary>
public sealed class KitReferenceTests
{
    private static readonly string Page = Path.Combine(KitFolder.Path, "..", "docs", "kit.md");

    /// <remarks>Set STUDIOKIT_REWRITE_EXPECTED to write it anew after a change of the description, then read the difference.</remarks>
    [Fact]
    public void The_page_that_is_read_is_the_one_that_the_description_makes()
    {
        if (Environment.GetEnvironmentVariable("STUDIOKIT_REWRITE_EXPECTED") is { Length: > 0 })
        {
            File.WriteAllText(Page, KitReference.Write());
        }

        File.ReadAllText(Page).ReplaceLineEndings("\n").Should().Be(KitReference.Write());
    }

    [Fact]
    public void Every_key_of_the_schema_stands_under_its_section_with_its_bounds_and_its_default()
    {
        using var schema = JsonDocument.Parse(KitSchema.Write());
        var sections = schema.RootElement.GetProperty("$defs").EnumerateObject().Where(definition => !definition.Name.StartsWith("value-", StringComparison.Ordinal)).ToList();

        sections.Should().HaveCountGreaterThan(20);
        foreach (var section in sections)
        {
            var rows = RowsOf(section.Name);
            foreach (var key in section.Value.GetProperty("properties").EnumerateObject().Where(key => key.Name != "part"))
            {
                rows.Should().ContainSingle(row => row.StartsWith($"| `{key.Name}` |") || row.StartsWith($"| **`{key.Name}`** |"), $"'{section.Name}' has the key '{key.Name}'");
                var row = rows.Single(row => row.Contains($"`{key.Name}`", StringComparison.Ordinal) && row.IndexOf('`', StringComparison.Ordinal) < 7 && row.Split('`')[1] == key.Name);
                Tells(row, key.Value);
            }
        }
    }

    [Fact]
    public void What_must_be_there_is_told_so()
    {
        RowsOf("lens").Should().ContainSingle(row => row.StartsWith("| **`focal-length`** |"));
        RowsOf("lens").Should().ContainSingle(row => row.StartsWith("| `hood` |"));
    }

    [Fact]
    public void Every_link_leads_to_a_section_of_the_page()
    {
        var page = KitReference.Write();
        var headings = page.Split('\n').Where(line => line.StartsWith("## ", StringComparison.Ordinal)).Select(line => line[3..].ToLowerInvariant().Replace(' ', '-')).ToList();

        var links = Regex.Matches(page, @"\]\(#(?<place>[^)]*)\)", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture).Select(link => link.Groups["place"].Value).Distinct().ToList();

        links.Should().HaveCountGreaterThan(20).And.BeSubsetOf(headings);
        headings.Should().OnlyHaveUniqueItems();
    }

    private static void Tells(string row, JsonElement key)
    {
        var description = key.GetProperty("description").GetString()!;
        if (description.IndexOf(" Allowed: ", StringComparison.Ordinal) is > 0 and var at)
        {
            row.Should().Contain($"| {description[(at + " Allowed: ".Length)..].TrimEnd('.')} |");
        }

        if (key.TryGetProperty("default", out var standing))
        {
            row.Should().EndWith($"| `{standing.GetString()}` |");
        }
    }

    private static List<string> RowsOf(string section) =>
        [.. KitReference.Write().Split('\n').SkipWhile(line => line != $"## {section}").Skip(1).TakeWhile(line => !line.StartsWith("## ", StringComparison.Ordinal)).Where(line => line.StartsWith("| ", StringComparison.Ordinal))];
}
