namespace StudioKit.Physics.Structure.Uprights;

/// <summary>How the sheet bends between its poles: a plate on two edges.</summary>
internal sealed class UprightBow
{
    private readonly Sheet _sheet;
    private readonly UprightShape _shape;
    private readonly double _thickness;
    private readonly double _moment;
    private readonly double _sag;

    public UprightBow(UprightCase upright, UprightShape shape)
    {
        (_sheet, _shape) = (upright.Sheet, shape);
        _thickness = Guard.Positive(_sheet.Thickness.Meters, nameof(upright.Sheet));
        var breadth = Math.Max(TwoEdgePlate.Narrowest, shape.Height / shape.Spacing);
        var (moment, sag) = (TwoEdgePlate.UniformMoment(breadth, _sheet.PoissonRatio), TwoEdgePlate.UniformSag(breadth, _sheet.PoissonRatio));
        (_moment, _sag) = (Math.Max(moment.Centre, moment.FreeEdge), Math.Max(sag.Centre, sag.FreeEdge));
    }

    /// <summary>Load of its own weight across it, where it leans [Pa].</summary>
    public double OwnLoad => _shape.SheetWeight * Math.Sin(_shape.Lean) / (_shape.Width * _shape.Height);

    /// <summary>Load of gust and weight together [Pa].</summary>
    public double Load(double gust) => SignboardWind.Pressure(gust) + OwnLoad;

    /// <summary>Greatest stress under a load [Pa], where the sheet is as thin as its standard lets it be [Pa].</summary>
    public double Stress(double load)
    {
        var least = SheetThickness.Least(_thickness, _sheet.Making);
        return 6 * _moment * load * _shape.Spacing * _shape.Spacing / (least * least);
    }

    /// <summary>Greatest bow under a load [Pa], at its nominal thickness [m].</summary>
    public double Bow(double load) => _sag * load * Math.Pow(_shape.Spacing, 4) / PlateBending.Rigidity(_sheet.YoungsModulus.Pascals, _thickness, _sheet.PoissonRatio);
}
