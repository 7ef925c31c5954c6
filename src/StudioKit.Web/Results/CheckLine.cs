namespace StudioKit.Web.Results;

/// <summary>One check of the plan in words.</summary>
/// <param name="Name">What was checked.</param>
/// <param name="Passed">Whether it passes.</param>
/// <param name="Demand">What is asked.</param>
/// <param name="Capacity">What there is.</param>
/// <param name="Remedy">What would make it pass; empty where it passes.</param>
/// <param name="Keys">Keys of the kit that would mend it; empty where it passes.</param>
/// <param name="Source">Where the rule comes from.</param>
public sealed record CheckLine(string Name, bool Passed, string Demand, string Capacity, string Remedy, string Keys, string Source)
{
    /// <summary>What it is known by, the same in every plan of a kit.</summary>
    public string Id { get; init; } = "";

    /// <summary>Fields of the kit that decide it, the most promising first; empty where it passes.</summary>
    public IReadOnlyList<FieldPlace> Places { get; init; } = [];
}
