using System.Globalization;
using System.Reflection;

namespace StudioKit.Physics.Tests.Exposure;

/// <summary>Reads the tables of expected values that stand beside the tests.</summary>
internal static class ExposureTable
{
    public static IEnumerable<string[]> Rows(string name)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"No embedded table {name}.");
        using var reader = new StreamReader(stream);
        return [.. reader.ReadToEnd().Split('\n').Where(line => line.Length > 0 && line[0] != '#').Skip(1).Select(line => line.Split(','))];
    }

    public static double Number(string cell) => double.Parse(cell, CultureInfo.InvariantCulture);
}
