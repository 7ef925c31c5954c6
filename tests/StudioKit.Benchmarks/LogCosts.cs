using System.Globalization;
using StudioKit.Cli;
using StudioKit.Writing;

namespace StudioKit.Benchmarks;

/// <summary>What the commands cost that read a whole log, by its length.</summary>
internal sealed class LogCosts : IDisposable
{
    private static readonly int[] Lengths = [4_000, 16_000, 64_000];
    private readonly TemporaryFolder _folder = new("studiokit-growth-");

    /// <summary>The costs.</summary>
    public IReadOnlyList<GrowingCost> All =>
    [
        Of("log list", "list"),
        Of("log list --json", "list", "--json"),
        Of("log list --csv", "list", "--csv"),
        Of("log export --archive", "export", "--archive", _folder.File("fen.zip"), "--force"),
        Of("log export --csv", "export", "--csv", _folder.File("fen.csv"), "--force"),
        Of("log export --geojson", "export", "--geojson", _folder.File("fen.geojson"), "--force"),
        Of("log export --preview", "export", "--preview"),
    ];

    /// <inheritdoc/>
    public void Dispose() => _folder.Dispose();

    private GrowingCost Of(string name, params string[] arguments) => new(name + ", records", Lengths, records =>
    {
        var log = Log(records);
        return () => Run(["log", .. arguments, "--log", log]);
    });

    private string Log(int records)
    {
        var path = _folder.File(string.Create(CultureInfo.InvariantCulture, $"{records}.log"));
        if (!File.Exists(path))
        {
            InventedLog.Write(records, path);
        }

        return path;
    }

    private static void Run(string[] arguments)
    {
        using var error = new StringWriter(CultureInfo.InvariantCulture);
        var code = StudioKitCommand.Run(arguments, new CommandHost { Output = TextWriter.Null, Error = error });
        if (code != (int)ExitCode.Done)
        {
            throw new InvalidOperationException($"{string.Join(' ', arguments)} ended with {code}: {error}");
        }
    }
}
