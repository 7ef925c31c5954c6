namespace StudioKit.Web.Results;

/// <summary>What one framing sees of the lit panel, place by place.</summary>
/// <param name="Margins">White margin of the map's points in stops, row by row from the front, each from left to right.</param>
/// <param name="Views">Each camera angle.</param>
public sealed record FramingMap(IReadOnlyList<double> Margins, IReadOnlyList<SeenView> Views);
