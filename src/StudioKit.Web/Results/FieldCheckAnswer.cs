namespace StudioKit.Web.Results;

/// <summary>What something typed into a field means.</summary>
/// <param name="Typed">What was typed.</param>
/// <param name="Meaning">How the planner reads it; empty where it cannot.</param>
/// <param name="Problem">What is wrong with it, with what would help; empty where nothing is.</param>
public sealed record FieldCheckAnswer(string Typed, string Meaning, string Problem);
