namespace StudioKit.Physics.Light.Obstacles;

/// <summary>The box along an obstacle's own axes that holds all of it.</summary>
/// <param name="Centre">Its middle.</param>
/// <param name="Across">Direction of one pair of faces.</param>
/// <param name="Along">Direction of another pair, square to it.</param>
/// <param name="Axis">Direction of the last pair; the way a long body runs.</param>
/// <param name="Half">Distances of the faces from the middle, across, along and on the axis [m].</param>
internal sealed record ObstacleHull(Position Centre, Direction Across, Direction Along, Direction Axis, (double Across, double Along, double Axis) Half);
