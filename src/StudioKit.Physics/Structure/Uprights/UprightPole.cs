using StudioKit.Physics.Structure.Checks;

namespace StudioKit.Physics.Structure.Uprights;

/// <summary>How the worse pole bends.</summary>
/// <remarks>Cords hold the top somewhere between a foot that does not turn and one that turns freely; each moment is taken from the case where it is the greater.</remarks>
internal sealed class UprightPole(UprightCase upright, UprightShape shape, PipeWarmth warmth, UprightHold hold)
{
    /// <summary>Greatest bending moment [N·m].</summary>
    public double Moment(double gust)
    {
        var push = new UprightPush(shape, gust);
        var free = push.MomentAbout(0);
        if (hold.CordHold <= 0)
        {
            return free + InGround(push);
        }

        var pulled = Math.Min(hold.CordHold, free / shape.Top);
        return Math.Max(free - (StiffPull(push) * shape.Top) + InGround(push), Between(push, pulled));
    }

    /// <summary>Moment that the pipe bears, by its strength at the day's warmth [N·m].</summary>
    public double Strength =>
        warmth.StrengthFactor * upright.Pipe.Strength.Pascals * PipeSection.Modulus(upright.Pipe.OutsideDiameter.Meters, upright.Pipe.Wall.Meters);

    /// <summary>How far its top leans [m]; from a joint that turns and a pole that bends, less what cords hold.</summary>
    public double Lean(double gust)
    {
        var push = new UprightPush(shape, gust);
        return Math.Max(0, Bent(push) - (StiffPull(push) * Math.Pow(shape.Top, 3) / (3 * warmth.Stiffness)) + (FootTurn(push) * shape.Top) + CouplingTurns(push));
    }

    /// <summary>Push on the bar under the rail [N].</summary>
    public double BarPush(double gust) => upright.RailToBar.Meters > 0 ? new UprightPush(shape, gust).MomentAbout(0) / upright.RailToBar.Meters : 0;

    private double Bent(UprightPush push) => PoleBending.UniformToTop(push.Through / shape.Height, shape.Foot, shape.Top, warmth.Stiffness);

    // With a foot that does not turn, cords keep the top where it is as far as they hold.
    private double StiffPull(UprightPush push) => hold.CordHold > 0 ? Math.Min(hold.CordHold, PoleBending.PullOfTop(Bent(push), shape.Top, warmth.Stiffness)) : 0;

    // Where the shear over a pull at the top is nought, if that lies behind the sheet.
    private double Between(UprightPush push, double pull)
    {
        var load = push.Through / shape.Height;
        var down = load > 0 ? Math.Min(shape.Height, pull / load) : 0;
        return (pull * down) - (load * down * down / 2);
    }

    private double InGround(UprightPush push)
    {
        if (upright.Footing != UprightFooting.Stakes)
        {
            return 0;
        }

        var depth = upright.StakeDepth.Meters;
        var ground = StakeInGround.MomentAboutTip(upright.StakeHold.Newtons, upright.StakePulledAt.Meters, depth);
        return StakeInGround.GreatestMoment(push.Force, 0, StakeInGround.DepthOfGreatestMoment(push.Force, ground, depth));
    }

    // Each coupling turns by the moment in it and leans what is over it.
    private double CouplingTurns(UprightPush push) => upright.Couplings.Select(coupling => Guard.NonNegative(coupling.Meters, nameof(upright.Couplings))).Where(at => at < shape.Top).Sum(at =>
        Math.Max(0, push.MomentAt(at) - (StiffPull(push) * (shape.Top - at))) / Guard.Positive(upright.JointStiffness.NewtonMetersPerRadian, nameof(upright.JointStiffness)) * (shape.Top - at));

    private double FootTurn(UprightPush push)
    {
        var moment = Math.Max(0, push.MomentAbout(0) - (StiffPull(push) * shape.Top));
        return upright.Footing switch
        {
            UprightFooting.Feet => moment / Guard.Positive(upright.JointStiffness.NewtonMetersPerRadian, nameof(upright.JointStiffness)),
            UprightFooting.Frame => PoleBending.EndTurn(moment, upright.RailToBar.Meters, warmth.Stiffness),
            _ => 0,
        };
    }
}
