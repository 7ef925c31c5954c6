using System.Xml.Linq;

namespace StudioKit.Architecture.Tests;

/// <summary>The checkout that the tests were built from.</summary>
internal static class Repository
{
    public static string Root { get; } = FindRoot();

    public static IReadOnlyList<string> ProjectFiles(string folder) =>
        [.. Directory.EnumerateFiles(Path.Combine(Root, folder), "*.csproj", SearchOption.AllDirectories).Order(StringComparer.Ordinal)];

    public static IReadOnlyList<string> ProjectReferences(string projectFile) =>
        [.. Items(projectFile, "ProjectReference").Select(path => Path.GetFileNameWithoutExtension(path.Replace('\\', '/'))).Order(StringComparer.Ordinal)];

    public static IReadOnlyList<string> PackageReferences(string projectFile) =>
        [.. Items(projectFile, "PackageReference").Order(StringComparer.Ordinal)];

    private static IEnumerable<string> Items(string projectFile, string kind) =>
        XDocument.Load(projectFile).Descendants(kind).Select(item => (string)item.Attribute("Include")!);

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "StudioKit.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("The tests run outside a checkout.");
    }
}
