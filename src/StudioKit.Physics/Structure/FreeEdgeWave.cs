namespace StudioKit.Physics.Structure;

/// <summary>One harmonic of a plate that rests on two opposite edges: what its free edges add to an endless strip, A·cosh t + B·t·sinh t with t = mπy/a.</summary>
/// <remarks>A and B are scaled by cosh α, so that wide plates stay finite; sag in units of the strip's own, moments in units of D·(mπ/a)².</remarks>
internal readonly struct FreeEdgeWave
{
    private readonly double _nu;
    private readonly double _tanh;
    private readonly double _a;
    private readonly double _b;

    // moment and reaction are what is left over at the free edge without A and B, in the same units.
    private FreeEdgeWave(double alpha, double nu, double moment, double reaction)
    {
        (Alpha, _nu, _tanh) = (alpha, nu, Math.Tanh(alpha));
        var away = 1 - nu;
        _b = -((moment * _tanh) + reaction) / (((3 + nu) * _tanh) - (away * alpha * Sech * Sech));
        _a = (-moment - (_b * (2 + (away * alpha * _tanh)))) / away;
    }

    /// <summary>mπb/2a [1].</summary>
    public double Alpha { get; }

    /// <summary>What is added to the sag at the centre.</summary>
    public double CentreSag => _a * Sech;

    /// <summary>What is added to the sag of a free edge.</summary>
    public double EdgeSag => _a + (_b * Alpha * _tanh);

    /// <summary>What is added to the moment along the span at the centre.</summary>
    public double CentreMoment => ((_a * (1 - _nu)) - (2 * _nu * _b)) * Sech;

    /// <summary>What is added to the moment along the span at a free edge.</summary>
    public double EdgeMoment => EdgeSag - (_nu * (_a + (_b * (2 + (Alpha * _tanh)))));

    private double Sech => 1 / Math.Cosh(Alpha);

    /// <summary>Under a uniform load, whose strip is bent to 1 all along.</summary>
    public static FreeEdgeWave Uniform(int m, double breadth, double nu) => new(m * Math.PI * breadth / 2, nu, -nu, 0);

    /// <summary>Under a load at the centre, whose strip is bent to (1 + t)·e^(−t).</summary>
    public static FreeEdgeWave Central(int m, double breadth, double nu)
    {
        var alpha = m * Math.PI * breadth / 2;
        var far = Math.Exp(-alpha);
        return new FreeEdgeWave(alpha, nu, far * (alpha - 1 - (nu * (1 + alpha))), far * (2 + ((1 - nu) * alpha)));
    }
}
