using StudioKit.Physics.Light;
using StudioKit.Planning;
using UnitsNet;

namespace StudioKit.Wording;

/// <summary>What is impossible about the geometry of a lit panel, in words.</summary>
public static class LightProblemText
{
    /// <summary>The problems of a set-up that lights the panel, a sentence each.</summary>
    public static IEnumerable<string> Of(PanelLightPlan light)
    {
        ArgumentNullException.ThrowIfNull(light);
        return light.Problems.Select(problem => light.Upright is null ? Of(problem, light.FlashOf(problem)) : OfUpright(problem, light.FlashOf(problem)));
    }

    /// <summary>A problem in a sentence.</summary>
    internal static string Of(LightProblem problem, string? name)
    {
        var flash = name ?? "The flash below";
        return problem.Kind switch
        {
            LightProblemKind.NoExtent => FormattableString.Invariant($"The {Name(problem, flash)} is {PlanFormat.Millimetres(Length.FromMeters(problem.Value ?? 0))}; it must be above zero."),
            LightProblemKind.OutOfRange when problem.Lowest is null => $"{flash} has a place or an intensity that is not a number, or is negative.",
            LightProblemKind.OutOfRange => FormattableString.Invariant(
                $"The {Name(problem, flash)} is {problem.Value:0.###}; it must lie between {problem.Lowest:0.##} and {problem.Highest:0.##}."),
            LightProblemKind.ImpossibleSweep => FormattableString.Invariant(
                $"An arc of {Whole(problem.Arc)} with radius {Whole(problem.Radius)} must be shorter than the sheet and at most a quarter turn."),
            LightProblemKind.NoFlash => "No flash stands under the panel.",
            LightProblemKind.AboveSheet => FormattableString.Invariant($"{flash} stands level with the sheet or above it, by {Whole(problem.By)}."),
            LightProblemKind.InsideFloor => FormattableString.Invariant($"{flash} reaches {Whole(problem.By)} into the ground."),
            LightProblemKind.OutsideSkirts => FormattableString.Invariant($"{flash} reaches {Whole(problem.By)} through a skirt."),
            LightProblemKind.AimedAway => $"{flash} is aimed away: none of its light goes straight to the panel.",
            LightProblemKind.SubjectOffPanel => FormattableString.Invariant(
                $"{problem.View}: the subject stands {Whole(problem.Right)} right and {Whole(problem.Back)} back of the panel's middle, off its flat part."),
            LightProblemKind.CameraBelowPanel => FormattableString.Invariant(
                $"{problem.View}: with a pitch of {problem.Pitch?.Degrees:0.#}° the camera does not look down on the sheet from above it."),
            _ => throw new ArgumentOutOfRangeException(nameof(problem), problem.Kind, "A problem without words."),
        };
    }

    /// <summary>A problem of a sheet that stands upright, in a sentence.</summary>
    internal static string OfUpright(LightProblem problem, string? name) => problem.Kind switch
    {
        LightProblemKind.NoExtent when problem.Quantity is LightQuantity.PanelWidth or LightQuantity.PanelDepth => "No framing of the set-up sees the sheet, and the kit gives it no size.",
        LightProblemKind.AimedAway => $"{name} throws no light straight at the sheet.",
        LightProblemKind.SubjectOffPanel => $"{problem.View}: the camera's subject stands over or under the sheet, not before it.",
        LightProblemKind.CameraBelowPanel => $"{problem.View}: the camera stands behind the sheet.",
        _ => Of(problem, name ?? "The flash behind"),
    };

    private static string Whole(Length? length) => length is { } given ? PlanFormat.WholeMillimetres(given) : "";

    private static string Name(LightProblem problem, string flash) => problem.Quantity switch
    {
        LightQuantity.PanelWidth => "panel's width",
        LightQuantity.PanelDepth => "panel's depth",
        LightQuantity.PanelHeight => "panel's height",
        LightQuantity.WindowWidth => $"width of {flash}'s window",
        LightQuantity.WindowHeight => $"height of {flash}'s window",
        LightQuantity.FieldWidth => $"field width of {problem.View}",
        LightQuantity.FieldHeight => $"field height of {problem.View}",
        LightQuantity.PupilDistance => $"pupil distance of {problem.View}",
        LightQuantity.Transmittance => "panel's transmittance",
        LightQuantity.UndersideReflectance => "panel's underside reflectance",
        LightQuantity.ScatterExponent => "panel's scatter exponent",
        LightQuantity.FloorReflectance => "ground's reflectance",
        LightQuantity.SkirtReflectance => "skirts' reflectance",
        LightQuantity.OpenFloorMargin => "reach of the lit ground in metres",
        LightQuantity.GroundUnderSheet => "height of the sheet over the ground in metres",
        LightQuantity.Lean => "lean of the sheet in degrees",
        _ => throw new ArgumentOutOfRangeException(nameof(problem), problem.Quantity, "A quantity without words."),
    };
}
