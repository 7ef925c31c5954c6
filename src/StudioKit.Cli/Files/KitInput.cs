using System.CommandLine;
using StudioKit.Kits;

namespace StudioKit.Cli.Files;

/// <summary>The kit file that most commands start from.</summary>
internal static class KitInput
{
    public static Argument<string> Argument() => new("kit") { Description = "The kit file, e.g. kits/fen-edge.yaml." };

    /// <summary>Reads a kit and prints every diagnostic to the error stream.</summary>
    /// <returns>What was read; it holds no kit where an error was found.</returns>
    /// <exception cref="FileTroubleException">The file cannot be read.</exception>
    public static KitReadResult Read(string path, CommandHost host)
    {
        var read = Open(path);
        foreach (var diagnostic in read.Diagnostics)
        {
            host.Error.WriteLine(diagnostic.Format());
        }

        if (read.HasErrors)
        {
            var errors = read.Diagnostics.Count(diagnostic => diagnostic.Severity == DiagnosticSeverity.Error);
            host.Error.WriteLine(errors == 1 ? "1 error." : $"{errors} errors.");
        }

        return read;
    }

    private static KitReadResult Open(string path)
    {
        try
        {
            return KitReader.Read(path);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            throw new FileTroubleException($"cannot read {path}: {error.Message}", error);
        }
    }
}
