using System.Runtime.InteropServices;

namespace StudioKit.Cli.Running;

/// <summary>Hears Ctrl-C and the system's calls to end, and sees to it that they are heeded.</summary>
internal sealed class Interruption : IDisposable
{
    // As shells count a process that a signal ended.
    private const int SignalBase = 128;
    private readonly CancellationTokenSource _stop = new();
    private readonly List<PosixSignalRegistration> _heard = [];
    private readonly TaskCompletionSource _cleared = new();
    private readonly TimeSpan _patience;
    private readonly Action _sayStopped;
    private int _calls;

    /// <param name="patience">How long a command may take to end by itself.</param>
    /// <param name="sayStopped">Says that the run was stopped where it did not say so itself.</param>
    public Interruption(TimeSpan patience, Action sayStopped)
    {
        (_patience, _sayStopped) = (patience, sayStopped);
        foreach (var (signal, number) in new[] { (PosixSignal.SIGINT, 2), (PosixSignal.SIGTERM, 15), (PosixSignal.SIGHUP, 1) })
        {
            _heard.Add(PosixSignalRegistration.Create(signal, context => Hear(context, SignalBase + number)));
        }
    }

    /// <summary>Set at the first call.</summary>
    public CancellationToken Stop => _stop.Token;

    /// <summary>Exit code of the call that was heard; none where there was none.</summary>
    public int? Code { get; private set; }

    /// <inheritdoc/>
    public void Dispose()
    {
        _heard.ForEach(heard => heard.Dispose());
        _stop.Dispose();
    }

    private void Hear(PosixSignalContext context, int code)
    {
        context.Cancel = true;
        if (Interlocked.Increment(ref _calls) == 1)
        {
            // What waits to be written is gone when this returns; files that are just being named get their names first.
            Code = code;
            Cancel();
            _cleared.TrySetResult();
            Thread.Sleep(_patience);
        }
        else
        {
            // Who calls again does not wait for the command, only for its files.
            _cleared.Task.Wait(_patience);
        }

        _sayStopped();
        Environment.Exit(code);
    }

    private void Cancel()
    {
        try
        {
            _stop.Cancel();
        }
        catch (ObjectDisposedException)
        {
            // The run ended in this very moment.
        }
    }
}
