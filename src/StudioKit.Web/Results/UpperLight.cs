namespace StudioKit.Web.Results;

/// <summary>A flash above or beside.</summary>
/// <param name="Flash">Its name.</param>
/// <param name="Key">Path of its light in the kit.</param>
/// <param name="Distance">To the subject in millimetres.</param>
/// <param name="Text">The distance as it is said.</param>
/// <param name="At">Where it stands in the side view.</param>
/// <param name="Way">How far it goes in the side view, to the right and up, for each millimetre that it goes further from the subject; less than one where it stands aside.</param>
public sealed record UpperLight(string Flash, string Key, double Distance, string Text, Spot At, Spot Way);
