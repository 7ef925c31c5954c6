namespace StudioKit.Web.Results;

/// <summary>A step of a search for designs.</summary>
/// <param name="IsDone">Whether it is over.</param>
/// <param name="Tried">Designs tried.</param>
/// <param name="Of">Designs that are to be tried.</param>
/// <param name="Said">How far it has come, or why it was not begun.</param>
public sealed record SearchAnswer(bool IsDone, int Tried, int Of, string Said)
{
    /// <summary>Limits that cannot be read, with what would be accepted.</summary>
    public IReadOnlyList<FormValue> Refused { get; init; } = [];

    /// <summary>What was found; none before the end, or where nothing was begun.</summary>
    public FoundDesigns? Found { get; init; }
}
