namespace StudioKit.Web.Results;

/// <summary>The kit of a design.</summary>
/// <param name="Text">The kit's text with its changes, comments and order as they were; empty where there is none.</param>
/// <param name="Problem">Why there is none; empty where there is.</param>
public sealed record DesignKit(string Text, string Problem);
