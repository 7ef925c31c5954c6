namespace StudioKit.Physics.Structure.Frames.Layout;

/// <summary>A pair of side stretchers and the cradle rails between them.</summary>
/// <param name="Up">Centre line of the stretchers [m].</param>
/// <param name="Rows">Tees of each rail across, one rail a row, from left to right; none where the stretchers carry no flash.</param>
internal sealed record LowerLevel(double Up, IReadOnlyList<IReadOnlyList<FramePoint>> Rows);
