namespace StudioKit.Physics.Light.Checks;

/// <summary>Names what is impossible about one flash.</summary>
internal static class EmitterCheck
{
    public static IEnumerable<LightProblem> Problems(LightPanel panel, LightSurround surround, Emitter emitter, int number)
    {
        if (!emitter.Centre.IsFinite || !(double.IsFinite(emitter.AxialIntensityTime) && emitter.AxialIntensityTime >= 0))
        {
            return [new(LightProblemKind.OutOfRange, Text(number, "has a place or an intensity that is not a number, or is negative"))];
        }

        LightProblem[] extent =
        [
            .. SceneCheck.Extent(
                (FormattableString.Invariant($"width of flash {number}'s window"), emitter.Width.Meters),
                (FormattableString.Invariant($"height of flash {number}'s window"), emitter.Height.Meters)),
        ];
        return extent.Length > 0 ? extent : PlaceProblems(panel, surround, emitter, number);
    }

    private static IEnumerable<LightProblem> PlaceProblems(LightPanel panel, LightSurround surround, Emitter emitter, int number)
    {
        var corners = Corners(emitter);
        if (corners.Max(corner => corner.Z) >= panel.Height.Meters)
        {
            yield return new(LightProblemKind.AboveSheet, Text(number, "stands level with the sheet or above it"));
            yield break;
        }

        if (corners.Min(corner => corner.Z) < 0)
        {
            yield return new(LightProblemKind.InsideFloor, Text(number, "reaches into the ground"));
        }

        if (surround.SkirtReflectance is not null && corners.Any(corner => !IsInside(panel, corner)))
        {
            yield return new(LightProblemKind.OutsideSkirts, Text(number, "reaches through a skirt"));
        }

        if (!LightsPanel(panel, emitter))
        {
            yield return new(LightProblemKind.AimedAway, Text(number, "is aimed away: none of its light goes straight to the panel"));
        }
    }

    private static bool IsInside(LightPanel panel, Position place)
    {
        var surface = new PanelSurface(panel);
        return Math.Abs(place.X) < surface.Width / 2 && place.Y > surface.FrontY && place.Y < surface.BackY;
    }

    // Under a thousandth of the axial intensity at every one of 5 × 5 points counts as none.
    private static bool LightsPanel(LightPanel panel, Emitter emitter)
    {
        var surface = new PanelSurface(panel);
        var places = from i in Enumerable.Range(0, 5)
                     from j in Enumerable.Range(0, 5)
                     select surface.At((i - 2) / 4.0 * surface.Width, j / 4.0 * surface.Depth);
        return places.Any(place =>
        {
            var (ray, frame) = (Direction.From(emitter.Centre, place), emitter.Orientation);
            return emitter.Lobe.RelativeIntensity(ray.Dot(frame.Across), ray.Dot(frame.Along), ray.Dot(frame.Axis)) > 1e-3;
        });
    }

    private static Position[] Corners(Emitter emitter)
    {
        var (across, along) = (emitter.Width.Meters / 2, emitter.Height.Meters / 2);
        Position At(double u, double v) =>
            emitter.Centre.Along(emitter.Orientation.Across, u * across).Along(emitter.Orientation.Along, v * along);

        return [At(-1, -1), At(1, -1), At(1, 1), At(-1, 1)];
    }

    private static string Text(int number, string what) => FormattableString.Invariant($"Flash {number} {what}.");
}
