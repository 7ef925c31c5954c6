namespace StudioKit.Physics.Light.Solving;

/// <summary>Neighbours of a set of receivers, so that what holds for all of them is asked once.</summary>
/// <param name="Start">Place of the first [1].</param>
/// <param name="End">Place after the last, up to a whole vector [1].</param>
/// <param name="Least">Least coordinates.</param>
/// <param name="Most">Greatest coordinates.</param>
internal readonly record struct ReceiverBlock(int Start, int End, Position Least, Position Most)
{
    /// <summary>Middle of the box that holds them.</summary>
    public Position Middle => Position.Between(Least, Most, 0.5);

    /// <summary>No receiver is further from the middle [m].</summary>
    public double Reach => Middle.DistanceTo(Most);

    /// <summary>How far the block reaches from a place in a direction; less than nothing where all of it lies behind [m].</summary>
    public double Ahead(Position place, Direction direction) =>
        (direction.X * ((direction.X > 0 ? Most.X : Least.X) - place.X))
        + (direction.Y * ((direction.Y > 0 ? Most.Y : Least.Y) - place.Y))
        + (direction.Z * ((direction.Z > 0 ? Most.Z : Least.Z) - place.Z));
}
