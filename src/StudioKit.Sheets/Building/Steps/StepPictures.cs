using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning;
using StudioKit.Planning.Studio;
using StudioKit.Planning.Studio.Assembling;
using StudioKit.Sheets.Building.Solids;
using StudioKit.Sheets.Drawings;
using StudioKit.Wording;

namespace StudioKit.Sheets.Building.Steps;

/// <summary>What each step of putting a frame up is drawn as.</summary>
internal sealed class StepPictures(Plan plan, FramePlan frame)
{
    private const double Wide = 82;
    private const double LegsTall = 92;
    private const double Tall = 60;
    private const double Low = 56;
    private const double FeetTall = 44;
    private const double PackingWide = 39;
    private const double PackingTall = 36;
    private const int ManyNames = 8;
    private const double Lift = 0.14;
    private const double OffGround = 0.01;
    private static readonly Stroke Cord = new(0.5);
    private readonly FrameParts _parts = new(frame);

    /// <summary>The drawing of a step.</summary>
    public Drawing Of(AssemblyStep step)
    {
        var says = $"{AssemblyText.Title(step)}: {AssemblyText.Of(step, frame.Geometry)}";
        return step switch
        {
            AssemblyStep.MarkPieces marks => PieceMarks.Of(frame, marks, says),
            AssemblyStep.FoldSoftbox fold => FoldDrawing.Of(fold.Box, says),
            _ => StepDrawing.Of(AssemblyText.Title(step), says, Picture(step), Wide, HeightOf(step)),
        };
    }

    // Many names need more room.
    private static double HeightOf(AssemblyStep step) => step switch
    {
        AssemblyStep.BuildLegs => LegsTall,
        AssemblyStep.FitFeet => FeetTall,
        { Runs.Count: 0 } => Low,
        _ => step.Joints.Count + step.Members.Count > ManyNames ? LegsTall : Tall,
    };

    /// <summary>The drawing of a packing step: what goes is heavy, its arrows point the way it is pulled; none where nothing is taken off.</summary>
    public Drawing? Of(PackingStep step)
    {
        AssemblyStep? undone = step switch
        {
            PackingStep.TakeSkirts => Built<AssemblyStep.HangSkirts>(),
            PackingStep.TakeFlashes => Built<AssemblyStep.PutFlash>(),
            PackingStep.TakePanel => Built<AssemblyStep.LayPanel>(),
            PackingStep.EmptyBallast => Built<AssemblyStep.HangBallast>(),
            PackingStep.DrawPegs => Built<AssemblyStep.DrivePegs>(),
            PackingStep.PullPins => Built<AssemblyStep.PinJoints>(),
            PackingStep.PartSides => Built<AssemblyStep.CloseFrame>(),
            PackingStep.PartLegs part => frame.Assembly.OfType<AssemblyStep.JoinSide>().First(side => side.Side == part.Side),
            PackingStep.ShortenFeet => Built<AssemblyStep.FitFeet>(),
            _ => null,
        };
        if (undone is null)
        {
            return null;
        }

        var picture = Picture(undone with { WrongWays = [] });
        for (var i = 0; i < picture.Pushes.Count; i++)
        {
            picture.Pushes[i] = picture.Pushes[i] with { Way = -1 * picture.Pushes[i].Way };
        }

        picture.Larger = null;
        picture.Names.Clear();
        return StepDrawing.Of(AssemblyText.Title(undone), AssemblyText.Of(step), picture, PackingWide, PackingTall);
    }

    private AssemblyStep? Built<T>()
        where T : AssemblyStep => frame.Assembly.OfType<T>().FirstOrDefault();

    private StepPicture Picture(AssemblyStep step)
    {
        var scene = new StepScene(_parts);
        var picture = step switch
        {
            AssemblyStep.FitFeet feet => Feet(feet),
            AssemblyStep.BuildLegs legs => scene.Legs(legs),
            AssemblyStep.JoinSide side => scene.Side(side),
            AssemblyStep.PushAcross across => scene.Across(across),
            AssemblyStep.CloseFrame close => scene.Close(close),
            AssemblyStep.PinJoints pins => Pins(scene, pins),
            AssemblyStep.SetOnFeet set => SetDown(scene, set),
            AssemblyStep.HangBallast => Ballast(scene),
            AssemblyStep.DrivePegs pegs => Pegs(scene, pegs),
            AssemblyStep.LayStrips strips => Strips(scene, strips.Ledge),
            AssemblyStep.LayPanel => LaidPanel(scene),
            AssemblyStep.PutFlash put => Flash(scene, put.Flash),
            AssemblyStep.TestFlash => Test(scene),
            AssemblyStep.HangSkirts => Skirts(scene),
            _ => throw new ArgumentOutOfRangeException(nameof(step), step, "A step without a drawing."),
        };
        picture.Larger = Larger;
        foreach (var wrong in step.WrongWays)
        {
            picture.Insets.Add((() => Wrong(wrong), AssemblyText.Wrong(wrong)));
        }

        return picture;
    }

    // A piece between the ends of its two sockets.
    private List<Primitive> Larger(string label)
    {
        var member = _parts.Member(label);
        var (from, to) = (_parts.Joint(member.From), _parts.Joint(member.To));
        var way = (1 / (to.Position - from.Position).Norm) * (to.Position - from.Position);
        var camera = new Camera(FrameView.Isometric, 1);
        List<Solid> bodies =
        [
            SocketEnd(from, way).In(camera, Ink.Standing, false, true),
            SocketEnd(to, -1 * way).In(camera, Ink.Standing, false, true),
            .. _parts.Piece(member, default, false, false) is { } piece ? [piece.In(camera, Ink.Added, true, true)] : Array.Empty<Solid>(),
        ];
        return [.. FarFirst.Order(bodies, camera).SelectMany(body => body.Marks)];
    }

    private PipeBody SocketEnd(FrameJoint joint, FramePoint way)
    {
        var depth = frame.InsertionDepths[joint.Kind].Meters;
        var edge = joint.Position + ((_parts.ToPipeEnd(joint.Kind) - 0.008) * way);
        return new PipeBody(edge - (depth * way), edge, _parts.Outer, _parts.Radius, []);
    }

    private List<Primitive> Wrong(WrongWay wrong)
    {
        var camera = new Camera(FrameView.Isometric, 1);
        return wrong.Kind switch
        {
            WrongWayKind.Turned => Turned(camera, _parts.Joint(wrong.Joint!), [.. wrong.Sockets.Select(SocketDirections.Vector)]),
            WrongWayKind.FootLong => CapWithFoot(camera, 1.8 * Math.Max(0.03, frame.Geometry.Feet[0].LevelExtension.Meters)),
            _ => [.. new BoxBody(default, new FramePoint(0.1, 0.1, 0.006)).In(camera, Ink.Added, Fill.LightGrey).Marks, new Label(camera.At(new FramePoint(0.05, 0.05, 0.006)), "gloss", 8, TextAnchor.Middle)],
        };
    }

    // The pipe that holds it stays; the sockets turn about it.
    private List<Primitive> Turned(Camera camera, FrameJoint joint, List<FramePoint> ways)
    {
        var body = _parts.Body(joint.Kind, default, ways);
        var held = joint.Ports.Select(port => port.Direction).Where(way => ways.Exists(other => other.Dot(way) > 0.99)).ToList();
        var stubs = held.Select(way => new PipeBody(body.Reach * way, (body.Reach + (2.2 * _parts.Outer)) * way, _parts.Radius, 0.8 * _parts.Radius, []).In(camera, Ink.Standing, false, true));
        return [.. FarFirst.Order([body.In(camera, Ink.Added, way => !held.Exists(other => other.Dot(way) > 0.99)), .. stubs], camera).SelectMany(solid => solid.Marks)];
    }

    private List<Primitive> CapWithFoot(Camera camera, double extension)
    {
        var floor = new FramePoint(0, 0, extension);
        var cap = _parts.Body(FittingKind.Cap, floor, [new FramePoint(0, 0, 1)]);
        var tip = new Tube(default, new FramePoint(0, 0, 0.008), 0.5 * _parts.Outer);
        return
        [
            tip.Outline(camera, Ink.Added), .. tip.End(camera, Ink.Added, 0),
            new Tube(new FramePoint(0, 0, 0.008), floor, 0.004).Outline(camera, Ink.Added), .. cap.In(camera, Ink.Added, _ => true).Marks,
        ];
    }

    private StepPicture Feet(AssemblyStep.FitFeet step)
    {
        var picture = new StepPicture { SaysFront = false };
        var level = Math.Max(0.012, step.Level.Meters);
        var middle = new FramePoint(0, 0, level);
        var cap = _parts.Body(FittingKind.Cap, middle + new FramePoint(0, 0, 0.03), [new FramePoint(0, 0, 1)]);
        var (screw, tip) = (new Tube(new FramePoint(0, 0, 0.008), middle + new FramePoint(0, 0, 0.012), 0.004), new Tube(default, new FramePoint(0, 0, 0.008), 0.5 * _parts.Outer));
        var room = new FramePoint(_parts.Outer, _parts.Outer, 0);
        picture.Bodies.Add(camera => new Solid(-1 * room, middle + room, [tip.Outline(camera, Ink.Added), .. tip.End(camera, Ink.Added, 0), screw.Outline(camera, Ink.Added)]));
        picture.Bodies.Add(camera => cap.In(camera, Ink.Added, _ => true));
        picture.Bars.AddRange([.. cap.Bars(), screw, tip]);
        picture.Pushes.Add(new StepPush(new FramePoint(0, 0, level / 2), new FramePoint(0, 0, 1), _parts.Outer));
        picture.Names.Add(new StepName(string.Join(", ", step.Joints), cap.Middle + new FramePoint(0, 0, cap.Reach / 2), _parts.Outer));
        picture.Names.Add(new StepName($"{CutFormat.CutLength(step.Level)}, floor to ground", middle, _parts.Outer));
        return picture;
    }

    private StepPicture Pins(StepScene scene, AssemblyStep.PinJoints pins)
    {
        var picture = scene.Whole(pins.At.Contains);
        foreach (var label in pins.At)
        {
            scene.Name(label);
            var at = _parts.Joint(label).Position;
            picture.Pushes.Add(new StepPush(at - new FramePoint(0, 2.2 * _parts.Outer, 0), new FramePoint(0, 1, 0), 0));
        }

        return picture;
    }

    private StepPicture SetDown(StepScene scene, AssemblyStep.SetOnFeet set)
    {
        var picture = scene.Whole(label => frame.Geometry.Feet.Any(foot => foot.Joint == label));
        foreach (var foot in frame.Geometry.Feet)
        {
            var setting = set.Settings.FirstOrDefault(one => one.Joint == foot.Joint);
            picture.Names.Add(new StepName(setting is null ? foot.Joint : $"{foot.Joint} {CutFormat.CutLength(setting.Extension)}", foot.Position, _parts.Outer));
        }

        foreach (var rail in frame.Geometry.Members.Where(member => member.Role is FrameMemberRole.CrossRail or FrameMemberRole.SideRail).GroupBy(member => member.Role).Select(rails => rails.First()))
        {
            var middle = 0.5 * (_parts.Joint(rail.From).Position + _parts.Joint(rail.To).Position);
            var across = rail.Role == FrameMemberRole.CrossRail;
            var level = BoxBody.About(middle + new FramePoint(0, 0, _parts.Radius + 0.012), across ? 0.12 : 0.02, across ? 0.02 : 0.12, 0.02);
            picture.Bodies.Add(camera => level.In(camera, Ink.Added));
            picture.Names.Add(new StepName("level", middle + new FramePoint(0, 0, 0.03), 0.01));
        }

        return picture;
    }

    private StepPicture Ballast(StepScene scene)
    {
        var picture = scene.Whole();
        var up = frame.Geometry.PanelHeight.Meters;
        var bag = new FramePoint(0, 0, 0.4 * up);
        var size = Math.Min(0.16, 0.3 * up);
        var body = BoxBody.About(bag, size, size, size);
        picture.Bodies.Add(camera => body.In(camera, Ink.Added, Fill.Hatch));
        picture.Lines.AddRange(TopCorners().Select(corner => (corner.Position, bag + new FramePoint(0, 0, size / 2), Cord)));
        picture.Names.Add(new StepName("ballast", bag, size));
        return picture;
    }

    private StepPicture Pegs(StepScene scene, AssemblyStep.DrivePegs pegs)
    {
        var picture = scene.Whole();
        if (pegs.Corners.Count == 0)
        {
            foreach (var foot in frame.Geometry.Feet)
            {
                var out1 = Outward(foot.Position);
                picture.Lines.Add((foot.Position + (0.05 * out1) + new FramePoint(0, 0, 0.05), foot.Position - new FramePoint(0, 0, 0.06), Stroke.Heavy));
                picture.Names.Add(new StepName("peg", foot.Position + (0.05 * out1), 0.02));
            }

            return picture;
        }

        foreach (var corner in pegs.Corners.SelectMany(level => level.Parts).Select(label => _parts.Joint(label)))
        {
            foreach (var way in Ways(corner.Position, pegs.Count / 4))
            {
                var peg = new FramePoint(corner.Position.Right, corner.Position.Back, 0) + (corner.Position.Up * way);
                picture.Lines.Add((corner.Position, peg, Cord));
                picture.Lines.Add((peg - new FramePoint(0, 0, 0.05) - (0.02 * way), peg + new FramePoint(0, 0, 0.03) + (0.02 * way), new Stroke(0.9)));
            }

            scene.Name(corner.Label);
        }

        return picture;
    }

    // One cord of a corner goes straight out over it; of more, the first two go square to the sides.
    private static IEnumerable<FramePoint> Ways(FramePoint corner, int count)
    {
        var (right, back) = (Math.Sign(corner.Right), Math.Sign(corner.Back));
        var half = Math.Sqrt(0.5);
        return count < 2 ? [new FramePoint(half * right, half * back, 0)] : [new FramePoint(right, 0, 0), new FramePoint(0, back, 0)];
    }

    private static FramePoint Outward(FramePoint place)
    {
        var flat = place with { Up = 0 };
        return flat.Norm < 1e-9 ? new FramePoint(1, 0, 0) : (1 / flat.Norm) * flat;
    }

    private StepPicture Strips(StepScene scene, PanelLedge ledge)
    {
        var picture = scene.Whole();
        var pad = Math.Max(0.003, ledge.Pad.Meters);
        foreach (var rest in ledge.Rests)
        {
            var along = rest.To - rest.From;
            var level = Math.Abs(along.Right) > Math.Abs(along.Back) ? new FramePoint(0, 0.005, 0) : new FramePoint(0.005, 0, 0);
            var over = ledge.Seat == PanelSeat.OverRails ? _parts.Radius : 0;
            var inward = ledge.Seat == PanelSeat.OverRails ? default : -1 * (_parts.Radius + 0.005) * Inside(rest);
            var low = rest.From + inward - level + new FramePoint(0, 0, over);
            var high = rest.To + inward + level + new FramePoint(0, 0, over + pad);
            picture.Bodies.Add(camera => new BoxBody(Least(low, high), Most(low, high)).In(camera, Ink.Added, Fill.Grey));
            picture.Bars.Add(new Tube(rest.From, rest.To, 0.008));
            picture.Names.Add(new StepName($"{rest.Member} {CutFormat.CutLength(rest.Length)}", 0.5 * (rest.From + rest.To), 0.02));
        }

        return picture;
    }

    private static FramePoint Inside(PanelRest rest) => rest.Edge switch
    {
        PanelEdge.Front => new FramePoint(0, -1, 0),
        PanelEdge.Left => new FramePoint(-1, 0, 0),
        PanelEdge.Right => new FramePoint(1, 0, 0),
        _ => new FramePoint(0, 1, 0),
    };

    private static FramePoint Least(FramePoint a, FramePoint b) => new(Math.Min(a.Right, b.Right), Math.Min(a.Back, b.Back), Math.Min(a.Up, b.Up));

    private static FramePoint Most(FramePoint a, FramePoint b) => new(Math.Max(a.Right, b.Right), Math.Max(a.Back, b.Back), Math.Max(a.Up, b.Up));

    private StepPicture LaidPanel(StepScene scene)
    {
        var picture = scene.Whole();
        picture.Bodies.Add(camera => PanelSheet(camera, Lift, Ink.Added));
        picture.Edges.AddRange(PanelEdges(Lift));
        var up = frame.Geometry.PanelHeight.Meters;
        foreach (var side in new[] { -0.25, 0.25 })
        {
            picture.Pushes.Add(new StepPush(new FramePoint(side * plan.Panel.Width.Meters, -0.5 * plan.Panel.FlatDepth.Meters, up + (Lift / 2)), new FramePoint(0, 0, -1), 0));
        }

        foreach (var clip in frame.Geometry.Ledge.ClipPoints)
        {
            var body = BoxBody.About(clip, 0.02, 0.02, (2 * _parts.Radius) + 0.006);
            picture.Bodies.Add(camera => body.In(camera, Ink.Added, Fill.Black));
        }

        picture.Names.Add(new StepName("panel", new FramePoint(0, 0, up + Lift), 0.01));
        return picture;
    }

    private IEnumerable<(FramePoint From, FramePoint To)> PanelEdges(double lifted)
    {
        var (profile, side) = (PanelProfile(lifted), new FramePoint(plan.Panel.Width.Meters / 2, 0, 0));
        FramePoint[] corners = [profile[0] - side, .. profile.Skip(1).Select(point => point - side), .. Enumerable.Reverse(profile).Select(point => point + side), profile[0] - side];
        return corners.Zip(corners.Skip(1));
    }

    private List<FramePoint> PanelProfile(double lifted)
    {
        var (front, up) = (-plan.Panel.FlatDepth.Meters / 2, frame.Geometry.PanelHeight.Meters + lifted);
        return [new FramePoint(0, front, up), .. frame.Sweep is { } sweep ? sweep.Profile.Select(point => point + new FramePoint(0, 0, lifted)) : [new FramePoint(0, -front, up)]];
    }

    // From its front edge along its profile, left and right.
    private Solid PanelSheet(Camera camera, double lifted, Ink ink)
    {
        var (right, profile) = (plan.Panel.Width.Meters / 2, PanelProfile(lifted));
        var side = new FramePoint(right, 0, 0);
        var thick = new FramePoint(0, 0, plan.Panel.Thickness.Meters);
        return new Solid(
            profile[0] - side,
            new FramePoint(right, profile.Max(point => point.Back), profile.Max(point => point.Up)) + thick,
            [new Polygon([.. profile.Select(point => camera.At(point - side)), .. Enumerable.Reverse(profile).Select(point => camera.At(point + side))], ink.Edge, ink.Face)]);
    }

    private StepPicture Flash(StepScene scene, FlashBelow flash)
    {
        var picture = UnderSheet(scene);
        var body = FlashBox(flash);
        picture.Bodies.Add(camera => body.In(camera, Ink.Added, Fill.Hatch));
        var hung = flash.Support is FlashSupport.Cradle or FlashSupport.SharedCradle;
        var middle = 0.5 * (body.Low + body.High);
        if (hung && flash.CradleJoint is { } joint)
        {
            scene.Name(joint);
            picture.Lines.Add((_parts.Joint(joint).Position + new FramePoint(0, 0, _parts.Outer), middle with { Up = body.Low.Up }, Stroke.Heavy));
            picture.Pushes.Add(new StepPush(flash.Window + new FramePoint(0, 0, 0.09), new FramePoint(0, 0, -1), 0));
        }
        else
        {
            picture.Pushes.Add(new StepPush(new FramePoint(middle.Right, body.Low.Back - 0.1, middle.Up), new FramePoint(0, 1, 0), 0));
        }

        if (flash.Support == FlashSupport.OwnStand && body.Low.Up > 0.02)
        {
            picture.Lines.Add((middle with { Up = body.Low.Up }, middle with { Up = 0 }, Stroke.Heavy));
        }

        picture.Bars.Add(new Tube(body.Low, body.High, 0.02));
        picture.Names.Add(new StepName("window up", flash.Window, flash.HeadWidth.Meters / 2));
        return picture;
    }

    private StepPicture Test(StepScene scene)
    {
        var picture = UnderSheet(scene);
        foreach (var flash in frame.LowerFlashes)
        {
            var body = FlashBox(flash);
            picture.Bodies.Add(camera => body.In(camera, Ink.Added, Fill.White));
            foreach (var (right, back) in new[] { (0.0, 0.0), (-1.0, -1.0), (1.0, 1.0) })
            {
                var reach = 0.35 * new FramePoint(right * plan.Panel.Width.Meters, back * plan.Panel.FlatDepth.Meters, 0);
                picture.Lines.Add((flash.Window, (flash.Window with { Up = frame.Geometry.PanelHeight.Meters }) + reach, Stroke.Hidden));
            }
        }

        picture.Names.Add(new StepName("white all over", new FramePoint(0, 0, frame.Geometry.PanelHeight.Meters), 0.02));
        return picture;
    }

    private static BoxBody FlashBox(FlashBelow flash)
    {
        var deep = Math.Clamp(flash.Window.Up, 0.005, 0.08);
        return BoxBody.About(flash.Window - new FramePoint(0, 0, deep / 2), Math.Max(0.02, flash.HeadWidth.Meters), Math.Max(0.02, flash.HeadHeight.Meters), deep);
    }

    private StepPicture UnderSheet(StepScene scene)
    {
        var picture = scene.Whole();
        picture.Bodies.Add(camera => PanelSheet(camera, 0, new Ink(Stroke.Thin, Fill.None)));
        picture.Edges.AddRange(PanelEdges(0));
        return picture;
    }

    private StepPicture Skirts(StepScene scene)
    {
        var picture = UnderSheet(scene);
        foreach (var flash in frame.LowerFlashes)
        {
            var body = FlashBox(flash);
            picture.Bodies.Add(camera => body.In(camera, Ink.Standing));
        }

        var standing = frame.Geometry.Feet.Count > 0 ? frame.Geometry.Feet.Select(foot => foot.Position).ToList() : [.. frame.Geometry.Joints.Select(joint => joint.Position)];
        var (right, front, back, up) = (standing.Max(place => place.Right) + _parts.Outer, standing.Min(place => place.Back) - _parts.Outer, standing.Max(place => place.Back) + _parts.Outer, frame.Geometry.PanelHeight.Meters);
        var sides = new[]
        {
            (new FramePoint(-right, back, 0), new FramePoint(right, back, 0), new FramePoint(0, 1, 0), "back"),
            (new FramePoint(-right, front, 0), new FramePoint(-right, back, 0), new FramePoint(-1, 0, 0), "left"),
            (new FramePoint(right, front, 0), new FramePoint(right, back, 0), new FramePoint(1, 0, 0), "right"),
            (new FramePoint(-right, front, 0), new FramePoint(right, front, 0), new FramePoint(0, -1, 0), "front"),
        };
        foreach (var (one, other, way, name) in sides)
        {
            var away = (name is "back" or "left" ? 0.02 : 0.25) * way;
            var (low, high) = (one + away + new FramePoint(0, 0, OffGround), other + away + new FramePoint(0, 0, up));
            picture.Bodies.Add(camera => new Solid(low, high,
                [new Polygon([camera.At(low), camera.At(other + away + new FramePoint(0, 0, OffGround)), camera.At(high), camera.At(one + away + new FramePoint(0, 0, up))], Ink.Added.Edge, Fill.White)]));
            if (name is "front" or "right")
            {
                picture.Pushes.Add(new StepPush((0.5 * (one + other)) + (0.5 * away) + new FramePoint(0, 0, up + 0.05), -1 * way, 0));
                picture.Names.Add(new StepName($"{name} skirt", (0.5 * (one + other)) + away, 0));
                FramePoint[] corners = [low, low with { Up = up }, high, high with { Up = OffGround }, low];
                picture.Edges.AddRange(corners.Zip(corners.Skip(1)));
            }
        }

        return picture;
    }

    private IEnumerable<FrameJoint> TopCorners() => frame.Geometry.Joints
        .Where(joint => joint.Kind is FittingKind.Corner or FittingKind.Elbow || joint.Pinned)
        .Where(joint => joint.Kind != FittingKind.Coupling)
        .GroupBy(joint => (joint.Position.Right > 0, joint.Position.Back > 0))
        .Select(column => column.MaxBy(joint => joint.Position.Up)!);
}
