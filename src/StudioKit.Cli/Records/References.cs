using System.CommandLine;

namespace StudioKit.Cli.Records;

/// <summary>Arguments that name a record of the log.</summary>
internal static class References
{
    private const string How = "short identifier, e.g. k7m, name where only one has it, 'last', or full identifier";

    public static Argument<string> Of(string kind) => new(kind) { Description = $"The {kind}: {How}." };

    public static Argument<string> Subject() => Of("subject");

    public static Argument<string?> OptionalSession() => Optional("session", $"The session: {How}; the session of the day where left out.");

    public static Argument<string?> Optional(string name, string description) => new(name) { Description = description, Arity = ArgumentArity.ZeroOrOne };
}
