namespace StudioKit.Web.Results;

/// <summary>The power dial of the flash below.</summary>
/// <param name="Flash">Name of the flash.</param>
/// <param name="Marks">What it can be set to, full power first.</param>
/// <param name="Set">Place of the mark that it is set to, from 0.</param>
public sealed record PowerDial(string Flash, IReadOnlyList<string> Marks, int Set);
