namespace StudioKit.Cli;

/// <summary>Everything a command may touch outside its arguments, so that tests can put their own in its place.</summary>
internal sealed record CommandHost
{
    /// <summary>Results go here.</summary>
    public required TextWriter Output { get; init; }

    /// <summary>Everything else goes here.</summary>
    public required TextWriter Error { get; init; }

    /// <summary>Whether a person looks at <see cref="Output"/>.</summary>
    public bool OutputIsTerminal { get; init; }

    /// <summary>Whether a person looks at <see cref="Error"/>.</summary>
    public bool ErrorIsTerminal { get; init; }

    /// <summary>Whether colour is welcome where a person looks.</summary>
    public bool ColourAllowed { get; init; }

    /// <summary>Width of the terminal in characters.</summary>
    public int Width { get; init; } = 100;

    /// <summary>The clock, for records of the field only.</summary>
    public TimeProvider Clock { get; init; } = TimeProvider.System;

    /// <summary>The host of a real process.</summary>
    public static CommandHost ForProcess() => new()
    {
        Output = Console.Out,
        Error = Console.Error,
        OutputIsTerminal = !Console.IsOutputRedirected,
        ErrorIsTerminal = !Console.IsErrorRedirected,
        ColourAllowed = string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR"))
            && Environment.GetEnvironmentVariable("TERM") != "dumb",
        Width = Console.IsOutputRedirected ? 100 : Math.Clamp(Console.WindowWidth, 60, 200),
    };
}
