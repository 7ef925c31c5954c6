using System.Globalization;
using System.Reflection;

namespace StudioKit.Physics.Exposure.Metering;

/// <summary>Published brightness of scenes, for a plan made before anyone could meter the place.</summary>
public static class SceneLightTable
{
    private static readonly Lazy<IReadOnlyList<SceneLight>> Rows = new(Load);

    /// <summary>Every scene, brightest first as the table gives them.</summary>
    public static IReadOnlyList<SceneLight> All => Rows.Value;

    /// <summary>Looks a scene up by its name.</summary>
    /// <exception cref="KeyNotFoundException">The table has no such scene.</exception>
    public static SceneLight Find(string scene) =>
        All.FirstOrDefault(row => row.Scene.Equals(scene, StringComparison.OrdinalIgnoreCase))
        ?? throw new KeyNotFoundException($"The scene table has no '{scene}'.");

    private static IReadOnlyList<SceneLight> Load()
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream("scene-light.csv")
            ?? throw new InvalidOperationException("The scene table is missing from the assembly.");
        using var reader = new StreamReader(stream);
        var lines = reader.ReadToEnd().Split('\n').Where(line => line.Length > 0 && line[0] != '#').Skip(1);
        return [.. lines.Select(Parse)];
    }

    private static SceneLight Parse(string line)
    {
        var cells = line.Split(',', 6);
        return new SceneLight(cells[0], Value(cells[2]), Value(cells[3]), cells[4], cells[5].Trim()) { IsOutdoorGround = cells[1] == "ground" };
    }

    private static ExposureValue Value(string cell) => new(double.Parse(cell, CultureInfo.InvariantCulture));
}
