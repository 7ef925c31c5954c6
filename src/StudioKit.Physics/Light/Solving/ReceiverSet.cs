using System.Numerics;

namespace StudioKit.Physics.Light.Solving;

/// <summary>Points that receive light, coordinate by coordinate, filled up to whole vectors with points far away.</summary>
internal sealed class ReceiverSet
{
    // Some three patches of a box: few enough that they lie together, and enough that asking a block costs little against asking its receivers.
    private const int PerBlock = 32;

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

        Blocks = [.. Enumerable.Range(0, (Count + PerBlock - 1) / PerBlock).Select(block => Block(block * PerBlock))];
    }

    /// <summary>The receivers by neighbours, one block after the other.</summary>
    public ReceiverBlock[] Blocks { get; }

    public int Count { get; }

    public int PaddedCount => X.Length;

    public double[] X { get; }

    public double[] Y { get; }

    public double[] Z { get; }

    public double[] NormalX { get; }

    public double[] NormalY { get; }

    public double[] NormalZ { get; }

    public Position Place(int index) => new(X[index], Y[index], Z[index]);

    /// <summary>As many places from one on as a vector holds.</summary>
    public PositionVector Places(int start) => new(Load(X, start), Load(Y, start), Load(Z, start));

    public Direction Normal(int index) => Direction.Of(NormalX[index], NormalY[index], NormalZ[index]);

    public static Vector<double> Load(double[] values, int start) => new(values, start);

    // What fills the last vector up lies in no block's box.
    private ReceiverBlock Block(int start)
    {
        var (least, most) = (Place(start), Place(start));
        for (var i = start + 1; i < Math.Min(start + PerBlock, Count); i++)
        {
            least = new(Math.Min(least.X, X[i]), Math.Min(least.Y, Y[i]), Math.Min(least.Z, Z[i]));
            most = new(Math.Max(most.X, X[i]), Math.Max(most.Y, Y[i]), Math.Max(most.Z, Z[i]));
        }

        return new ReceiverBlock(start, Math.Min(start + PerBlock, PaddedCount), least, most);
    }
}
