using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Light.Checks;

/// <summary>Names what is impossible about a studio before anything is computed.</summary>
public static class SceneCheck
{
    private const double MostReflectance = 0.99;

    /// <summary>All that is wrong with a scene; empty when it can be computed.</summary>
    [Source("Derived", "geometry of the studio: light must leave the window below the sheet, inside the skirts and above the ground")]
    public static IReadOnlyList<LightProblem> Problems(LightScene scene)
    {
        ArgumentNullException.ThrowIfNull(scene);
        return Problems(scene.Panel, scene.Surround, scene.Emitters);
    }

    /// <summary>All that is wrong with a scene and what the camera is to see of it.</summary>
    [Source("Derived", "geometry of the studio: light must leave the window below the sheet, inside the skirts and above the ground")]
    public static IReadOnlyList<LightProblem> Problems(LightScene scene, IReadOnlyList<CameraView> views)
    {
        ArgumentNullException.ThrowIfNull(scene);
        ArgumentNullException.ThrowIfNull(views);
        return [.. Problems(scene), .. views.SelectMany(view => ViewCheck.Problems(scene.Panel, view))];
    }

    /// <summary>All that is wrong with what the camera is to see of a sheet; empty when it can be computed.</summary>
    [Source("Derived", "geometry of the studio: the camera looks down on the sheet, the subject stands on its flat part")]
    public static IReadOnlyList<LightProblem> ViewProblems(LightPanel panel, CameraView view)
    {
        ArgumentNullException.ThrowIfNull(panel);
        ArgumentNullException.ThrowIfNull(view);
        return [.. ViewCheck.Problems(panel, view)];
    }

    internal static IReadOnlyList<LightProblem> Problems(LightPanel panel, LightSurround surround)
    {
        ArgumentNullException.ThrowIfNull(panel);
        ArgumentNullException.ThrowIfNull(surround);
        return [.. PanelProblems(panel), .. SweepProblems(panel), .. SurroundProblems(surround)];
    }

    internal static IReadOnlyList<LightProblem> Problems(LightPanel panel, LightSurround surround, IReadOnlyList<Emitter> emitters)
    {
        ArgumentNullException.ThrowIfNull(emitters);
        var found = Problems(panel, surround);
        if (found.Count > 0)
        {
            return found;
        }

        return emitters.Count == 0
            ? [new(LightProblemKind.NoFlash, "No flash stands under the panel.")]
            : [.. emitters.SelectMany((emitter, index) => EmitterCheck.Problems(panel, surround, emitter, index + 1))];
    }

    internal static void Refuse(IReadOnlyList<LightProblem> problems)
    {
        if (problems.Count > 0)
        {
            throw new ArgumentException(string.Join(' ', problems.Select(problem => problem.Sentence)), nameof(problems));
        }
    }

    internal static IEnumerable<LightProblem> Extent(params (string Name, double Metres)[] lengths) => lengths
        .Where(length => !(double.IsFinite(length.Metres) && length.Metres > 0))
        .Select(length => new LightProblem(
            LightProblemKind.NoExtent, FormattableString.Invariant($"The {length.Name} is {1000 * length.Metres:0.#} mm; it must be above zero.")));

    private static IEnumerable<LightProblem> PanelProblems(LightPanel panel) =>
    [
        .. Extent(("panel's width", panel.Width.Meters), ("panel's depth", panel.Depth.Meters), ("panel's height", panel.Height.Meters)),
        .. Share("panel's transmittance", panel.Transmittance, double.Epsilon, 1),
        .. Share("panel's underside reflectance", panel.UndersideReflectance, 0, MostReflectance),
        .. Share("panel's scatter exponent", panel.ScatterExponent, 0, 1000),
    ];

    private static IEnumerable<LightProblem> SweepProblems(LightPanel panel)
    {
        if (panel.SweepRadius is not { } radius)
        {
            return [];
        }

        var arc = panel.SweptLength.Meters;
        var isPossible = radius.Meters > 0 && arc >= 0 && arc < panel.Depth.Meters && arc <= radius.Meters * Math.PI / 2;
        return isPossible
            ? []
            : [new(LightProblemKind.ImpossibleSweep, FormattableString.Invariant(
                $"An arc of {1000 * arc:0} mm with radius {1000 * radius.Meters:0} mm must be shorter than the sheet and at most a quarter turn."))];
    }

    private static IEnumerable<LightProblem> SurroundProblems(LightSurround surround) =>
    [
        .. Share("ground's reflectance", surround.FloorReflectance, 0, MostReflectance),
        .. Share("skirts' reflectance", surround.SkirtReflectance ?? 0, 0, MostReflectance),
        .. surround.OpenFloorMargin is { } margin && !(margin.Meters is >= 0 and <= 10)
            ? [new LightProblem(LightProblemKind.OutOfRange, "The lit ground beyond the panel must reach 0 m to 10 m.")]
            : Array.Empty<LightProblem>(),
    ];

    private static IEnumerable<LightProblem> Share(string name, double value, double lowest, double highest) =>
        value >= lowest && value <= highest
            ? []
            : [new(LightProblemKind.OutOfRange, FormattableString.Invariant($"The {name} is {value:0.###}; it must lie between {lowest:0.##} and {highest:0.##}."))];
}
