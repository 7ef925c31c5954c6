namespace StudioKit.Cli.Usage;

/// <summary>Codes of what is wrong with a command line itself.</summary>
internal static class UsageCodes
{
    /// <summary>The command line cannot be understood: an unknown command, option or value, or one that is missing.</summary>
    public const string BadUsage = "USE001";

    /// <summary>The command line is understood, but what it asks for cannot be done.</summary>
    public const string Refused = "USE002";

    /// <summary>A file cannot be read or written.</summary>
    public const string FileTrouble = "USE003";
}
