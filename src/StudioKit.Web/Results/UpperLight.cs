namespace StudioKit.Web.Results;

/// <summary>A flash above or beside, which the kit gives a distance and no direction.</summary>
/// <param name="Flash">Its name.</param>
/// <param name="Key">Path of its light in the kit.</param>
/// <param name="Name">Flash and what it does, in words.</param>
/// <param name="Distance">To the subject in millimetres.</param>
/// <param name="Text">The distance as it is said.</param>
public sealed record UpperLight(string Flash, string Key, string Name, double Distance, string Text);
