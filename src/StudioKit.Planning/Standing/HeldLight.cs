using StudioKit.Kits.Lighting;
using StudioKit.Physics;
using StudioKit.Physics.Light;
using UnitsNet;

namespace StudioKit.Planning.Standing;

/// <summary>A light with what holds it.</summary>
/// <param name="Line">The holder from where it stands or is fastened to the head; empty for the ground.</param>
/// <param name="Reach">How far it must reach.</param>
/// <param name="Faults">Where it does not.</param>
internal sealed record HeldLight(ValueList<Position> Line, Length Reach, ValueList<LightFault> Faults)
{
    // From the head to the elbow of whoever holds it (common practice, no source).
    private const double Forearm = 0.35;

    private const double Rounding = 1e-9;

    /// <summary>Holds a light.</summary>
    /// <param name="holder">What holds it.</param>
    /// <param name="light">The light.</param>
    /// <param name="room">What stands about the subject.</param>
    /// <param name="cameras">Back of the camera at each of its angles.</param>
    public static HeldLight By(HolderSpec holder, StandingLight light, LightRoom room, IReadOnlyList<Position> cameras) => holder.Kind switch
    {
        HolderKind.Stand => OnStand(holder, light, room),
        HolderKind.Ground => new([], Length.Zero, [.. HeightFaults(holder, light.Front.Centre.Z)]),
        HolderKind.Hand => Within(holder, light, [light.Back.Along(light.Front.Orientation.Axis, -Forearm), light.Back], cameras.Max(camera => camera.DistanceTo(light.Back))),
        _ => Fastened(holder, light, room, cameras),
    };

    private static HeldLight OnStand(HolderSpec holder, StandingLight light, LightRoom room)
    {
        var boom = room.ToClearFrame(light.Back, light.Outward);
        var top = light.Back.Along(light.Outward, double.IsFinite(boom) ? boom : 0);
        var held = Within(holder, light, [top with { Z = 0 }, top, light.Back], boom);
        return held with { Faults = [.. held.Faults, .. HeightFaults(holder, light.Back.Z)] };
    }

    // To the nearest pipe; without a frame to the camera, which turns about the subject with it.
    private static HeldLight Fastened(HolderSpec holder, StandingLight light, LightRoom room, IReadOnlyList<Position> cameras)
    {
        if (room.Pipes.Count == 0)
        {
            var farthest = cameras.MaxBy(camera => camera.DistanceTo(light.Back));
            return Within(holder, light, [farthest, light.Back], farthest.DistanceTo(light.Back));
        }

        var nearest = room.Pipes.Select(pipe => Nearest(pipe.Start, pipe.End, light.Back)).MinBy(place => place.DistanceTo(light.Back));
        return Within(holder, light, [nearest, light.Back], nearest.DistanceTo(light.Back));
    }

    private static HeldLight Within(HolderSpec holder, StandingLight light, ValueList<Position> line, double reach)
    {
        var needed = Length.FromMeters(double.IsFinite(reach) ? reach : light.Subject.DistanceTo(light.Front.Centre) + holder.FullReach.Meters);
        return new(line, needed, needed.Meters > holder.FullReach.Meters + Rounding ? [new LightFault(LightFaultKind.OutOfReach) { By = needed - holder.FullReach }] : []);
    }

    private static IEnumerable<LightFault> HeightFaults(HolderSpec holder, double height)
    {
        if (height < holder.LowestHold.Meters - Rounding)
        {
            yield return new LightFault(LightFaultKind.TooLow) { By = holder.LowestHold - Length.FromMeters(height) };
        }

        if (height > holder.HighestHold.Meters + Rounding)
        {
            yield return new LightFault(LightFaultKind.TooHigh) { By = Length.FromMeters(height) - holder.HighestHold };
        }
    }

    private static Position Nearest(Position start, Position end, Position to)
    {
        var square = start.DistanceTo(end) * start.DistanceTo(end);
        var along = ((end.X - start.X) * (to.X - start.X)) + ((end.Y - start.Y) * (to.Y - start.Y)) + ((end.Z - start.Z) * (to.Z - start.Z));
        return Position.Between(start, end, square > 0 ? Math.Clamp(along / square, 0, 1) : 0);
    }
}
