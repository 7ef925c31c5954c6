namespace StudioKit.Web.Results;

/// <summary>One half of a kit as a form shows it; only what is opened has its fields along.</summary>
/// <param name="Lines">The kit's own fields.</param>
/// <param name="Sections">Its sections.</param>
/// <param name="Faults">Everything wrong with the whole text, in order of place.</param>
/// <param name="Obstacle">Why nothing can be changed by a form; empty where it can.</param>
public sealed record FormAnswer(IReadOnlyList<FormLine> Lines, IReadOnlyList<FormSection> Sections, IReadOnlyList<FormFault> Faults, string Obstacle);
