namespace StudioKit.Physics.Structure.Uprights;

/// <summary>What a gust does to the worse of the two poles.</summary>
/// <remarks>A sheet that leans is lain on by wind and weight together when the wind comes from its front, which is the worse way.</remarks>
internal readonly struct UprightPush
{
    public UprightPush(UprightShape shape, double gust)
    {
        var pressure = SignboardWind.Pressure(gust);
        Pressure = pressure;
        OnSheet = (SignboardWind.PoleShare(shape.Width, shape.Spacing) * pressure * shape.Width * shape.Height) + (shape.SheetWeight / 2 * Math.Sin(shape.Lean));
        OnPole = (Wind.Pressure(gust) * Wind.PipeDrag * shape.Diameter * shape.Foot) + (shape.PipeWeight * shape.Foot * Math.Sin(shape.Lean));
        PoleInSheet = shape.PipeWeight * shape.Height * Math.Sin(shape.Lean);
        Height = shape.Foot / 2;
        Middle = shape.Middle;
        (Foot, Top) = (shape.Foot, shape.Top);
    }

    /// <summary>Wind across the sheet [Pa].</summary>
    public double Pressure { get; }

    /// <summary>All of it, across the pole [N].</summary>
    public double Force => Through + OnPole;

    /// <summary>What the stretch behind the sheet brings [N].</summary>
    public double Through => OnSheet + PoleInSheet;

    private double OnSheet { get; }

    private double OnPole { get; }

    private double PoleInSheet { get; }

    private double Height { get; }

    private double Middle { get; }

    private double Foot { get; }

    private double Top { get; }

    /// <summary>Moment about a place under the pole's foot.</summary>
    /// <param name="under">How far under it, along the pole [m].</param>
    /// <returns>[N·m].</returns>
    public double MomentAbout(double under) => (Through * (Middle + under)) + (OnPole * (Height + under));

    /// <summary>Bending moment in the pole at a height, of what lies behind the sheet.</summary>
    /// <param name="height">How far over its foot, along the pole [m].</param>
    /// <returns>[N·m].</returns>
    public double MomentAt(double height)
    {
        var from = Math.Clamp(height, Foot, Top);
        return Through * (Top - from) / (Top - Foot) * (((from + Top) / 2) - Math.Min(height, Top));
    }
}
