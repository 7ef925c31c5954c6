using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning.Studio.Assembling;

namespace StudioKit.Planning.Tests.Frames;

/// <summary>What somebody who goes by the steps of a frame alone would stumble over, looked for from the frame's own joints and pieces.</summary>
internal static class AssemblyFaults
{
    public static IReadOnlyList<string> Of(FramePlan frame) =>
        [.. Once(frame), .. InTheAir(frame), .. Untold(frame), .. Order(frame), .. Moved(frame)];

    private static IEnumerable<string> Once(FramePlan frame)
    {
        var parts = frame.Assembly.SelectMany(step => step.Joints.Concat(step.Members)).ToList();
        var all = frame.Geometry.Joints.Select(joint => joint.Label).Concat(frame.Geometry.Members.Select(member => member.Label)).ToList();
        return all.Where(part => parts.Count(other => other == part) != 1).Select(part => $"{part} comes in {parts.Count(other => other == part)} times")
            .Concat(parts.Except(all).Select(part => $"{part} is no part of the frame"));
    }

    // Whatever a step brings hangs together with what was there or with other parts that come with it; a cap comes with its foot.
    private static IEnumerable<string> InTheAir(FramePlan frame)
    {
        var there = new HashSet<string>();
        foreach (var step in frame.Assembly)
        {
            List<string> added = [.. step.Joints, .. step.Members];
            foreach (var part in step is AssemblyStep.FitFeet ? [] : added)
            {
                var held = Neighbours(frame.Geometry, part).Any(other => there.Contains(other) || added.Contains(other));
                if (!held)
                {
                    yield return $"{part} comes in by {step.Kind} and touches nothing";
                }
            }

            there.UnionWith(added);
        }
    }

    private static IEnumerable<string> Untold(FramePlan frame)
    {
        var there = new HashSet<string>();
        foreach (var step in frame.Assembly)
        {
            there.UnionWith(step.Members);
            if (step is AssemblyStep.FitFeet)
            {
                continue;
            }

            var free = frame.Geometry.Joints.Where(joint => step.Joints.Contains(joint.Label) || step.Moved.Contains(joint.Label))
                .SelectMany(joint => joint.Ports.Where(port => port.Member is not { } member || !there.Contains(member)).Select(port => (joint.Label, port.Direction)))
                .ToList();
            foreach (var (label, way) in free)
            {
                if (!step.FreeSockets.Any(told => told.Joint == label && Matches(told.Direction, way)))
                {
                    yield return $"{step.Kind} says nothing of the free socket of {label}";
                }
            }

            if (step.FreeSockets.Count != free.Count)
            {
                yield return $"{step.Kind} tells of sockets that are not free";
            }
        }

        foreach (var joint in frame.Geometry.Joints.Where(joint => joint.Ports.Any(port => port.Member is null)))
        {
            if (!frame.Assembly.Any(step => step.FreeSockets.Any(socket => socket.Joint == joint.Label && socket.Later is null)))
            {
                yield return $"nobody is told of the open socket of {joint.Label}";
            }
        }
    }

    private static bool Matches(SocketDirection told, FramePoint way) => told switch
    {
        SocketDirection.Left => way.Right < -0.99,
        SocketDirection.Right => way.Right > 0.99,
        SocketDirection.Front => way.Back < -0.99,
        SocketDirection.Back => way.Back > 0.99,
        SocketDirection.Up => way.Up > 0.99,
        _ => way.Up < -0.99,
    };

    // Strips before the panel on them, the panel before what it is lit by, every flash and its test before skirts close the box.
    private static IEnumerable<string> Order(FramePlan frame)
    {
        var places = frame.Assembly.Select((step, i) => (step.Kind, Place: i)).ToLookup(pair => pair.Kind, pair => pair.Place);
        string[] order = ["mark-pieces", "fit-feet", "build-legs", "join-side", "push-across", "close-frame", "set-on-feet", "lay-strips", "lay-panel", "put-flash", "test-flash", "hang-skirts"];
        var seen = order.Where(kind => places[kind].Any()).ToList();
        foreach (var (before, after) in seen.Zip(seen.Skip(1)).Where(pair => (pair.First, pair.Second) is not ("build-legs", "join-side")))
        {
            if (places[before].Max() > places[after].Min())
            {
                yield return $"{before} comes after {after}";
            }
        }

        if (frame.Assembly.Count(step => step is AssemblyStep.PutFlash) != frame.LowerFlashes.Count)
        {
            yield return "a flash below is not put in its place";
        }

        if (frame.Seams is not null != frame.Assembly.Any(step => step is AssemblyStep.HangSkirts))
        {
            yield return "skirts are cut and not hung, or hung and not cut";
        }
    }

    private static IEnumerable<string> Moved(FramePlan frame)
    {
        var there = new HashSet<string>();
        foreach (var step in frame.Assembly)
        {
            foreach (var part in step.Moved.Where(part => !there.Contains(part)))
            {
                yield return $"{step.Kind} takes up {part}, which is not there yet";
            }

            there.UnionWith(step.Joints);
            there.UnionWith(step.Members);
        }
    }

    private static IEnumerable<string> Neighbours(FrameResult frame, string part) => frame.Members.Where(member => member.Label == part).SelectMany(member => new[] { member.From, member.To })
        .Concat(frame.Members.Where(member => member.From == part || member.To == part).Select(member => member.Label));
}
