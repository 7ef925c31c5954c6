using StudioKit.Cli.Files;
using StudioKit.Field;
using StudioKit.FieldFiles.Log;

namespace StudioKit.Cli.Records;

/// <summary>Opens a log for one action, and tells what is wrong with one that cannot be read.</summary>
internal static class OpenLog
{
    /// <summary>Opens a log to write, and starts one where there is none.</summary>
    public static ExitCode OrStart(CommandHost host, string path, Func<FieldLog, ExitCode> action)
    {
        var isNew = !File.Exists(path);
        return Run(host, path, FieldLog.Open(path, host.Clock, NewId(host)), log =>
        {
            if (isNew)
            {
                host.Error.WriteLine($"started a new log: {path}");
            }

            return action(log);
        });
    }

    /// <summary>Opens a log to write that is there already.</summary>
    public static ExitCode ToWrite(CommandHost host, string path, Func<FieldLog, ExitCode> action) =>
        Run(host, path, FieldLog.OpenExisting(path, host.Clock, NewId(host)), action);

    /// <summary>Opens a log to read.</summary>
    public static ExitCode ToRead(CommandHost host, string path, Func<FieldLog, ExitCode> action) => Run(host, path, FieldLog.OpenToRead(path, host.Clock), action);

    /// <summary>Does something with what was found; prints why it was not found.</summary>
    public static ExitCode With<T>(CommandHost host, FieldResult<T> found, Func<T, ExitCode> action)
        where T : class => found.IsSound ? action(found.Value) : FieldFaults.Print(host, found.Diagnostics);

    private static void Note(CommandHost host, string path)
    {
        if (!host.Written.Contains(path))
        {
            host.Written.Add(path);
        }
    }

    // Time-ordered identifiers keep the record's own order wherever they are sorted.
    private static Func<string> NewId(CommandHost host) => () => "urn:uuid:" + Guid.CreateVersion7(host.Clock.GetUtcNow());

    private static ExitCode Run(CommandHost host, string path, FieldResult<FieldLog> opened, Func<FieldLog, ExitCode> action)
    {
        using var log = opened.Value;
        if (log is not null)
        {
            // Who stops the run is told what was written before that.
            log.Written = () => Note(host, path);
        }

        try
        {
            return log is null ? FieldFaults.Print(host, opened.Diagnostics) : action(log);
        }
        catch (DamagedLogException damage)
        {
            return FieldFaults.Print(host, [damage.Diagnostic]);
        }
    }
}
