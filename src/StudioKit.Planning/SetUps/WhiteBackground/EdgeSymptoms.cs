using StudioKit.Kits.SetUps;
using StudioKit.Kits.Uprights;
using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using StudioKit.Planning.Changes;
using UnitsNet;

namespace StudioKit.Planning.SetUps.WhiteBackground;

/// <summary>Edges eaten by the light of the sheet behind: less of it, a sheet further off, or one no larger than it must be.</summary>
internal static class EdgeSymptoms
{
    private const double Same = 1e-6;

    private static readonly double[] Further = [1.15, 1.3, 1.5, 1.75, 2, 2.5, 3];

    /// <summary>The symptom with what may help; none where no sheet behind gives the edges so much that a rim of them shows it: what is seen then has another cause.</summary>
    /// <param name="setUp">The set-up.</param>
    /// <param name="upright">The sheet behind; none where it has none.</param>
    /// <param name="now">The exposure.</param>
    /// <param name="needed">The sheet that a changed kit asks for, whatever size it is given.</param>
    public static IEnumerable<SymptomRule> Of(SetUpSpec setUp, UprightSpec? upright, ExposurePlan now, Func<ValueList<KitChange>, UprightPlan?> needed)
    {
        if (upright is null || now is not { EdgeSpill.Strongest: { RimShare: > 0 } edge, WhiteMargin: { } darkest } || now.Lights.FirstOrDefault(light => light.Role == LightRole.Behind) is not { } behind)
        {
            yield break;
        }

        var step = behind.DialStep;
        yield return new SymptomRule(
            Symptom.EatenEdges,
            [.. Less(setUp, darkest, step), .. Away(setUp, upright, needed), .. Smaller(upright, needed)],
            changed => changed is { EdgeSpill.Strongest: { } left, WhiteMargin: { } white } && left.AgainstKey.Value <= edge.AgainstKey.Value - step.Value + Same && white.Value >= -Same)
        {
            Room = new Stops(Math.Max(0, Math.Floor((darkest.Value / step.Value) + Same) * step.Value)),
        };
    }

    private static IEnumerable<ValueList<KitChange>> Less(SetUpSpec setUp, Stops darkest, Stops step) =>
        (darkest - step).Value >= -Same ? [[new KitChange.TargetMargin(setUp.Name, darkest - step)]] : [];

    // A sheet of a given size must be cut larger where the camera would look past it.
    private static IEnumerable<ValueList<KitChange>> Away(SetUpSpec setUp, UprightSpec upright, Func<ValueList<KitChange>, UprightPlan?> needed)
    {
        foreach (var share in Further)
        {
            var move = new KitChange.Background(setUp.Name, Length.FromCentimeters(Math.Round(setUp.BackgroundDistance.Centimeters * share)));
            var larger = needed([move]) is { } sheet && upright is { Width: { } width, Height: { } height } && (sheet.Width > width || sheet.Height > height)
                ? new KitChange.RecutUpright(upright.Name, UnitMath.Max(width, sheet.Width), UnitMath.Max(height, sheet.Height))
                : null;
            yield return larger is null ? [move] : [move, larger];
        }
    }

    private static IEnumerable<ValueList<KitChange>> Smaller(UprightSpec upright, Func<ValueList<KitChange>, UprightPlan?> needed) =>
        upright is { Width: { } width, Height: { } height } && needed([]) is { } sheet && sheet.Width <= width && sheet.Height <= height && (sheet.Width < width || sheet.Height < height)
            ? [[new KitChange.RecutUpright(upright.Name, sheet.Width, sheet.Height)]]
            : [];
}
