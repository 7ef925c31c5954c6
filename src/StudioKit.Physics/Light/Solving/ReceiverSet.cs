using System.Numerics;

namespace StudioKit.Physics.Light.Solving;

/// <summary>Points that receive light, coordinate by coordinate, filled up to whole vectors with points far away.</summary>
internal sealed class ReceiverSet
{
    public ReceiverSet(IReadOnlyList<(Position Place, Direction Normal)> points)
    {
        Count = points.Count;
        var size = VectorMath.Padded(Count);
        (X, Y, Z) = (new double[size], new double[size], new double[size]);
        (NormalX, NormalY, NormalZ) = (new double[size], new double[size], new double[size]);
        for (var i = 0; i < size; i++)
        {
            var (place, normal) = i < Count ? points[i] : (new Position(0, 0, -1e9), -Direction.Up);
            (X[i], Y[i], Z[i]) = (place.X, place.Y, place.Z);
            (NormalX[i], NormalY[i], NormalZ[i]) = (normal.X, normal.Y, normal.Z);
        }
    }

    public int Count { get; }

    public int PaddedCount => X.Length;

    public double[] X { get; }

    public double[] Y { get; }

    public double[] Z { get; }

    public double[] NormalX { get; }

    public double[] NormalY { get; }

    public double[] NormalZ { get; }

    public Position Place(int index) => new(X[index], Y[index], Z[index]);

    public Direction Normal(int index) => Direction.Of(NormalX[index], NormalY[index], NormalZ[index]);

    public static Vector<double> Load(double[] values, int start) => new(values, start);
}
