using System.Text.RegularExpressions;

namespace StudioKit.Architecture.Tests;

/// <summary>A way of lighting lives in a folder of its own; nothing else asks which kind a set-up is.</summary>
public sealed partial class SetUpKindTests
{
    [Fact]
    public void Nothing_outside_the_kit_model_and_the_set_ups_folders_asks_which_kind_a_set_up_is()
    {
        var asking = Directory.EnumerateFiles(Path.Combine(Repository.Root, "src"), "*.cs", SearchOption.AllDirectories)
            .Select(path => (Path: path, Place: Path.GetRelativePath(Repository.Root, path).Replace('\\', '/')))
            .Where(file => !file.Place.Contains("/obj/", StringComparison.Ordinal))
            .Where(file => !file.Place.StartsWith("src/StudioKit.Kits/", StringComparison.Ordinal) && !file.Place.StartsWith("src/StudioKit.Planning/SetUps/", StringComparison.Ordinal))
            .Where(file => Kind().IsMatch(File.ReadAllText(file.Path)))
            .Select(file => file.Place);

        asking.Should().BeEquivalentTo(["src/StudioKit.Planning/ExposurePlan.cs"], "a plan says which way of lighting it is for, and two files at most may ask");
    }

    [GeneratedRegex(@"\bSetUpKind\b", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Kind();
}
