using System.Text.RegularExpressions;
using StudioKit.Physics.Sources;

namespace StudioKit.Architecture.Tests;

/// <summary>The bibliography holds what is cited and nothing else.</summary>
public sealed partial class BibliographyTests
{
    /// <summary>Code names a key as a string of its own, parts and handling guides as the value of a key, tables as a field.</summary>
    [Fact]
    public void Every_source_of_the_bibliography_is_cited_somewhere()
    {
        var code = Files("src", "*.cs").SelectMany(file => Quoted().Matches(File.ReadAllText(file))).Select(match => match.Groups["key"].Value);
        var data = Files("kits", "*.yaml").Concat(Files("src", "*.csv")).SelectMany(file => Words().Matches(File.ReadAllText(file))).Select(match => match.Value);

        var cited = code.Concat(data).ToHashSet(StringComparer.Ordinal);

        Bibliography.Entries.Keys.Should().AllSatisfy(
            key => cited.Contains(key).Should().BeTrue("{0} is cited by no calculation, part or guide, so it must go", key));
    }

    private static IEnumerable<string> Files(string folder, string pattern) => Directory
        .EnumerateFiles(Path.Combine(Repository.Root, folder), pattern, SearchOption.AllDirectories)
        .Where(file => !file.Split(Path.DirectorySeparatorChar).Any(part => part is "bin" or "obj"));

    [GeneratedRegex("\"(?<key>[\\w-]+)\"", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Quoted();

    [GeneratedRegex("[\\w-]+", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Words();
}
