using UnitsNet;

namespace StudioKit.Physics.Light.Checks;

/// <summary>Names what is impossible about one flash.</summary>
internal static class EmitterCheck
{
    public static IEnumerable<LightProblem> Problems(LightPanel panel, LightSurround surround, Emitter emitter, int number)
    {
        if (!emitter.Centre.IsFinite || !(double.IsFinite(emitter.AxialIntensityTime) && emitter.AxialIntensityTime >= 0))
        {
            return [new(LightProblemKind.OutOfRange) { Quantity = LightQuantity.FlashLight, Flash = number }];
        }

        LightProblem[] extent =
        [
            .. SceneCheck.Extent((LightQuantity.WindowWidth, emitter.Width.Meters), (LightQuantity.WindowHeight, emitter.Height.Meters))
                .Select(problem => problem with { Flash = number }),
        ];
        return extent.Length > 0 ? extent : PlaceProblems(panel, surround, emitter, number);
    }

    private static IEnumerable<LightProblem> PlaceProblems(LightPanel panel, LightSurround surround, Emitter emitter, int number)
    {
        var corners = Corners(emitter);
        var past = corners.Max(corner => corner.Z) - panel.Height.Meters;
        if (past >= 0)
        {
            yield return new(LightProblemKind.AboveSheet) { Flash = number, By = Length.FromMeters(past) };
            yield break;
        }

        var lowest = corners.Min(corner => corner.Z);
        if (lowest < 0)
        {
            yield return new(LightProblemKind.InsideFloor) { Flash = number, By = Length.FromMeters(-lowest) };
        }

        if (surround.Ground is { } ground && corners.Min(corner => GroundPlane.Over(panel, ground, corner)) is < 0 and var over)
        {
            yield return new(LightProblemKind.InsideFloor) { Flash = number, By = Length.FromMeters(-over) };
        }

        var beyond = corners.Max(corner => Beyond(panel, corner));
        if (surround.SkirtReflectance is not null && beyond >= 0)
        {
            yield return new(LightProblemKind.OutsideSkirts) { Flash = number, By = Length.FromMeters(beyond) };
        }

        if (!LightsPanel(panel, emitter))
        {
            yield return new(LightProblemKind.AimedAway) { Flash = number };
        }
    }

    // How far a place lies outside the panel's edges, where the skirts hang; negative inside [m].
    private static double Beyond(LightPanel panel, Position place)
    {
        var surface = new PanelSurface(panel);
        return Math.Max(Math.Abs(place.X) - (surface.Width / 2), Math.Max(surface.FrontY - place.Y, place.Y - surface.BackY));
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
}
