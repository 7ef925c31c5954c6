using System.Globalization;
using StudioKit.Cli;
using StudioKit.Writing;

namespace StudioKit.Benchmarks;

/// <summary>What sheets cost by the number of cards, and by the number of studios that are cut at once.</summary>
internal sealed class SheetCosts : IDisposable
{
    private static readonly int[] Lenses = [10, 20, 40];
    private static readonly int[] Studios = [5, 15, 50];
    private readonly TemporaryFolder _folder = new("studiokit-growth-");

    /// <summary>The costs.</summary>
    public IReadOnlyList<GrowingCost> All =>
    [
        new("sheets of a kit in four set-ups at three magnifications, lenses", Lenses, lenses => Sheets($"{lenses}-lenses.yaml", InventedKit.WithLenses(lenses))),
        new("sheets of a batch, studios", Studios, studios => Sheets($"{studios}-studios.yaml", InventedKit.InBatch(studios))),
        new("cut of that batch's sheets, studios", Studios, Cut),
    ];

    /// <inheritdoc/>
    public void Dispose() => _folder.Dispose();

    private Action Sheets(string name, string kit)
    {
        File.WriteAllText(_folder.File(name), kit);
        return () => Run("sheets", _folder.File(name), "--out", _folder.File("out"), "--force");
    }

    private Action Cut(int studios)
    {
        var (pieces, sheets) = (_folder.File($"{studios}-panels.csv"), _folder.File("sheets.csv"));
        File.WriteAllText(pieces, string.Create(CultureInfo.InvariantCulture, $"label,width,height,count,turn\npanel,600 mm,400 mm,{studios},\nskirt,600 mm,300 mm,{studios},\nside,400 mm,300 mm,{2 * studios},\n"));
        File.WriteAllText(sheets, "width,height,price,count\n1000 mm,500 mm,24,\n1220 mm,610 mm,33,\n3000 mm,1500 mm,140,\n");
        return () => Run("cut", "--sheet-pieces", pieces, "--sheets", sheets, "--kerf", "3 mm");
    }

    private static void Run(params string[] arguments)
    {
        using var error = new StringWriter(CultureInfo.InvariantCulture);
        var code = StudioKitCommand.Run(arguments, new CommandHost { Output = TextWriter.Null, Error = error });

        // A plan that fails a check is a plan all the same, and its sheets are written.
        if (code is not ((int)ExitCode.Done or (int)ExitCode.PlanFails))
        {
            throw new InvalidOperationException($"{string.Join(' ', arguments)} ended with {code}: {error}");
        }
    }
}
