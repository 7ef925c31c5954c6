using System.Collections.Concurrent;
using StudioKit.Kits;
using StudioKit.Planning;

namespace StudioKit.Sheets.Tests;

/// <summary>The demo kits, each planned and bound once for all tests that read its pages: a book holds every printed document.</summary>
internal static class DemoBooks
{
    private static readonly ConcurrentDictionary<string, Lazy<Plan>> Plans = new(StringComparer.Ordinal);
    private static readonly ConcurrentDictionary<(string Kit, Paper Paper), Lazy<SheetFile>> Books = new();

    /// <summary>Names of the demo kits.</summary>
    public static IReadOnlyList<string> Names { get; } = [.. Directory.EnumerateFiles(Folder(), "*.yaml").Select(file => Path.GetFileNameWithoutExtension(file)).Order(StringComparer.Ordinal)];

    /// <summary>The same, for theories.</summary>
    public static TheoryData<string> Kits => [.. Names];

    /// <summary>Each on either paper, for theories.</summary>
    public static TheoryData<string, Paper> OnBothPapers
    {
        get
        {
            var data = new TheoryData<string, Paper>();
            foreach (var (kit, paper) in Names.SelectMany(kit => Enum.GetValues<Paper>().Select(paper => (kit, paper))))
            {
                data.Add(kit, paper);
            }

            return data;
        }
    }

    /// <summary>A demo kit by its number, as it is read.</summary>
    public static KitSpec Kit(int number) => Read(Names[number]).Kit!;

    public static Plan Plan(string kit) => Plans.GetOrAdd(kit, name => new Lazy<Plan>(() => KitPlanner.Plan(Read(name)))).Value;

    public static SheetFile Book(string kit, Paper paper = Paper.A4) =>
        Books.GetOrAdd((kit, paper), bound => new Lazy<SheetFile>(() => SheetSet.WriteBook(Plan(bound.Kit), new SheetOptions { Paper = bound.Paper })[^1])).Value;

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
