namespace StudioKit.Architecture.Tests;

public sealed class ProjectTableTests
{
    /// <summary>The design's table: what each project may lean on, projects first, then packages.</summary>
    public static TheoryData<string, string[], string[]> Table => new()
    {
        { "Physics", [], ["UnitsNet"] },
        { "Writing", [], [] },
        { "Typefaces", [], [] },
        { "Kits", ["Physics"], ["YamlDotNet"] },
        { "Planning", ["Kits", "Physics"], [] },
        { "Cutting", ["Planning"], ["Google.OrTools"] },
        { "Wording", ["Field", "Planning"], [] },
        { "Sheets", ["Field", "Planning", "Typefaces", "Wording"], ["OxyPlot.Core", "PDFsharp", "QRCoder"] },
        { "Field", ["Planning"], ["MathNet.Numerics"] },
        {
            "FieldFiles", ["Field", "Typefaces", "Writing"],
            ["BitMiracle.LibJpeg.NET", "BitMiracle.LibTiff.NET", "MetadataExtractor", "Microsoft.Data.Sqlite", "SkiaSharp", "SkiaSharp.NativeAssets.Linux.NoDependencies"]
        },
        { "Web", ["Kits", "Physics", "Planning", "Sheets", "Field", "Wording"], ["Microsoft.AspNetCore.Components.WebAssembly"] },
        { "Cli", ["Cutting", "Field", "FieldFiles", "Kits", "Physics", "Planning", "Sheets", "Wording", "Writing"], ["Spectre.Console", "System.CommandLine"] },
    };

    [Theory]
    [MemberData(nameof(Table))]
    public void A_project_leans_only_on_what_the_design_allows(string project, string[] projects, string[] packages)
    {
        var file = Path.Combine(Repository.Root, "src", $"StudioKit.{project}", $"StudioKit.{project}.csproj");

        Repository.ProjectReferences(file).Should().BeSubsetOf(projects.Select(name => $"StudioKit.{name}"));
        Repository.PackageReferences(file).Should().BeSubsetOf(packages);
    }

    [Fact]
    public void Every_source_project_stands_in_the_table()
    {
        var known = Table.Select(row => $"StudioKit.{row[0]}");

        Repository.ProjectFiles("src").Select(Path.GetFileNameWithoutExtension).Should().BeEquivalentTo(known);
    }

    [Fact]
    public void Every_source_project_has_a_test_project_of_its_own()
    {
        var tests = Repository.ProjectFiles("tests").Select(Path.GetFileNameWithoutExtension);

        tests.Should().Contain(Repository.ProjectFiles("src").Select(file => Path.GetFileNameWithoutExtension(file) + ".Tests"));
    }

    [Fact]
    public void Every_project_stands_in_the_solution()
    {
        var solution = File.ReadAllText(Path.Combine(Repository.Root, "StudioKit.sln"));

        Repository.ProjectFiles("src").Concat(Repository.ProjectFiles("tests"))
            .Where(file => !solution.Contains(Path.GetFileName(file), StringComparison.Ordinal))
            .Should().BeEmpty();
    }

    /// <summary>These run in a browser, so nothing native may hide among the files they bring along.</summary>
    [Theory]
    [InlineData("Physics")]
    [InlineData("Kits")]
    [InlineData("Planning")]
    [InlineData("Sheets")]
    [InlineData("Wording")]
    [InlineData("Field")]
    [InlineData("Typefaces")]
    [InlineData("Web")]
    public void The_pure_projects_bring_no_native_library(string project)
    {
        var lockFile = File.ReadAllText(Path.Combine(Repository.Root, "src", $"StudioKit.{project}", "packages.lock.json"));

        lockFile.Should().NotContainAny("runtime.linux", "NativeAssets", "SQLitePCLRaw", "OrTools", "SkiaSharp");
    }
}
