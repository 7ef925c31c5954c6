using System.CommandLine;

namespace StudioKit.Cli;

/// <summary>The <c>--json</c> option that every reporting command has.</summary>
internal static class JsonOption
{
    public static Option<bool> Create() => new("--json") { Description = "Print one JSON document in place of text." };
}
