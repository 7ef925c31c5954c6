namespace StudioKit.Web.Results;

/// <summary>Something that could stand where somebody types.</summary>
/// <param name="Label">What to show for it.</param>
/// <param name="Kind">What it is, in a word.</param>
/// <param name="Help">What it is for; empty where nothing is to be said.</param>
/// <param name="Start">Where it is written, in UTF-16 units from 0.</param>
/// <param name="Length">How much of the text gives way, in UTF-16 units.</param>
/// <param name="NewText">What is written.</param>
public sealed record Candidate(string Label, string Kind, string Help, int Start, int Length, string NewText);
