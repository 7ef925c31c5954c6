namespace StudioKit.Web.Results;

/// <summary>Something that designs can be compared by.</summary>
/// <param name="Key">Its name in a kit.</param>
/// <param name="Name">Its name in words.</param>
/// <param name="About">What it is.</param>
/// <param name="Now">What the kit as it is written comes to; empty where there is no figure.</param>
/// <param name="Unknown">Why there is no figure, and what would give one; empty where there is one.</param>
public sealed record DesignMeasureLine(string Key, string Name, string About, string Now, string Unknown)
{
    /// <summary>Whether a limit is the least that is wanted; else it is the most.</summary>
    public bool MoreIsBetter { get; init; }

    /// <summary>A limit as somebody would write it.</summary>
    public string LimitExample { get; init; } = "";

    /// <summary>Whether it is compared by where nobody says otherwise.</summary>
    public bool IsUsual { get; init; }
}
