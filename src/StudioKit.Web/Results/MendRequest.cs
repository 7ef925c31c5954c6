namespace StudioKit.Web.Results;

/// <summary>Asks for a change of a kit that mends a check. A search takes several steps, so that other questions come in between.</summary>
/// <param name="Text">The kit's text.</param>
/// <param name="FileName">Its file's name.</param>
/// <param name="Check">The check, as its line names it.</param>
/// <param name="Step">Which step, from 0.</param>
public sealed record MendRequest(string Text, string FileName, string Check, int Step);
