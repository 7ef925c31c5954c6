using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Flashes;
using StudioKit.Physics.Light;
using StudioKit.Physics.Sources;
using StudioKit.Planning.Framing;
using StudioKit.Planning.Studio.Lights;
using StudioKit.Planning.Studio.Panels;
using UnitsNet;

namespace StudioKit.Planning.Expected;

/// <summary>What a plan expects a meter or a camera to read, for whatever was set in the field.</summary>
public sealed class ExpectedLight
{
    private readonly Plan _plan;
    private readonly StudioLight _light;

    /// <summary>Starts from a plan.</summary>
    /// <param name="plan">The plan; its kit holds whatever corrections are to count.</param>
    /// <exception cref="ArgumentException">The plan keeps no light of its studio, as one written by hand does not.</exception>
    public ExpectedLight(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        _plan = plan;
        _light = plan.Light ?? throw new ArgumentException("The plan keeps no light of its studio.", nameof(plan));
    }

    /// <summary>Luminous exposure that an incident-light meter reads on a flash's axis [lx·s].</summary>
    /// <param name="light">The flash with its modifier and zoom.</param>
    /// <param name="shot">Power and distance.</param>
    /// <returns>Q [lx·s].</returns>
    [Source("Iso1230", "guide number, through the incident-light constant of ISO 2720")]
    public double InBeam(LightSpec light, ShotSettings shot)
    {
        ArgumentNullException.ThrowIfNull(light);
        ArgumentNullException.ThrowIfNull(shot);
        var distance = shot.Distance ?? light.Distance;
        var flash = LightingCases.Flash(_plan.Kit, light);
        return FlashExposure.LuminousExposure(flash.GuideNumber, shot.Power, distance)
            * (flash.OutdoorCorrection - flash.ModifierLoss).Ratio * NearField.RectangleFactor(flash.HeadWidth, flash.HeadHeight, distance);
    }

    /// <summary>Luminous exposure that an incident-light meter reads face down on the panel, straight above the flash below [lx·s].</summary>
    /// <param name="setUp">A white-background set-up of the kit.</param>
    /// <param name="shot">Power and distance.</param>
    /// <returns>Q [lx·s]; none where the geometry is impossible.</returns>
    /// <remarks>A sheet whose luminance falls off as cosˢ gives M = 2π·L/(s + 2), L taken straight up; π·L for a perfect diffuser.</remarks>
    [Source("CommonPractice", "CIE vocabulary: Lambertian surface, M = π·L")]
    public double? OnPanel(SetUpSpec setUp, ShotSettings shot)
    {
        ArgumentNullException.ThrowIfNull(shot);
        if (_light.Of(Moved(setUp, shot)).Map is not { } map)
        {
            return null;
        }

        var below = PanelScene.Below(setUp).First();
        var along = (map.Panel.Depth / 2) + PanelScene.FlatMiddle(_plan.Panel) + below.OffsetBack;
        return map.LuminanceTime(below.OffsetRight, along, Direction.Up) * 2 * Math.PI / (_plan.Kit.Panel.ScatterExponent + 2) * shot.Power.Fraction;
    }

    /// <summary>Margins over a frame of the bare panel, or of the bare upright sheet where the subject stands before one.</summary>
    /// <param name="setUp">A white-background set-up of the kit.</param>
    /// <param name="framing">Name of a framing of the plan.</param>
    /// <param name="pitch">Angle of the line of sight under the horizontal.</param>
    /// <param name="isUpright">Whether the frame is higher than wide.</param>
    /// <param name="shot">What was set.</param>
    /// <returns>The margins; none where the geometry is impossible or the frame misses the panel.</returns>
    /// <exception cref="ArgumentException">The plan has no such set-up at such a framing.</exception>
    [Source("Iso12232", "image-plane exposure of the sheet's luminance towards the entrance pupil, against 78/S")]
    public ExpectedFrame? OnSensor(SetUpSpec setUp, string framing, Angle pitch, bool isUpright, ShotSettings shot)
    {
        ArgumentNullException.ThrowIfNull(shot);
        var moved = Moved(setUp, shot);
        var camera = CameraOf(moved, framing, PlannedAt(setUp, framing), shot);
        var sight = PanelSight.At(_plan.Kit.Subjects, setUp, FramingOf(framing), pitch, Angle.Zero);
        var (lit, level) = setUp.IsBeforeUpright ? _light.OnUpright(moved, sight) : (_light.Of(moved), _light.ViewOf(sight));
        var margins = lit.Seen(isUpright ? Upright(level) : level, camera);
        return margins?.Darkest is null ? null : new ExpectedFrame(margins, -shot.Power.StopsBelowFull);
    }

    /// <summary>Margin of the darkest place over all of a set-up's camera pitches.</summary>
    /// <param name="setUp">A white-background set-up of the kit.</param>
    /// <param name="framing">Name of a framing of the plan.</param>
    /// <param name="shot">What was set.</param>
    /// <returns>The margin; none where the geometry is impossible or no frame sees the panel.</returns>
    /// <exception cref="ArgumentException">The plan has no such set-up at such a framing.</exception>
    [Source("Iso12232", "image-plane exposure of the sheet's luminance towards the entrance pupil, against 78/S")]
    public Stops? Darkest(SetUpSpec setUp, string framing, ShotSettings shot)
    {
        ArgumentNullException.ThrowIfNull(setUp);
        return setUp.CameraPitches.Min(pitch => OnSensor(setUp, framing, pitch, isUpright: false, shot)?.Darkest.Value) is { } darkest
            ? new Stops(darkest)
            : null;
    }

    /// <summary>Where a matt card that faces camera and flash lies against clipping.</summary>
    /// <param name="setUp">A set-up of the kit.</param>
    /// <param name="framing">Name of a framing of the plan.</param>
    /// <param name="light">The flash that lights the card.</param>
    /// <param name="reflectance">Reflectance of the card [1]; above 0, at most 1.</param>
    /// <param name="shot">What was set.</param>
    /// <returns>Stops above clipping, negative under it.</returns>
    /// <exception cref="ArgumentException">The plan has no such set-up at such a framing.</exception>
    [Source("Iso12232", "image-plane exposure against 78/S")]
    public Stops OfCard(SetUpSpec setUp, string framing, LightSpec light, double reflectance, ShotSettings shot)
    {
        ArgumentNullException.ThrowIfNull(light);
        ArgumentNullException.ThrowIfNull(shot);
        var flash = LightingCases.Flash(_plan.Kit, light) with { Power = shot.Power, Distance = shot.Distance ?? light.Distance };
        var camera = CameraOf(setUp, framing, PlannedAt(setUp, framing), shot) with { CoverLoss = default };
        return SubjectExposure.AgainstClipping(new SubjectExposureCase { Flash = flash, Camera = camera }, reflectance);
    }

    private CameraCase CameraOf(SetUpSpec setUp, string framing, ExposurePlan planned, ShotSettings shot) =>
        LightingCases.Camera(_plan.Kit, setUp, FramingOf(framing), shot.Aperture ?? planned.Aperture) with { Iso = shot.Iso ?? planned.Iso };

    private ExposurePlan PlannedAt(SetUpSpec setUp, string framing) =>
        _plan.Exposures.FirstOrDefault(exposure => exposure.SetUp == setUp.Name && exposure.Framing.Name == framing)
        ?? throw new ArgumentException($"The plan has no set-up '{setUp.Name}' at '{framing}'.", nameof(framing));

    private PlannedFraming FramingOf(string name) => _plan.PlannedFramings.First(framing => framing.Plan.Name == name);

    private static CameraView Upright(CameraView view) => view with { FieldWidth = view.FieldHeight, FieldHeight = view.FieldWidth };

    // The set-up with the flashes of its sheet standing where they stood.
    private static SetUpSpec Moved(SetUpSpec setUp, ShotSettings shot)
    {
        ArgumentNullException.ThrowIfNull(setUp);
        return setUp with
        {
            Lights = [.. setUp.Lights.Select(light => light.Role.IsBackground() ? light with { Distance = shot.Distance ?? light.Distance } : light)],
        };
    }
}
