using System.Globalization;
using System.Reflection;

namespace StudioKit.Physics.Tests.Optics;

/// <summary>A published lens, surface by surface.</summary>
internal sealed record LensPrescription(string Patent, double StatedFocalLength, double Scale, bool FocusesInternally, IReadOnlyList<LensSurface> Surfaces)
{
    /// <summary>All of the file, each at the scale that it is used at [mm].</summary>
    public static IReadOnlyList<LensPrescription> All { get; } = Read();

    public bool HasCloseSetting => Surfaces.Any(surface => surface.Close != surface.Distance);

    public override string ToString() => Patent;

    private static List<LensPrescription> Read()
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream("lens-prescriptions.csv")!;
        using var reader = new StreamReader(stream);
        var lenses = new List<LensPrescription>();
        foreach (var line in reader.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries).Where(line => line[0] != '#'))
        {
            var cells = line.Split(',');
            if (cells[0] == "lens")
            {
                lenses.Add(new(cells[1], Number(cells[2]) * Number(cells[3]), Number(cells[3]), cells[4] == "internal", new List<LensSurface>()));
            }
            else
            {
                ((List<LensSurface>)lenses[^1].Surfaces).Add(Surface(cells, lenses[^1].Scale));
            }
        }

        return lenses;
    }

    private static LensSurface Surface(string[] cells, double scale) => new(
        cells[0] is "stop" or "flat" ? double.PositiveInfinity : Number(cells[0]) * scale,
        cells[0] == "stop",
        Number(cells[1]) * scale,
        Number(cells[2]),
        Number(cells.Length > 3 ? cells[3] : cells[1]) * scale);

    private static double Number(string cell) => double.Parse(cell, CultureInfo.InvariantCulture);
}
