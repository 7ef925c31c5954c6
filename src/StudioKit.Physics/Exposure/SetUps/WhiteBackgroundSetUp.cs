using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Exposure.SetUps;

/// <summary>Settings for a white background: the panel burnt out from below, the subject lit from above, daylight kept out.</summary>
/// <remarks>
/// The ISO speed nearest to the start is taken at which the flash below, and one behind a second sheet, reach their white margin, the flashes above, together
/// with what daylight is left, a correct
/// exposure, and daylight stays under the flash by its limit. A flash of a sheet is rounded to the brighter click, those above
/// to the nearest.
/// </remarks>
public static class WhiteBackgroundSetUp
{
    /// <summary>Finds the settings.</summary>
    /// <param name="setUp">Flashes, panel, camera, light of the place and limits.</param>
    /// <returns>Settings, levels and, where there are none that work, the limit in the way.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A field is outside the range that its record gives.</exception>
    [Source("Iso12232", "image-plane exposure against 78/S and 10/S, solved for speed and power")]
    public static SetUpResult Solve(WhiteBackgroundCase setUp) => SetUpCamera.FirstThatWorks(setUp, SolveAt);

    private static SetUpResult SolveAt(WhiteBackgroundCase setUp, CameraCase camera) =>
        SetUpCamera.InSync(setUp, camera, inSync => SolveWith(setUp, inSync));

    private static SetUpResult SolveWith(WhiteBackgroundCase setUp, CameraCase camera)
    {
        var sheets = setUp.Sheets;
        var margins = sheets.Select(sheet => MarginOf(setUp, sheet, camera)).ToList();
        var ambient = SetUpCamera.AmbientAtIso100(setUp.Ambient, camera, camera.Shutter);
        var window = Window(setUp, camera, margins, ambient);
        var iso = window.Choose(IsoWindow.StopsOf(camera.Iso), setUp.Limits, out var conflict);
        var set = camera with { Iso = IsoWindow.SpeedAt(iso) };

        var lights = Set(setUp, set, [.. margins.Select(margin => margin with { Camera = set })], ambient + iso);
        return Judge(setUp, sheets, set, lights, new Stops(ambient + iso), conflict);
    }

    private static WhiteMarginCase MarginOf(WhiteBackgroundCase setUp, BackgroundSheet sheet, CameraCase camera) => new()
    {
        Flash = PowerCap.Apply(sheet.Flash, setUp.Limits),
        Camera = camera,
        Transmittance = sheet.Transmittance,
        DarkestPoint = sheet.DarkestPoint,
        Uncertainty = sheet.Flash.Uncertainty ?? setUp.Uncertainty,
    };

    private static IsoWindow Window(WhiteBackgroundCase setUp, CameraCase camera, IReadOnlyList<WhiteMarginCase> margins, double ambient)
    {
        var under = Guard.NonNegative(setUp.AmbientBelowFlash.Value, nameof(setUp.AmbientBelowFlash));
        var window = new IsoWindow(setUp.Limits);
        window.AtMost(-under - ambient, IsoBound.Ambient);
        foreach (var margin in margins)
        {
            var panel = WhiteMargin.AtFullPower(margin) - Math.Log2(camera.Iso.Value / 100);
            SubjectLighting.Bound(ref window, margin.Flash, panel, setUp.TargetWhiteMargin.Value, setUp.TargetWhiteMargin.Value);
        }

        foreach (var light in setUp.Lights)
        {
            var flash = PowerCap.Apply(light.Flash, setUp.Limits);
            var target = SubjectLighting.Target(setUp.Lights, light, 0);
            SubjectLighting.Bound(
                ref window, flash, SubjectLighting.AtIso100(flash, camera), target, target + SubjectLighting.Beside(-under));
        }

        return window;
    }

    private static LightSolution[] Set(WhiteBackgroundCase setUp, CameraCase camera, IReadOnlyList<WhiteMarginCase> margins, double ambient)
    {
        var goal = SubjectLighting.Beside(ambient);
        return
        [
            .. margins.Select(margin => OfSheet(setUp, margin)),
            .. setUp.Lights.Select(light => SubjectLighting.Set(
                PowerCap.Apply(light.Flash, setUp.Limits), camera, SubjectLighting.Target(setUp.Lights, light, goal), setUp.Uncertainty)),
        ];
    }

    private static LightSolution OfSheet(WhiteBackgroundCase setUp, WhiteMarginCase margin)
    {
        var power = WhiteMargin.PowerFor(margin, setUp.TargetWhiteMargin);
        var flash = margin.Flash with { Power = power.Power };
        return new LightSolution { Flash = flash, Power = power, Panel = margin with { Flash = flash } };
    }

    // The darkest point of all sheets is what may turn grey, the brightest what washes out.
    private static SetUpResult Judge(
        WhiteBackgroundCase setUp, IReadOnlyList<BackgroundSheet> sheets, CameraCase camera, LightSolution[] lights, Stops ambient, MissedLimit? conflict)
    {
        var margin = new Stops(lights.Take(sheets.Count).Min(light => light.Power.Level.Value));
        var brightest = new Stops(sheets.Zip(lights, (sheet, light) => (light.Power.Level + sheet.BrightestPoint - sheet.DarkestPoint).Value).Max());
        var highest = Exposure.Veil.HighestMargin(setUp.VeilLimit, setUp.GlareIndex, setUp.BackgroundShare, camera.MidToneUnderClipping);
        var veil = Exposure.Veil.Lift(
            Exposure.Veil.ShareOfSaturation(brightest, setUp.GlareIndex, setUp.BackgroundShare), (-camera.MidToneUnderClipping).Ratio);
        return new SetUpResult
        {
            Camera = camera,
            Lights = lights,
            AmbientLevel = ambient,
            SubjectLevel = SubjectLighting.Total(lights.Skip(sheets.Count), ambient.Value),
            IsoAboveBase = new Stops(IsoWindow.StopsOf(camera.Iso) - IsoWindow.StopsOf(setUp.Limits.LowestIso)),
            WhiteMargin = margin,
            BrightestMargin = brightest,
            HighestMargin = highest,
            Veil = veil,
            Missed = [.. MissedLimit.Any(conflict), .. SubjectLighting.Broken(lights, setUp.Limits), .. MissedLimit.Any(TooBright(brightest, highest))],
            Caveats = [.. SetUpCamera.SyncCaveat(setUp.Camera.Shutter, setUp.Limits)],
        };
    }

    private static MissedLimit.Veils? TooBright(Stops brightest, Stops highest) => brightest.Value <= highest.Value
        ? null
        : new MissedLimit.Veils(brightest, highest);
}
