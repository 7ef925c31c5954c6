using System.CommandLine;

namespace StudioKit.Cli;

/// <summary>The <c>--force</c> option of every command that writes files.</summary>
internal static class ForceOption
{
    public static Option<bool> Create() => new("--force") { Description = "Replace files that StudioKit did not write, or that were changed since; never a file that is read, a picture or a sidecar." };
}
