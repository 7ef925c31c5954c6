namespace StudioKit.Physics.Structure.Uprights;

/// <summary>Whether ground, feet and cords hold the worse pole: what is asked, with the safety factor, and what they give.</summary>
internal sealed class UprightHold(UprightCase upright, UprightShape shape)
{
    // Of the cords half are to windward, and of those half on the worse pole.
    private const int CordsPerHold = 4;

    /// <summary>Moment about the tip of a stake, or about the end of a foot [N·m].</summary>
    public (double Demand, double Capacity) Tipping(double gust) => upright.Footing == UprightFooting.Stakes ? OnStakes(gust) : OnFeet(gust);

    /// <summary>Level push on a foot [N].</summary>
    public (double Demand, double Capacity) Sliding(double gust)
    {
        var slope = Slope;
        var demand = new UprightPush(shape, gust).Force + (HalfWeight * Math.Sin(slope));
        var cord = CordHold;
        return (upright.WindSafety * demand, (Guard.Positive(upright.Friction, nameof(upright.Friction)) * ((HalfWeight * Math.Cos(slope)) + cord)) + cord);
    }

    /// <summary>Level pull at the worse pole's top that its windward cords hold, and as much straight down [N].</summary>
    public double CordHold => upright.Cords / CordsPerHold * Guys.SidewaysHold(Guard.NonNegative(upright.PegHold.Newtons, nameof(upright.PegHold)));

    private (double Demand, double Capacity) OnStakes(double gust)
    {
        var depth = upright.StakeDepth.Meters;
        var ground = StakeInGround.MomentAboutTip(upright.StakeHold.Newtons, upright.StakePulledAt.Meters, depth);

        // A cord draws the top forward and down; down helps a pole that leans back to fall.
        var cords = CordHold * (shape.Top + depth) * (Math.Cos(shape.Lean) - Math.Sin(shape.Lean));
        return (upright.WindSafety * new UprightPush(shape, gust).MomentAbout(depth), ground + cords);
    }

    private (double Demand, double Capacity) OnFeet(double gust)
    {
        var (arm, slope) = (Guard.Positive(upright.FootLength.Meters, nameof(upright.FootLength)) / 2, Slope);
        var high = ((shape.SheetWeight / 2 * shape.Middle) + (shape.PipeWeight * shape.Top * shape.Top / 2)) * Math.Sin(slope);
        var held = (HalfWeight * Math.Cos(slope) * arm) + (CordHold * (shape.Top + arm));
        return (upright.WindSafety * (new UprightPush(shape, gust).MomentAbout(0) + high), held);
    }

    private double Slope => Guard.Between(upright.Slope.Radians, 0, Math.PI / 4, nameof(upright.Slope));

    // One pole with its foot and half of the rest.
    private double HalfWeight => (shape.SheetWeight / 2) + (shape.PipeWeight * shape.Top)
        + ((upright.FeetMass + upright.Ballast).Kilograms * PanelSag.Gravity / 2);
}
