namespace StudioKit.Web.Results;

/// <summary>A frame of a power ladder.</summary>
/// <param name="Picture">The picture's key.</param>
/// <param name="Power">Power that the lower flash was set to, e.g. 1/16.</param>
public sealed record LadderRung(string Picture, string Power);
