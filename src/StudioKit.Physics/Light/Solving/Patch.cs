namespace StudioKit.Physics.Light.Solving;

/// <summary>One quadrilateral of a surface, its corners in order about the side that faces the light.</summary>
internal readonly record struct Patch(BoxFace Face, Position A, Position B, Position C, Position D, double Reflectance)
{
    public Direction Normal => Direction.From(A, C).Cross(Direction.From(B, D));

    public Position Centre => At(0.5, 0.5);

    /// <summary>Half the cross product of the diagonals [m²].</summary>
    public double Area
    {
        get
        {
            var (ux, uy, uz) = (C.X - A.X, C.Y - A.Y, C.Z - A.Z);
            var (vx, vy, vz) = (D.X - B.X, D.Y - B.Y, D.Z - B.Z);
            var (x, y, z) = ((uy * vz) - (uz * vy), (uz * vx) - (ux * vz), (ux * vy) - (uy * vx));
            return Math.Sqrt((x * x) + (y * y) + (z * z)) / 2;
        }
    }

    /// <summary>The point at two shares of the sides.</summary>
    public Position At(double s, double t) =>
        Position.Between(Position.Between(A, B, s), Position.Between(D, C, s), t);
}
