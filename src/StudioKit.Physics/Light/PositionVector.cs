using System.Numerics;

namespace StudioKit.Physics.Light;

/// <summary>As many points of the studio as the machine's vectors hold, coordinate by coordinate [m].</summary>
internal readonly record struct PositionVector(Vector<double> X, Vector<double> Y, Vector<double> Z)
{
    public Position this[int lane] => new(X[lane], Y[lane], Z[lane]);
}
