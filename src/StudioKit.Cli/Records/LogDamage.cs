using StudioKit.FieldFiles.Log;

namespace StudioKit.Cli.Records;

/// <summary>Tells that a log is damaged, whatever a command could still make of it.</summary>
internal static class LogDamage
{
    /// <summary>Tells what is damaged in a log, and how what can be read is saved.</summary>
    /// <param name="host">Where it is told.</param>
    /// <param name="path">The log's file.</param>
    /// <param name="log">The log.</param>
    /// <param name="code">Exit code where nothing is damaged.</param>
    /// <returns>Exit code of the command.</returns>
    public static ExitCode Told(CommandHost host, string path, FieldLog log, ExitCode code)
    {
        var faults = log.CheckIntegrity();
        foreach (var fault in faults)
        {
            host.Error.WriteLine($"{path}: damaged: {fault}");
        }

        if (faults.Count == 0)
        {
            return code;
        }

        host.Error.WriteLine($"'studiokit log rescue {path} NEW' saves what can be read into a new log and leaves this one as it is.");
        return code == ExitCode.Done ? ExitCode.FileTrouble : code;
    }
}
