namespace StudioKit.Physics.Structure.Frames.Layout;

/// <summary>The lengths [m] that every layout starts from.</summary>
internal sealed record FrameMeasures
{
    public FrameMeasures(FrameCase design)
    {
        Design = design;
        Seat = design.Shape == FrameShape.SweptTable ? PanelSeat.OverRails : design.Seat;
        var diameter = design.Pipe.OutsideDiameter.Meters;
        Height = design.Height.Meters;
        HalfDepth = design.PanelDepth.Meters / 2;
        Lift = (diameter / 2) + design.Pad.Meters;
        var outward = Seat == PanelSeat.OverRails ? -diameter / 2 : (diameter / 2) + design.EdgeClearance.Meters;
        Right = (design.PanelWidth.Meters / 2) + outward;
        Front = -HalfDepth - outward;
        Back = design.Shape == FrameShape.SweptTable ? SweepRailBack : HalfDepth + outward;
        RailUp = Seat == PanelSeat.OverRails ? Height - Lift : Height;
        Travel = Math.Tan(design.Slope.Radians) * Math.Sqrt(Math.Pow(2 * Right, 2) + Math.Pow(Back - Front, 2));
        UsableTravel = Math.Min(Travel, design.FootTravel.Meters);
        LegRoom = RailUp - Closest(FittingKind.Corner, FittingKind.Cap);
        FootUp = Math.Max(0, Math.Min(design.ShortestFoot.Meters + (UsableTravel / 2), LegRoom));
    }

    public FrameCase Design { get; }

    public PanelSeat Seat { get; }

    /// <summary>Panel's underside over the ground.</summary>
    public double Height { get; }

    public double HalfDepth { get; }

    /// <summary>Sheet's underside over a rail's centre line, square to the sheet.</summary>
    public double Lift { get; }

    public double Right { get; }

    public double Front { get; }

    /// <summary>Rear legs or posts.</summary>
    public double Back { get; }

    public double RailUp { get; }

    /// <summary>Foot travel that takes up the slope, whichever way it falls.</summary>
    public double Travel { get; }

    /// <summary>The part of it that the feet's screws give.</summary>
    public double UsableTravel { get; }

    /// <summary>Highest cap floor under which a leg still fills both its sockets.</summary>
    public double LegRoom { get; }

    /// <summary>Cap floor over level ground.</summary>
    public double FootUp { get; }

    public double SweepRailBack => HalfDepth + ((SweepRadius + Lift) * Math.Sin(Design.SweepAngle.Radians));

    public double SweepRailUp =>
        Height + (SweepRadius * (1 - Math.Cos(Design.SweepAngle.Radians))) - (Lift * Math.Cos(Design.SweepAngle.Radians));

    public double SheetLength =>
        (2 * HalfDepth) + (Design.Shape == FrameShape.SweptTable ? SweepRadius * Design.SweepAngle.Radians : 0);

    private double SweepRadius => Design.SweepRadius?.Meters ?? 0;

    /// <summary>Lowest place of a tee on a leg.</summary>
    public double LowestTee => FootUp + Closest(FittingKind.Cap, FittingKind.Tee);

    /// <summary>Highest place of a tee on a leg.</summary>
    public double HighestTee => RailUp - Closest(FittingKind.Corner, FittingKind.Tee);

    /// <summary>Least distance between two joints so that both sockets are filled.</summary>
    public double Closest(FittingKind first, FittingKind second)
    {
        var (a, b) = (Design.Fittings.Of(first), Design.Fittings.Of(second));
        return (a.TakeOff + a.SocketDepth + b.TakeOff + b.SocketDepth).Meters;
    }
}
