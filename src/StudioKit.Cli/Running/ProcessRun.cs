using StudioKit.Writing;

namespace StudioKit.Cli.Running;

/// <summary>One run as a process: its streams may be full or closed, and it may be told to stop.</summary>
internal static class ProcessRun
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(1.5);

    // A cut plan's search hands back the best that it has, and that may take a moment.
    private static readonly TimeSpan PatienceWithSearch = TimeSpan.FromSeconds(6);

    /// <summary>Runs one command line.</summary>
    /// <returns>The exit code.</returns>
    public static int Of(string[] args)
    {
        using var output = new GuardedWriter(StandardStreams.IsClosed(1) ? new ClosedWriter() : Console.Out);
        using var error = new GuardedWriter(StandardStreams.IsClosed(2) ? new ClosedWriter() : Console.Error);
        var host = CommandHost.ForProcess() with { Output = output, Error = error };
        using var interruption = new Interruption(args is ["cut", ..] ? PatienceWithSearch : Patience, () => host.SayStopped());
        var code = Heard(() => StudioKitCommand.Run(args, host with { Stop = interruption.Stop }), host);
        if (interruption.Code is { } stopped && code == (int)ExitCode.Stopped)
        {
            return stopped;
        }

        return Finished(code, output, error);
    }

    // A fault of ours is no riddle for who meets it: nobody is shown where in the program it happened, which tells them nothing.
    private static int Heard(Func<int> run, CommandHost host)
    {
        try
        {
            return run();
        }
        catch (Exception fault)
        {
            var written = host.Written.Count == 0 ? "nothing was written" : $"written before that: {string.Join(", ", host.Written)}";
            host.Error.WriteLine(HarmlessText.Of($"studiokit: a fault of StudioKit itself, not of what it was given ({fault.GetType().Name}: {fault.Message}); {written}. Please report it with the line that you typed."));
            return (int)ExitCode.OwnFault;
        }
    }

    private static int Finished(int code, GuardedWriter output, GuardedWriter error)
    {
        if (output.Trouble is { } trouble)
        {
            error.WriteLine($"studiokit: the results could not be printed: {WritingFault.Reason(trouble)}.");
        }

        return output.Trouble is null && error.Trouble is null ? code : (int)ExitCode.FileTrouble;
    }
}
