using StudioKit.Cli.Running;

namespace StudioKit.Cli;

/// <summary>Where the command begins.</summary>
internal static class Program
{
    private static int Main(string[] args) => ProcessRun.Of(args);
}
