using StudioKit.Physics;

namespace StudioKit.Kits.Exploring;

/// <summary>Something that a kit leaves open: values of a key, things to leave out, or options that write several keys.</summary>
public sealed record DesignChoiceSpec
{
    /// <summary>Its name in results.</summary>
    public required string Name { get; init; }

    /// <summary>Path of the key that is open, e.g. <c>panel.part</c> or <c>set-ups[white].lights[0].distance</c>; none where there are options or things to leave out.</summary>
    public string? Key { get; init; }

    /// <summary>Values of the key.</summary>
    public ValueList<string> Values { get; init; } = [];

    /// <summary>First value of a range; none where there is no range.</summary>
    public string? From { get; init; }

    /// <summary>Last value of a range.</summary>
    public string? To { get; init; }

    /// <summary>Step of a range.</summary>
    public string? Step { get; init; }

    /// <summary>Paths of keys and entries that stay, or are left out together.</summary>
    public ValueList<string> LeaveOut { get; init; } = [];

    /// <summary>Options that write or leave out several things at once.</summary>
    public ValueList<DesignOptionSpec> Options { get; init; } = [];
}
