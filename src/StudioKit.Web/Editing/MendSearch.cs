using StudioKit.Web.Results;

namespace StudioKit.Web.Editing;

/// <summary>How the search for a change that mends a check stands.</summary>
/// <param name="Answer">What came of it; none while it goes on, or where it failed.</param>
/// <param name="Fault">What went wrong in the worker; empty where nothing did.</param>
public sealed record MendSearch(MendAnswer? Answer, string Fault);
