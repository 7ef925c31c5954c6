namespace StudioKit.Physics.Structure.Uprights;

/// <summary>Sheet and poles of an upright sheet in SI, checked.</summary>
internal sealed class UprightShape
{
    // Common practice, no source: clips no further apart than a hand's length, near enough that the edge between them stays straight, and a finger's breadth off the corners.
    private const double WidestClips = 0.2;
    private const double ClipsPerSpan = 3;
    private const double OffCorner = 0.02;

    public UprightShape(UprightCase upright)
    {
        ArgumentNullException.ThrowIfNull(upright);
        Width = Guard.Positive(upright.Width.Meters, nameof(upright.Width));
        Height = Guard.Positive(upright.Height.Meters, nameof(upright.Height));
        Lean = Guard.Between(upright.Lean.Radians, 0, Math.PI / 4, nameof(upright.Lean));
        Foot = Guard.NonNegative(upright.LowerEdge.Meters, nameof(upright.LowerEdge)) / Math.Cos(Lean);
        Diameter = upright.Pipe.OutsideDiameter.Meters;
        SheetWeight = Guard.NonNegative(upright.SheetMass.Kilograms, nameof(upright.SheetMass)) * PanelSag.Gravity;
        PipeWeight = PipeMass.PerMetre(upright.Pipe) * PanelSag.Gravity;
        var warming = Math.Max(0, upright.Air.DegreesCelsius + Guard.NonNegative(upright.SunWarming.DegreesCelsius, nameof(upright.SunWarming)) - upright.Built.DegreesCelsius);
        Play = ThermalGrowth.EdgeRoom(
            upright.Sheet.ThermalExpansion.PerKelvin, upright.Footing == UprightFooting.Frame ? upright.Pipe.ThermalExpansion.PerKelvin : 0, Width, warming);
    }

    /// <summary>Side from pole to pole [m].</summary>
    public double Width { get; }

    /// <summary>Side along the poles [m].</summary>
    public double Height { get; }

    /// <summary>Lean from upright [rad].</summary>
    public double Lean { get; }

    /// <summary>Ground or rail to the sheet's lower edge, along a pole [m].</summary>
    public double Foot { get; }

    /// <summary>Ground or rail to the sheet's middle, along a pole [m].</summary>
    public double Middle => Foot + (Height / 2);

    /// <summary>Ground or rail to the poles' tops [m].</summary>
    public double Top => Foot + Height;

    /// <summary>Outside diameter of a pole [m].</summary>
    public double Diameter { get; }

    /// <summary>Weight of the sheet [N].</summary>
    public double SheetWeight { get; }

    /// <summary>Weight of a metre of pole [N/m].</summary>
    public double PipeWeight { get; }

    /// <summary>Room to grow at either side edge [m].</summary>
    public double Play { get; }

    /// <summary>Poles from middle to middle: the sheet's edges end flush with their outsides but for the play; never nearer than pipes that touch [m].</summary>
    public double Spacing => Math.Max(Diameter, Width - Diameter - (2 * Play));

    /// <summary>Clips on each pole [1].</summary>
    public int Clips => Math.Max(2, 1 + (int)Math.Ceiling((ClippedHeight / Math.Min(WidestClips, Spacing / ClipsPerSpan)) - 1e-9));

    /// <summary>Clip to clip [m].</summary>
    public double ClipSpacing => ClippedHeight / (Clips - 1);

    private double ClippedHeight => Math.Max(Height / 2, Height - (2 * OffCorner));
}
