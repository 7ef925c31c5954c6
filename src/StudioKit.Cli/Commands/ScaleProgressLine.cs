using StudioKit.FieldFiles.Scale;

namespace StudioKit.Cli.Commands;

/// <summary>Tells a waiting person how far a batch of pictures has come.</summary>
internal sealed class ScaleProgressLine(CommandHost host) : IProgress<ScaleBatchProgress>
{
    private readonly Lock _line = new();

    public void Report(ScaleBatchProgress value)
    {
        lock (_line)
        {
            host.Error.WriteLine($"{value.Done} of {value.Total}: {value.Source}");
        }
    }
}
