namespace StudioKit.Web.Results;

/// <summary>The verdict, always in sight.</summary>
/// <param name="Standing">How the kit stands.</param>
/// <param name="Text">The same in a sentence or two.</param>
/// <param name="FirstFailing">The first check that fails, with what is asked and given; empty where none does.</param>
/// <param name="Remedy">What would make it pass; empty where nothing fails.</param>
public sealed record VerdictLine(Standing Standing, string Text, string FirstFailing, string Remedy)
{
    /// <summary>The check that it is about, as its line names it: the first that fails, else the first that holds at the edge; empty where there is none.</summary>
    public string Check { get; init; } = "";

    /// <summary>Fields of the kit that decide that check, the most promising first.</summary>
    public IReadOnlyList<FieldPlace> Places { get; init; } = [];
}
