using System.CommandLine;
using StudioKit.Field.Calibration;
using StudioKit.Kits;

namespace StudioKit.Cli.Files;

/// <summary>The kit file that most commands start from.</summary>
internal static class KitInput
{
    /// <summary>Stands for the standard input in place of a file's name.</summary>
    public const string StandardInput = "-";

    public static Argument<string> Argument() => new("kit") { Description = "The kit file, e.g. kits/fen-edge.yaml; - reads it from the standard input." };

    /// <summary>One kit or several.</summary>
    public static Argument<string[]> Arguments()
    {
        var kits = new Argument<string[]>("kit")
        {
            Description = "The kit file or files, e.g. kits/fen-edge.yaml or kits/*.yaml; - reads one from the standard input.",
            Arity = ArgumentArity.OneOrMore,
        };
        kits.Validators.Add(result =>
        {
            if (result.Tokens.Count(token => token.Value == StandardInput) > 1)
            {
                result.AddError("The standard input gives one kit; name - once, and the others by their files.");
            }
        });
        return kits;
    }

    /// <summary>Reads a kit, prints every diagnostic to the error stream and applies the corrections measured for it, where there are any.</summary>
    /// <returns>What was read; it holds no kit where an error was found.</returns>
    /// <exception cref="FileTroubleException">A file cannot be read.</exception>
    public static KitReadResult Read(string path, CommandHost host)
    {
        var read = ReadAsWritten(path, host);
        return read.HasErrors ? read : Corrected(path, read, host);
    }

    /// <summary>A kit with the corrections measured for it, where there are any that can be used.</summary>
    /// <exception cref="FileTroubleException">The file of the corrections cannot be read.</exception>
    public static KitReadResult Corrected(string path, KitReadResult read, CommandHost host)
    {
        var file = KitCorrectionFile.PathBeside(path);
        if (path == StandardInput || !File.Exists(file))
        {
            return read;
        }

        var text = InputFile.Text(file, KitCorrectionFile.MostBytes);
        var correction = KitCorrectionFile.Read(file, text);
        if (correction.Value is not { } found || found.Kit != read.Kit!.Name)
        {
            FieldFaults.Print(host, correction.Diagnostics);
            host.Error.WriteLine($"{file}: not used; it is damaged or belongs to another kit.");
            return read;
        }

        if (found.CorrectsFigures)
        {
            host.Error.WriteLine(FormattableString.Invariant($"{file}: measured corrections of {found.Date:yyyy-MM-dd} are in the plan."));
        }

        return found.ApplyTo(read, text);
    }

    /// <summary>Reads a kit without any correction, and prints every diagnostic to the error stream.</summary>
    /// <returns>What was read; it holds no kit where an error was found.</returns>
    /// <exception cref="FileTroubleException">The file cannot be read.</exception>
    public static KitReadResult ReadAsWritten(string path, CommandHost host)
    {
        var read = InputFile.Read<KitReadResult>(path, path == StandardInput ? _ => FromInput(host) : KitReader.Read);
        if (read.HasErrors)
        {
            // First whether the kit can be used, then the rest.
            var errors = read.Diagnostics.Count(diagnostic => diagnostic.Severity == DiagnosticSeverity.Error);
            host.Error.WriteLine($"{(path == StandardInput ? "standard input" : path)}: cannot be used yet, {(errors == 1 ? "1 error" : $"{errors} errors")}.");
        }

        foreach (var diagnostic in read.Diagnostics)
        {
            host.Report(diagnostic);
        }

        return read;
    }

    private static KitReadResult FromInput(CommandHost host)
    {
        using var stream = host.OpenInput();
        return KitReader.Read(stream, "standard input");
    }
}
