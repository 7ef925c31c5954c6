using System.Text;
using StudioKit.Field.Calibration;
using StudioKit.Writing;

namespace StudioKit.Cli.Files;

/// <summary>The correction file beside a kit.</summary>
internal static class CorrectionFile
{
    /// <summary>Whether there can be such a file; says why where there cannot.</summary>
    public static bool IsPossible(string kitPath, CommandHost host)
    {
        if (kitPath == KitInput.StandardInput)
        {
            host.Error.WriteLine("studiokit: what is measured is kept beside the kit's file: name the file, e.g. kits/fen-edge.yaml, in place of -.");
        }

        return kitPath != KitInput.StandardInput;
    }

    /// <summary>What it holds for a kit; none where there is no such file, or it is damaged or another kit's.</summary>
    /// <exception cref="FileTroubleException">The file cannot be read.</exception>
    public static KitCorrection? Of(string kitPath, string kitName)
    {
        var file = KitCorrectionFile.PathBeside(kitPath);
        return kitPath != KitInput.StandardInput && File.Exists(file) && KitCorrectionFile.Read(file, InputFile.Text(file, KitCorrectionFile.MostBytes)).Value is { } found && found.Kit == kitName ? found : null;
    }

    /// <summary>Writes it anew, and says so.</summary>
    /// <returns>Its path and text.</returns>
    /// <exception cref="FileWritingException">The file is somebody's own, or cannot be written.</exception>
    public static (string Path, string Text) Write(string kitPath, KitCorrection correction, bool force, IReadOnlyList<string> inputs, CommandHost host)
    {
        var (target, text) = (KitCorrectionFile.PathBeside(kitPath), KitCorrectionFile.Write(correction));
        OutputFiles.Write(host, force, [kitPath, .. inputs], [(target, Encoding.UTF8.GetBytes(text))]);
        host.Error.WriteLine($"wrote {target}");
        return (target, text);
    }
}
