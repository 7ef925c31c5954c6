using System.Text.Json;

namespace StudioKit.Architecture.Tests;

/// <summary>Licences of what is shipped ask that their holders and texts come along.</summary>
public class NoticeTests
{
    // Only a build needs these; nothing of them is shipped.
    private static readonly string[] BuildOnly =
    [
        "Meziantou.Analyzer", "Microsoft.AspNetCore.Components.Analyzers", "Microsoft.CodeAnalysis.BannedApiAnalyzers", "Microsoft.NET.ILLink.Tasks",
    ];

    private static readonly string[] Notices = File.ReadAllLines(Path.Combine(Repository.Root, "THIRD-PARTY-NOTICES.txt"));

    [Theory]
    [InlineData("StudioKit.Cli")]
    [InlineData("StudioKit.Web")]
    public void Every_shipped_package_is_named_with_its_version_licence_and_holder(string project)
    {
        var shipped = Shipped(project).ToList();

        shipped.Should().NotBeEmpty();
        foreach (var package in shipped)
        {
            var line = Array.IndexOf(Notices, package);
            line.Should().BePositive("{0} is shipped; restore and run .ci/notices", package);
            Notices[line + 1].Should().MatchRegex("^  licence: .", "of {0}", package);
            Notices[line + 2].Should().MatchRegex("^  copyright: .", "of {0}", package);
        }
    }

    [Fact]
    public void No_package_is_named_that_is_not_shipped()
    {
        var named = Notices.Zip(Notices.Skip(1)).Where(pair => pair.Second.StartsWith("  licence: ", StringComparison.Ordinal)).Select(pair => pair.First);

        named.Where(line => line.Split(' ') is [_, { Length: > 0 } version] && char.IsAsciiDigit(version[0]))
            .Should().BeSubsetOf(Shipped("StudioKit.Cli").Concat(Shipped("StudioKit.Web")));
    }

    [Fact]
    public void Every_licence_that_is_named_has_its_text()
    {
        var licences = Notices.Where(line => line.StartsWith("  licence: ", StringComparison.Ordinal))
            .SelectMany(line => line["  licence: ".Length..].Split(',')[0].Split(" AND "))
            .Where(licence => licence is not ("public domain" or "OFL-1.1"));

        licences.Distinct().Select(licence => $"---- {licence} ----").Should().BeSubsetOf(Notices);
    }

    [Fact]
    public void Every_bundled_typeface_and_script_points_to_a_licence_that_comes_along()
    {
        var files = Directory.EnumerateFiles(Path.Combine(Repository.Root, "src/StudioKit.Typefaces"), "*.txt").Select(file => Path.GetFileName(file))
            .Concat(Directory.EnumerateDirectories(Path.Combine(Repository.Root, "src/StudioKit.Web/wwwroot/vendor")).Select(folder => $"page/vendor/{Path.GetFileName(folder)}/LICENSE.txt"));

        files.Should().OnlyContain(file => Notices.Any(line => line.EndsWith($"text in {file}", StringComparison.Ordinal)));
    }

    private static IEnumerable<string> Shipped(string project)
    {
        using var locked = JsonDocument.Parse(File.ReadAllText(Path.Combine(Repository.Root, "src", project, "packages.lock.json")));
        return [.. locked.RootElement.GetProperty("dependencies").EnumerateObject()
            .SelectMany(target => target.Value.EnumerateObject())
            .Where(package => package.Value.GetProperty("type").GetString() != "Project" && !BuildOnly.Contains(package.Name))
            .Select(package => $"{package.Name} {package.Value.GetProperty("resolved").GetString()}")];
    }
}
