using System.CommandLine;

namespace StudioKit.Cli;

/// <summary>The <c>--json</c> option that every reporting command has.</summary>
internal static class JsonOption
{
    /// <summary>Its name.</summary>
    public const string Name = "--json";

    public static Option<bool> Create() => new(Name) { Description = "Print one JSON document in place of text; what is wrong comes as JSON too." };
}
