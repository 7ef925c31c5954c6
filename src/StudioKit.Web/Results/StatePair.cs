namespace StudioKit.Web.Results;

/// <summary>One thing in two states of a kit.</summary>
/// <param name="Subject">What it is.</param>
/// <param name="First">In the first state.</param>
/// <param name="Second">In the second.</param>
public sealed record StatePair(string Subject, string First, string Second)
{
    /// <summary>Whether they differ.</summary>
    public bool Differs => First != Second;
}
