using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning.Studio.Assembling;
using StudioKit.Sheets.Building.Solids;
using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Building.Steps;

/// <summary>The pipes and fittings of a step: what stands thin, what comes in heavy and pulled apart along the way it is pushed.</summary>
internal sealed class StepScene(FrameParts parts)
{
    // A pulled pipe ends this far before its socket [m], and legs that are put together side by side stand apart by this share of their length.
    private const double Open = 0.02;
    private const double LegsApart = 0.38;
    private const double LeastApart = 0.12;

    private static readonly FramePoint Level = new(1, 1, 0);

    // A longer piece of a leg is drawn broken, so that what else is on the leg comes out larger [m].
    private const double LongestWhole = 0.2;
    private const double Broken = 0.16;
    private const double Break = 0.014;

    private readonly Dictionary<string, (FramePoint Shift, bool Added)> _shown = new(StringComparer.Ordinal);

    // What is left out of a broken piece, as a vector from its upper to its lower half.
    private readonly Dictionary<string, FramePoint> _leftOut = new(StringComparer.Ordinal);

    public StepPicture Picture { get; } = new();

    /// <summary>The legs of a side, each pulled apart along itself, next to each other.</summary>
    public StepPicture Legs(AssemblyStep.BuildLegs step)
    {
        var tall = step.Runs.Max(run => (Apart(run)[^1] + parts.Joint(run.Parts[^1]).Position - parts.Joint(run.Parts[0]).Position).Norm);
        var apart = Math.Max(LeastApart, LegsApart * tall);
        foreach (var (run, i) in step.Runs.Select((run, i) => (run, i)))
        {
            var top = parts.Joint(run.Parts[0]).Position;
            var home = new FramePoint(-top.Right, -top.Back, 0) + ((i * apart) * Level);
            var shifts = Apart(run);
            foreach (var (part, k) in run.Parts.Select((part, k) => (part, k)))
            {
                Show(part, home + shifts[k], added: true);
            }

            Push(run);
        }

        return Done(step);
    }

    /// <summary>The legs of a side with its rails between them, pulled apart from front to back.</summary>
    public StepPicture Side(AssemblyStep.JoinSide step) => PulledApart(step, point => point.Back, new FramePoint(0, 1, 0), _ => true);

    /// <summary>The left side with the rails across pulled out of it.</summary>
    public StepPicture Across(AssemblyStep.PushAcross step)
    {
        var left = parts.Frame.Geometry.Joints.Where(joint => joint.Position.Right < 0 && !step.Joints.Contains(joint.Label)).Select(joint => joint.Label).ToHashSet(StringComparer.Ordinal);
        foreach (var joint in left)
        {
            Show(joint, default, added: false);
        }

        foreach (var member in parts.Frame.Geometry.Members.Where(member => left.Contains(member.From) && left.Contains(member.To)))
        {
            Show(member.Label, default, added: false);
        }

        return PulledApart(step, point => point.Right, new FramePoint(1, 0, 0), part => !parts.IsJoint(part) || step.Joints.Contains(part) || left.Contains(part));
    }

    /// <summary>The right side pulled off the rails across.</summary>
    public StepPicture Close(AssemblyStep.CloseFrame step)
    {
        var right = new FramePoint(2 * Pulled(step.Runs[0]), 0, 0);
        var joints = parts.Frame.Geometry.Joints.Where(joint => step.Moved.Contains(joint.Label) && joint.Position.Right > 0 && !Interior(step, joint.Label)).Select(joint => joint.Label).ToHashSet(StringComparer.Ordinal);
        foreach (var joint in parts.Frame.Geometry.Joints)
        {
            Show(joint.Label, joints.Contains(joint.Label) ? right : default, joints.Contains(joint.Label));
        }

        foreach (var member in parts.Frame.Geometry.Members)
        {
            var moves = joints.Contains(member.From) && joints.Contains(member.To);
            Show(member.Label, moves ? right : default, moves);
        }

        foreach (var run in step.Runs)
        {
            Push(run);
            Name(run.Parts[^1]);
            Name(run.Parts[^2]);
        }

        return Done(step);
    }

    /// <summary>The whole frame as it stands, some of its fittings heavy.</summary>
    public StepPicture Whole(Func<string, bool>? heavy = null)
    {
        foreach (var label in parts.Frame.Geometry.Joints.Select(joint => joint.Label).Concat(parts.Frame.Geometry.Members.Select(member => member.Label)))
        {
            Show(label, default, heavy?.Invoke(label) == true);
        }

        Draw();
        return Picture;
    }

    /// <summary>Names a part that is shown.</summary>
    public void Name(string label)
    {
        var at = Middle(label);
        Picture.Names.Add(new StepName(label, at, parts.IsJoint(label) ? parts.Outer : parts.Radius));
    }

    private static bool Interior(AssemblyStep.CloseFrame step, string joint) => step.Runs.Any(run => run.Parts.Skip(1).SkipLast(1).Contains(joint));

    // Along an axis, neighbouring places of fittings come apart alike, so that every leg and fitting stays whole and every rail comes clear of both its ends.
    private StepPicture PulledApart(AssemblyStep step, Func<FramePoint, double> axis, FramePoint way, Func<string, bool> shown)
    {
        var joints = step.Runs.SelectMany(run => run.Parts).Where(parts.IsJoint).Distinct(StringComparer.Ordinal).ToList();
        var stops = joints.Select(joint => Math.Round(axis(parts.Joint(joint).Position), 4)).Distinct().Order().ToList();
        var pull = 2 * step.Runs.Max(Pulled);
        FramePoint Shift(FramePoint place) => stops.FindIndex(stop => Math.Abs(stop - axis(place)) < 2e-4) * pull * way;
        foreach (var part in step.Runs.SelectMany(run => run.Parts).Concat(step.Moved).Distinct(StringComparer.Ordinal).Where(shown).Where(part => !_shown.ContainsKey(part)))
        {
            var added = step.Joints.Contains(part) || step.Members.Contains(part);
            Show(part, parts.IsJoint(part) ? Shift(parts.Joint(part).Position) : Between(part, Shift), added);
        }

        foreach (var run in step.Runs)
        {
            Push(run);
        }

        return Done(step);
    }

    private FramePoint Between(string member, Func<FramePoint, FramePoint> shift)
    {
        var piece = parts.Member(member);
        return 0.5 * (shift(parts.Joint(piece.From).Position) + shift(parts.Joint(piece.To).Position));
    }

    private StepPicture Done(AssemblyStep step)
    {
        Draw();
        foreach (var part in step.Joints.Concat(step.Members))
        {
            Name(part);
        }

        foreach (var part in step is AssemblyStep.BuildLegs ? step.Moved : [])
        {
            Name(part);
        }

        foreach (var member in step.Members)
        {
            Picture.Pieces.Add((member, parts.Member(member).CutLength.Meters));
        }

        return Picture;
    }

    private double Pulled(PartRun run) => Open + run.Parts.Where(parts.IsJoint).Max(joint => parts.Frame.InsertionDepths[parts.Joint(joint).Kind].Meters);

    private List<FramePoint> Apart(PartRun run)
    {
        var way = SocketDirections.Vector(run.Towards);
        var (shifts, less) = (new List<FramePoint>(), 0.0);
        foreach (var (part, i) in run.Parts.Select((part, i) => (part, i)))
        {
            shifts.Add(((i * Pulled(run)) - less) * way);
            if (!parts.IsJoint(part) && parts.Member(part).CutLength.Meters > LongestWhole)
            {
                var gone = parts.Member(part).CutLength.Meters - Broken;
                _leftOut[part] = gone * way;
                less += gone;
            }
        }

        return shifts;
    }

    private void Show(string label, FramePoint shift, bool added) => _shown[label] = (shift, added);

    // The later of two parts is pushed towards the earlier.
    private void Push(PartRun run)
    {
        var way = SocketDirections.Vector(run.Towards);
        foreach (var (one, other) in run.Parts.Zip(run.Parts.Skip(1)).Where(pair => _shown.ContainsKey(pair.First) && _shown.ContainsKey(pair.Second)))
        {
            var (joint, member, sign) = parts.IsJoint(one) ? (one, other, 1) : (other, one, -1);
            var apart = _shown[other].Shift - _shown[one].Shift;
            if (apart.Norm < 1e-6)
            {
                continue;
            }

            var kind = parts.Joint(joint).Kind;
            var edge = parts.Joint(joint).Position + _shown[joint].Shift + ((sign * (parts.Body(parts.Joint(joint), default).Reach)) * way);
            var end = parts.Joint(joint).Position + _shown[member].Shift + ((sign * parts.ToPipeEnd(kind)) * way) - (sign < 0 ? _leftOut.GetValueOrDefault(member) : default);
            Picture.Pushes.Add(new StepPush(0.5 * (edge + end), -1 * way, parts.Outer));
        }
    }

    private void Draw()
    {
        foreach (var (label, (shift, added)) in _shown)
        {
            var ink = added ? Ink.Added : Ink.Standing;
            if (parts.IsJoint(label))
            {
                Fitting(parts.Joint(label), shift, ink);
            }
            else
            {
                Piece(parts.Member(label), shift, ink);
            }
        }

        foreach (var foot in parts.Frame.Geometry.Feet.Where(foot => _shown.ContainsKey(foot.Joint)))
        {
            Foot(foot, _shown[foot.Joint].Shift, _shown[foot.Joint].Added ? Ink.Added : Ink.Standing);
        }
    }

    private void Fitting(FrameJoint joint, FramePoint shift, Ink ink)
    {
        var body = parts.Body(joint, shift);
        Picture.Bodies.Add(camera => body.In(camera, ink, way => !Filled(joint, way)));
        Picture.Bars.AddRange(body.Bars());
    }

    private bool Filled(FrameJoint joint, FramePoint way) =>
        joint.Ports.First(port => port.Direction.Dot(way) > 0.99).Member is { } member && IsHome(joint.Label, member);

    private void Piece(FrameMember member, FramePoint shift, Ink ink)
    {
        var (homeFrom, homeTo) = (IsHome(member.From, member.Label), IsHome(member.To, member.Label));
        if (parts.Piece(member, shift, homeFrom, homeTo) is { } body)
        {
            if (_leftOut.TryGetValue(member.Label, out var gone))
            {
                BrokenPiece(body, gone, ink);
                return;
            }

            Picture.Bodies.Add(camera => body.In(camera, ink, !homeFrom, !homeTo));
            Picture.Bars.Add(new Tube(body.From, body.To, parts.Radius));
        }
    }

    // Two halves with a gap between them; marks stay with their ends.
    private void BrokenPiece(PipeBody body, FramePoint gone, Ink ink)
    {
        var way = (1 / gone.Norm) * gone;
        var (upper, lower) = way.Dot(body.To - body.From) > 0 ? (body.From, body.To - gone) : (body.To, body.From - gone);
        var half = 0.5 * ((lower - upper).Norm - Break);
        var middle = 0.5 * (upper + lower);
        foreach (var (end, at) in new[] { (upper, -1), (lower, 1) })
        {
            var marks = body.MarksAt.Select(mark => (mark - end).Norm < 0.1 ? mark : mark - gone).Where(mark => (mark - end).Norm < half).ToList();
            var piece = new PipeBody(end, middle + (at * 0.5 * Break * way), body.Radius, body.Bore, marks);
            Picture.Bodies.Add(camera => piece.In(camera, ink, openFrom: true, openTo: true));
            Picture.Bars.Add(new Tube(piece.From, piece.To, parts.Radius));
        }
    }

    private bool IsHome(string joint, string member) =>
        _shown.TryGetValue(joint, out var one) && _shown.TryGetValue(member, out var other) && (one.Shift - other.Shift).Norm < 1e-6;

    // A screw with its rubber tip.
    private void Foot(FrameFoot foot, FramePoint shift, Ink ink)
    {
        var floor = parts.Joint(foot.Joint).Position - new FramePoint(0, 0, parts.Outer - parts.Radius);
        var (screw, tip) = (new Tube(foot.Position + shift, floor + shift, 0.004), new Tube(foot.Position + shift, foot.Position + shift + new FramePoint(0, 0, 0.008), 0.5 * parts.Outer));
        var room = new FramePoint(parts.Outer, parts.Outer, 0);
        Picture.Bars.AddRange([screw, tip]);
        Picture.Bodies.Add(camera => new Solid(
            foot.Position + shift - room, floor + shift + room, [screw.Outline(camera, ink), tip.Outline(camera, ink), .. tip.End(camera, ink, 0), .. Screw(camera, screw, tip, ink)]));
    }

    private static IEnumerable<Primitive> Screw(Camera camera, Tube screw, Tube tip, Ink ink) =>
        screw.To.Up > tip.To.Up + 1e-4 ? [(screw with { From = tip.To }).Outline(camera, ink)] : [];

    private FramePoint Middle(string label)
    {
        var shift = _shown[label].Shift;
        if (parts.IsJoint(label))
        {
            return parts.Joint(label).Position + shift;
        }

        var member = parts.Member(label);
        var gone = _leftOut.GetValueOrDefault(label);
        return (0.5 * (parts.Joint(member.From).Position + parts.Joint(member.To).Position)) + shift - (0.5 * gone);
    }
}
