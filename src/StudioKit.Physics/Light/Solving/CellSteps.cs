namespace StudioKit.Physics.Light.Solving;

/// <summary>Which lengths lie between the edges of two cells: from the far edge of the one to the near of the other and so on, as the sum over corners takes them.</summary>
internal readonly record struct CellSteps(int FarNear, int NearNear, int FarFar, int NearFar)
{
    /// <summary>The sum over the corners of two parallel patches, of a table of one function by these lengths and those along the other side.</summary>
    public double Sum(CellSteps along, double[] corners, int columns) =>
        along.Sum(corners, FarNear * columns) - along.Sum(corners, NearNear * columns) - along.Sum(corners, FarFar * columns) + along.Sum(corners, NearFar * columns);

    /// <summary>The sum over the ends of one side.</summary>
    public double Sum(double[] corners, int start) =>
        corners[start + FarNear] - corners[start + NearNear] - corners[start + FarFar] + corners[start + NearFar];
}
