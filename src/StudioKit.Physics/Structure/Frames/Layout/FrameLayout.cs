using UnitsNet;

namespace StudioKit.Physics.Structure.Frames.Layout;

/// <summary>Lays out a frame's centre lines before they are split and cut.</summary>
internal sealed class FrameLayout
{
    private readonly FrameMeasures _measures;
    private readonly LowerRails _lower;

    public FrameLayout(FrameMeasures measures)
    {
        _measures = measures;
        _lower = LowerRails.For(measures);
    }

    public Skeleton Skeleton { get; } = new();

    public List<int> Feet { get; } = [];

    public IReadOnlyList<PlacedCradle> Cradles => _lower.Cradles;

    /// <summary>Joints of the tees that carry flashes, by their places.</summary>
    public Dictionary<FramePoint, int> CradleTees { get; } = [];

    /// <summary>Rails lie flat on the ground, without legs.</summary>
    public bool Flat => _measures.Design.Shape == FrameShape.LowGround && LegTooShort;

    public double RailUp => Flat ? _measures.Lift : _measures.RailUp;

    /// <summary>That legs have no room, where they must have it.</summary>
    public IEnumerable<FrameProblem> Problems => LegTooShort && !Flat
        ? [new(FrameProblemKind.NoRoomForLegs, _measures.Design.Height, _measures.Design.Height + _measures.Design.ShortestFoot - Length.FromMeters(_measures.LegRoom))]
        : [];

    private bool LegTooShort =>
        _measures.LegRoom < _measures.Design.ShortestFoot.Meters;

    public FrameLayout LayOut()
    {
        if (_measures.Design.Shape == FrameShape.SweptTable)
        {
            LayOutSweptTable();
        }
        else
        {
            LayOutTable();
        }

        return this;
    }

    private void LayOutTable()
    {
        var corners = new[]
        {
            At(-_measures.Right, _measures.Front, RailUp), At(_measures.Right, _measures.Front, RailUp),
            At(_measures.Right, _measures.Back, RailUp), At(-_measures.Right, _measures.Back, RailUp),
        };
        Skeleton.Join(FrameMemberRole.CrossRail, corners[0], corners[1]);
        Skeleton.Join(FrameMemberRole.CrossRail, corners[3], corners[2]);
        if (Flat)
        {
            Skeleton.Join(FrameMemberRole.SideRail, corners[0], corners[3]);
            Skeleton.Join(FrameMemberRole.SideRail, corners[1], corners[2]);
            return;
        }

        var middles = MiddleTees();
        Skeleton.Join(FrameMemberRole.SideRail, Between([corners[0], corners[3]], middles.Left));
        Skeleton.Join(FrameMemberRole.SideRail, Between([corners[1], corners[2]], middles.Right));
        JoinLegs(middles, [.. corners.Select(Leg)]);
    }

    private void LayOutSweptTable()
    {
        var fronts = new[] { At(-_measures.Right, _measures.Front, RailUp), At(_measures.Right, _measures.Front, RailUp) };
        var starts = new[] { At(-_measures.Right, _measures.HalfDepth, RailUp), At(_measures.Right, _measures.HalfDepth, RailUp) };
        var posts = new[] { At(-_measures.Right, _measures.Back, RailUp), At(_measures.Right, _measures.Back, RailUp) };
        var tops = new[]
        {
            At(-_measures.Right, _measures.Back, _measures.SweepRailUp), At(_measures.Right, _measures.Back, _measures.SweepRailUp),
        };
        Skeleton.Join(FrameMemberRole.CrossRail, fronts[0], fronts[1]);
        Skeleton.Join(FrameMemberRole.CrossRail, starts[0], starts[1]);
        var middles = MiddleTees();
        Skeleton.Join(FrameMemberRole.SideRail, Between([fronts[0], starts[0], posts[0]], middles.Left));
        Skeleton.Join(FrameMemberRole.SideRail, Between([fronts[1], starts[1], posts[1]], middles.Right));
        Skeleton.Join(FrameMemberRole.SweepRail, tops[0], tops[1]);
        Skeleton.Join(FrameMemberRole.Upright, posts[0], tops[0]);
        Skeleton.Join(FrameMemberRole.Upright, posts[1], tops[1]);
        JoinLegs(middles, Leg(fronts[0]), Leg(fronts[1]), Leg(posts[1]), Leg(posts[0]));
    }

    // Legs in the order front left, front right, back right, back left; each gives a tee for every level, and one for the stretcher across.
    private void JoinLegs((int? Left, int? Right) middles, params ReadOnlySpan<(int[] Sides, int? Across)> legs)
    {
        if (_lower.AcrossUp is not null)
        {
            Skeleton.Join(FrameMemberRole.Stretcher, legs[0].Across!.Value, legs[1].Across!.Value);
            Skeleton.Join(FrameMemberRole.Stretcher, legs[3].Across!.Value, legs[2].Across!.Value);
        }

        var crosses = (Left: MiddleLeg(middles.Left), Right: MiddleLeg(middles.Right));
        for (var i = 0; i < _lower.Levels.Count; i++)
        {
            JoinSides(
                _lower.Levels[i],
                [legs[0].Sides[i], legs[3].Sides[i], .. crosses.Left.Skip(i).Take(1)],
                [legs[1].Sides[i], legs[2].Sides[i], .. crosses.Right.Skip(i).Take(1)]);
        }
    }

    private void JoinSides(LowerLevel level, int[] left, int[] right)
    {
        var rails = level.Rows.Select(row => CradleRail(row, level.Up)).ToList();
        Skeleton.Join(FrameMemberRole.Stretcher, FromFront([.. left, .. rails.Select(rail => rail[0])]));
        Skeleton.Join(FrameMemberRole.Stretcher, FromFront([.. right, .. rails.Select(rail => rail[^1])]));
        foreach (var rail in rails)
        {
            Skeleton.Join(FrameMemberRole.CradleRail, rail);
        }

        foreach (var tee in rails.SelectMany(rail => rail[1..^1]))
        {
            Skeleton.OpenPort(tee, new FramePoint(0, 0, 1));
        }
    }

    // Its tee on the left stretcher, those that carry a flash, its tee on the right one.
    private int[] CradleRail(IReadOnlyList<FramePoint> row, double up)
    {
        var (leftTee, rightTee) = (At(-_measures.Right, row[0].Back, up), At(_measures.Right, row[0].Back, up));
        foreach (var place in row)
        {
            CradleTees.Add(place, Skeleton.Add(place));
        }

        return [leftTee, .. row.Select(place => CradleTees[place]), rightTee];
    }

    private (int? Left, int? Right) MiddleTees() => _measures.Design.MiddleLegs && !Flat && MiddleBack is { } back
        ? (At(-_measures.Right, back, RailUp), At(_measures.Right, back, RailUp))
        : (null, null);

    // The middle of the side rail, moved out of the way of the sweep's first rail and of the cradle's tees; none where there is no room for it.
    private double? MiddleBack
    {
        get
        {
            var room = _measures.Closest(FittingKind.Cross, FittingKind.Tee);
            var middle = (_measures.Front + _measures.Back) / 2;
            List<double> taken = [];
            if (_measures.Design.Shape == FrameShape.SweptTable)
            {
                taken.Add(_measures.HalfDepth);
            }

            taken.AddRange(_lower.Levels.SelectMany(level => level.Rows).Select(row => row[0].Back));
            return taken.SelectMany(back => new[] { back - room, back + room }).Prepend(middle)
                .Where(place => place - _measures.Front >= room && _measures.Back - place >= room && taken.All(back => Math.Abs(place - back) >= room - 1e-9))
                .Select(place => (double?)place)
                .MinBy(place => Math.Abs(place!.Value - middle));
        }
    }

    // The foot under a middle tee, through a cross on every lower stretcher.
    private int[] MiddleLeg(int? top)
    {
        if (top is not { } tee)
        {
            return [];
        }

        var (right, back, _) = Skeleton.Joints[tee];
        int[] crosses = [.. _lower.Levels.Select(level => At(right, back, level.Up))];
        var foot = At(right, back, _measures.FootUp);
        Feet.Add(foot);
        Skeleton.Join(FrameMemberRole.Leg, FromTop([tee, .. crosses, foot]));
        return crosses;
    }

    private (int[] Sides, int? Across) Leg(int top)
    {
        var (right, back, _) = Skeleton.Joints[top];
        int[] sides = [.. _lower.Levels.Select(level => At(right, back, level.Up))];
        int? across = _lower.AcrossUp is { } acrossUp ? At(right, back, acrossUp) : null;
        var foot = At(right, back, _measures.FootUp);
        Feet.Add(foot);
        Skeleton.Join(FrameMemberRole.Leg, FromTop([top, .. sides, .. across is { } tee ? [tee] : Array.Empty<int>(), foot]));

        return (sides, across);
    }

    // Joints of a line along the camera's view with one more put in its place.
    private int[] Between(int[] line, int? more) => more is { } joint ? FromFront([.. line, joint]) : line;

    private int[] FromFront(int[] joints) => [.. joints.OrderBy(joint => Skeleton.Joints[joint].Back)];

    private int[] FromTop(int[] joints) => [.. joints.OrderByDescending(joint => Skeleton.Joints[joint].Up)];

    private int At(double right, double back, double up) => Skeleton.Add(new FramePoint(right, back, up));
}
