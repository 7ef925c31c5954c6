using StudioKit.Field.Calibration;
using StudioKit.Kits;
using StudioKit.Kits.Editing;

namespace StudioKit.Cli.Files;

/// <summary>A kit to explore: its text, what was read of it, and how a changed text is read, with the same parts and corrections.</summary>
/// <param name="Path">How it was named.</param>
/// <param name="Text">Its text.</param>
/// <param name="Kit">What was read.</param>
/// <param name="Correction">What was measured for it and is in <paramref name="Kit"/>, with its text; none where nothing was.</param>
internal sealed record DesignInput(string Path, KitText Text, KitReadResult Kit, (KitCorrection Value, string Text)? Correction)
{
    /// <summary>Reads a kit; prints every diagnostic to the error stream.</summary>
    /// <exception cref="FileTroubleException">A file cannot be read.</exception>
    public static DesignInput? Read(string path, CommandHost host)
    {
        if (path == KitInput.StandardInput)
        {
            using var reader = new StreamReader(host.OpenInput());
            var typed = new char[KitReader.MostBytes + 1];
            var text = new string(typed, 0, reader.ReadBlock(typed, 0, typed.Length));
            var parsed = KitReader.Parse(text, "standard input", PartsLibrary.BesideKit(""));
            foreach (var diagnostic in parsed.Diagnostics)
            {
                host.Report(diagnostic);
            }

            return parsed.HasErrors ? null : new(path, KitText.Of(text), parsed, null);
        }

        var read = KitInput.Read(path, host);
        if (read.HasErrors)
        {
            return null;
        }

        var correction = read.Corrections is { } corrections && KitCorrectionFile.Read(KitCorrectionFile.PathBeside(path), corrections.Text).Value is { } found ? (found, corrections.Text) : ((KitCorrection, string)?)null;
        return new(path, KitText.Of(InputFile.Text(path, KitReader.MostBytes)), read, correction);
    }

    /// <summary>Reads a changed text of the kit.</summary>
    public KitReadResult Reading(string text) => Reading(text, PartsLibrary.BesideKit(Path == KitInput.StandardInput ? "" : Path));

    /// <summary>Reads a changed text as a file of another name would be.</summary>
    public KitReadResult Reading(string text, PartsLibrary parts)
    {
        var read = KitReader.Parse(text, Path, parts);
        return read.HasErrors || Correction is not { } correction ? read : correction.Value.ApplyTo(read, correction.Text);
    }
}
