namespace StudioKit.Web.Results;

/// <summary>A place of the panel as one framing has it.</summary>
/// <param name="Framing">Name of the framing.</param>
/// <param name="IsSeen">Whether any camera angle sees it.</param>
/// <param name="Seen">Which do, in words.</param>
/// <param name="Margin">Its white margin as it is said.</param>
public sealed record PointLine(string Framing, bool IsSeen, string Seen, string Margin);
