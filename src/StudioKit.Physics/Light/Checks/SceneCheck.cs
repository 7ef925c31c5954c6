using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Light.Checks;

/// <summary>Names what is impossible about a studio before anything is computed.</summary>
public static class SceneCheck
{
    private const double MostReflectance = 0.99;
    private const double WidestOpenFloor = 10;
    private const double MostLean = 80;

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
            ? [new(LightProblemKind.NoFlash)]
            : [.. emitters.SelectMany((emitter, index) => EmitterCheck.Problems(panel, surround, emitter, index + 1))];
    }

    internal static void Refuse(IReadOnlyList<LightProblem> problems)
    {
        if (problems.Count > 0)
        {
            throw new ArgumentException(string.Join(' ', problems), nameof(problems));
        }
    }

    internal static IEnumerable<LightProblem> Extent(params (LightQuantity Quantity, double Metres)[] lengths) => lengths
        .Where(length => !(double.IsFinite(length.Metres) && length.Metres > 0))
        .Select(length => new LightProblem(LightProblemKind.NoExtent) { Quantity = length.Quantity, Value = length.Metres });

    private static IEnumerable<LightProblem> PanelProblems(LightPanel panel) =>
    [
        .. Extent((LightQuantity.PanelWidth, panel.Width.Meters), (LightQuantity.PanelDepth, panel.Depth.Meters), (LightQuantity.PanelHeight, panel.Height.Meters)),
        .. Share(LightQuantity.Transmittance, panel.Transmittance, double.Epsilon, 1),
        .. Share(LightQuantity.UndersideReflectance, panel.UndersideReflectance, 0, MostReflectance),
        .. Share(LightQuantity.ScatterExponent, panel.ScatterExponent, 0, 1000),
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
            : [new(LightProblemKind.ImpossibleSweep) { Arc = panel.SweptLength, Radius = radius }];
    }

    private static IEnumerable<LightProblem> SurroundProblems(LightSurround surround) =>
    [
        .. Share(LightQuantity.FloorReflectance, surround.FloorReflectance, 0, MostReflectance),
        .. Share(LightQuantity.SkirtReflectance, surround.SkirtReflectance ?? 0, 0, MostReflectance),
        .. surround.Ground is { } ground ? GroundProblems(ground) : [],
        .. surround.OpenFloorMargin is { } margin ? Share(LightQuantity.OpenFloorMargin, margin.Meters, 0, WidestOpenFloor) : [],
    ];

    private static IEnumerable<LightProblem> GroundProblems(GroundBeside ground) =>
    [
        .. Share(LightQuantity.FloorReflectance, ground.Reflectance, 0, MostReflectance),
        .. Share(LightQuantity.OpenFloorMargin, ground.Beyond.Meters, 0, WidestOpenFloor),
        .. Share(LightQuantity.GroundUnderSheet, ground.Under.Meters, 0, WidestOpenFloor),
        .. Share(LightQuantity.Lean, ground.Lean.Degrees, 0, MostLean),
    ];

    private static IEnumerable<LightProblem> Share(LightQuantity quantity, double value, double lowest, double highest) =>
        value >= lowest && value <= highest
            ? []
            : [new(LightProblemKind.OutOfRange) { Quantity = quantity, Value = value, Lowest = lowest, Highest = highest }];
}
