using System.Collections.Concurrent;
using StudioKit.Kits;

namespace StudioKit.Planning.Tests;

/// <summary>Small kits for tests, planned from text as a person would write them.</summary>
internal static class KitText
{
    /// <summary>Camera and one lens; everything else is added under it.</summary>
    public const string Bare = """
        kit: Reed bed
        camera: {name: body, sensor: 36 mm x 24 mm, mass: 700 g}
        lenses:
          - {name: reed 60, focal-length: 60 mm, magnifications: [1:2], mass: 300 g}

        """;

    private static readonly ConcurrentDictionary<string, Lazy<Plan>> Plans = new(StringComparer.Ordinal);
    private static readonly ConcurrentDictionary<string, Lazy<Plan>> Demos = new(StringComparer.Ordinal);

    /// <summary>A kit, planned once for all tests that write the same: a plan never changes.</summary>
    public static Plan Plan(string yaml) => Plans.GetOrAdd(yaml, text => new Lazy<Plan>(() => KitPlanner.Plan(Read(text)))).Value;

    public static KitReadResult Read(string yaml)
    {
        var read = KitReader.Parse(yaml.ReplaceLineEndings("\n"), "kit.yaml", PartsLibrary.Embedded);
        read.Diagnostics.Where(fault => fault.Severity == DiagnosticSeverity.Error).Select(fault => fault.Format()).Should().BeEmpty();
        return read;
    }

    /// <summary>A demo kit, planned once for all tests.</summary>
    public static Plan Demo(string name) => Demos.GetOrAdd(name, demo => new Lazy<Plan>(() => PlanDemo(demo))).Value;

    /// <summary>A demo kit as it is read.</summary>
    public static KitReadResult DemoRead(string name) => KitReader.Read(PathOf(name));

    /// <summary>A demo kit as it is written.</summary>
    public static string DemoText(string name) => File.ReadAllText(PathOf(name));

    private static string PathOf(string name)
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "StudioKit.sln")))
        {
            folder = folder.Parent ?? throw new InvalidOperationException("The tests run outside the repository.");
        }

        return Path.Combine(folder.FullName, "kits", name);
    }

    private static Plan PlanDemo(string name) => KitPlanner.Plan(DemoRead(name));
}
