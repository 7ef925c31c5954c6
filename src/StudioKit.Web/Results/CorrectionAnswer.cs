namespace StudioKit.Web.Results;

/// <summary>What a correction file holds.</summary>
/// <param name="KitName">Name of the kit that was measured; empty where the file cannot be used.</param>
/// <param name="Said">What it holds, in words.</param>
/// <param name="Problem">Why it cannot be used; empty where it can.</param>
public sealed record CorrectionAnswer(string KitName, string Said, string Problem);
