using System.Collections.Concurrent;
using StudioKit.Kits;
using StudioKit.Planning;

namespace StudioKit.Sheets.Tests;

/// <summary>The demo kits, each planned and bound once for all tests that read its pages: a book holds every printed document.</summary>
internal static class DemoBooks
{
    private static readonly ConcurrentDictionary<string, Lazy<Plan>> Plans = new(StringComparer.Ordinal);
    private static readonly ConcurrentDictionary<string, Lazy<SheetFile>> Books = new(StringComparer.Ordinal);

    /// <summary>Names of the demo kits.</summary>
    public static IReadOnlyList<string> Names { get; } = [.. Directory.EnumerateFiles(Folder(), "*.yaml").Select(file => Path.GetFileNameWithoutExtension(file)).Order(StringComparer.Ordinal)];

    /// <summary>The same, for theories.</summary>
    public static TheoryData<string> Kits => [.. Names];

    /// <summary>A demo kit by its number, as it is read.</summary>
    public static KitSpec Kit(int number) => Read(Names[number]).Kit!;

    public static Plan Plan(string kit) => Plans.GetOrAdd(kit, name => new Lazy<Plan>(() => KitPlanner.Plan(Read(name)))).Value;

    public static SheetFile Book(string kit) => Books.GetOrAdd(kit, name => new Lazy<SheetFile>(() => SheetSet.WriteBook(Plan(name), new SheetOptions())[^1])).Value;

    private static KitReadResult Read(string kit) => KitReader.Read(Path.Combine(Folder(), $"{kit}.yaml"));

    private static string Folder()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "StudioKit.sln")))
        {
            folder = folder.Parent ?? throw new InvalidOperationException("The tests run outside the repository.");
        }

        return Path.Combine(folder.FullName, "kits");
    }
}
