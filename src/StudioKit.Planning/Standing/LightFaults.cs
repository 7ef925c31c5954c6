using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Standing;
using UnitsNet;

namespace StudioKit.Planning.Standing;

/// <summary>What is wrong with where a light stands.</summary>
internal static class LightFaults
{
    /// <summary>A click of the dial, which nobody sees (common practice, no source).</summary>
    public static readonly Stops Click = new(1.0 / 3);

    /// <summary>What the camera sees, and what the light meets.</summary>
    /// <param name="scene">Subject and camera.</param>
    /// <param name="light">The light.</param>
    /// <param name="line">Its holder, from where it stands or is fastened.</param>
    public static IEnumerable<LightFault> OfPlace(StandScene scene, StandingLight light, IReadOnlyList<Position> line)
    {
        if (scene.Cameras.FirstOrDefault(seen => HeadRoom.Touches(light.Head, seen.Lens)) is { } meets)
        {
            yield return new LightFault(LightFaultKind.MeetsLens, meets.View.Pitch);
        }

        if (scene.Cameras.FirstOrDefault(seen => FrameIntrusion.Shows(light.Head, seen.View, scene.Room.Level)) is { } shows)
        {
            yield return new LightFault(LightFaultKind.InPicture, shows.View.Pitch);
        }
        else if (scene.Cameras.FirstOrDefault(seen => Rods(scene, line).Any(rod => FrameIntrusion.Shows(rod.Start, rod.End, seen.View, scene.Room.Level))) is { } held)
        {
            yield return new LightFault(LightFaultKind.HolderInPicture, held.View.Pitch);
        }

        foreach (var met in Met(scene.Room, light))
        {
            yield return new LightFault(met);
        }
    }

    /// <summary>Too much light hidden by the lens.</summary>
    public static IEnumerable<LightFault> OfCover(double covers, Angle pitch) => Math.Log2(1 - Math.Min(covers, 0.999)) < -Click.Value
        ? [new LightFault(LightFaultKind.BehindLens, pitch) { Share = covers }]
        : [];

    /// <summary>Too much light on the sheet, above what already shines through it.</summary>
    /// <param name="kind">Matt light or mirror image.</param>
    /// <param name="by">Stops against clipping by the light; none where there is none.</param>
    /// <param name="exposure">The exposure with the sheet's own margins.</param>
    /// <param name="spare">How much less than a click over the limit is let pass; 0 stops or more.</param>
    public static IEnumerable<LightFault> OfGlow(LightFaultKind kind, Stops? by, ExposurePlan exposure, Stops spare) =>
        by is { } level && exposure is { BrightestMargin: { } brightest, HighestMargin: { } highest } && CombinedLight.Sum([brightest, level]) - highest is var over && over.Value > Click.Value - spare.Value
            ? [new LightFault(kind) { Over = over }]
            : [];

    private static IEnumerable<LightFaultKind> Met(LightRoom room, StandingLight light)
    {
        // A panel that no framing sees has no size, and nothing meets it.
        if (room.Sheet is { Width.Meters: > 0 } sheet && HeadRoom.ReachesSheet(light.Head, room.Level, sheet.Width.Meters, room.Edges.Front, room.Edges.Back))
        {
            yield return LightFaultKind.MeetsSheet;
        }

        if (room.Pipes.Any(pipe => HeadRoom.Touches(light.Head, pipe)))
        {
            yield return LightFaultKind.MeetsFrame;
        }

        if (HeadRoom.Lowest(light.Head) < 0)
        {
            yield return LightFaultKind.MeetsGround;
        }
    }

    // The sheet hides what is under it.
    private static IEnumerable<(Position Start, Position End)> Rods(StandScene scene, IReadOnlyList<Position> line)
    {
        var least = scene.Room.Sheet is null ? double.NegativeInfinity : scene.Room.Level;
        for (var i = 0; i + 1 < line.Count; i++)
        {
            var (low, high) = line[i].Z < line[i + 1].Z ? (line[i], line[i + 1]) : (line[i + 1], line[i]);
            if (high.Z > least)
            {
                yield return (low.Z >= least ? low : Position.Between(low, high, (least - low.Z) / (high.Z - low.Z)), high);
            }
        }
    }
}
