namespace StudioKit.Web.Results;

/// <summary>One field of a form.</summary>
/// <param name="Path">Its path in the kit, e.g. <c>flashes[0].guide-number</c>.</param>
/// <param name="Label">What to call it.</param>
/// <param name="Takes">How it is filled in.</param>
/// <param name="Values">What the kit says: nothing, a value, or several where it takes a list.</param>
public sealed record FormLine(string Path, string Label, FormLineKind Takes, IReadOnlyList<string> Values)
{
    /// <summary>Where a value is written; for a part's name it may be the group's own path.</summary>
    public string WritePath { get; init; } = Path;

    /// <summary>Whether it takes several values.</summary>
    public bool IsList { get; init; }

    /// <summary>What it is for, in a sentence.</summary>
    public string Help { get; init; } = "";

    /// <summary>What may be typed, with an example and the bounds.</summary>
    public string Form { get; init; } = "";

    /// <summary>What a plan goes by where the kit says nothing, and where that comes from; empty where nothing stands in.</summary>
    public string StandIn { get; init; } = "";

    /// <summary>A value as people write it, to be shown while there is none.</summary>
    public string Example { get; init; } = "";

    /// <summary>Words to choose from.</summary>
    public IReadOnlyList<FormChoice> Choices { get; init; } = [];

    /// <summary>Kind of part that it names; empty where it names none.</summary>
    public string PartKind { get; init; } = "";

    /// <summary>Whether it must be filled in.</summary>
    public bool IsRequired { get; init; }

    /// <summary>Whether it must be filled in and is not.</summary>
    public bool IsMissing { get; init; }

    /// <summary>What is wrong with it.</summary>
    public IReadOnlyList<Fault> Faults { get; init; } = [];
}
