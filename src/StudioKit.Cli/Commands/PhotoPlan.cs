using StudioKit.Field;
using StudioKit.Field.Advice;
using StudioKit.Field.Analysis;
using StudioKit.Field.Pictures;
using StudioKit.Physics.Exposure;
using StudioKit.Planning;
using StudioKit.Planning.Advising;
using StudioKit.Planning.Expected;
using UnitsNet;

namespace StudioKit.Cli.Commands;

/// <summary>The plan that test frames are held against.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Expected">What it expects to be read.</param>
/// <param name="SetUp">Name of the set-up as typed; empty for the only one.</param>
/// <param name="Framing">Name of the framing as typed; empty where the file is to tell it.</param>
/// <param name="Pitch">Camera pitch as typed.</param>
internal sealed record PhotoPlan(Plan Plan, ExpectedLight Expected, string SetUp, string Framing, Angle? Pitch)
{
    /// <summary>Set-up and framing of a frame.</summary>
    public FieldResult<PlanPlace> PlaceOf(FrameAnalysis frame) =>
        new PlanSearch(Plan, frame.Path).FrameAtAnyPitch(SetUp, Framing, frame.Settings.FocalLength);

    /// <summary>Set-up, framing and camera pitch of a frame.</summary>
    public FieldResult<PlanPlace> ViewOf(FrameAnalysis frame) =>
        new PlanSearch(Plan, frame.Path).Frame(SetUp, Framing, Pitch, frame.Settings.FocalLength);

    /// <summary>The starting exposure there.</summary>
    public ExposurePlan ExposureAt(PlanPlace place) =>
        Plan.Exposures.First(exposure => exposure.SetUp == place.SetUp.Name && exposure.Framing.Name == place.Framing);

    /// <summary>The flash below as it stands there, or as typed.</summary>
    public BeneathFlash? FlashAt(PlanPlace place, (FlashPower? Power, Length? Distance) shot, Length nearest) =>
        BeneathFlash.Of(Plan, place, shot, nearest, Expected);

    /// <summary>What the plan makes of a frame.</summary>
    /// <param name="place">Set-up and framing; the camera pitch counts where it was typed.</param>
    /// <param name="settings">What its file says.</param>
    /// <param name="flash">How the flash below stood.</param>
    /// <param name="darkest">Margin of its darkest background; none where all is white.</param>
    /// <param name="spread">Brightest less darkest background, or the least that this is; none where nothing of it is seen.</param>
    /// <param name="target">Margin to aim for; the set-up's own where there is none.</param>
    public FrameAdvice? Advice(PlanPlace place, FrameSettings settings, BeneathFlash flash, Stops? darkest, Stops? spread, Stops? target)
    {
        var exposure = ExposureAt(place);
        var shot = new ShotSettings(flash.Power, flash.Distance, SettingsDifference.ApertureOf(settings, exposure), settings.MarkedIso);
        return Plan.Advice.AfterFrame(exposure, new TestedFrame(shot, darkest) { Spread = spread, Target = target, ViewAboveDarkest = ViewAboveDarkest(place, shot) });
    }

    // Corners of another view than the darkest are brighter by so much in the plan too.
    private Stops ViewAboveDarkest(PlanPlace place, ShotSettings shot) => Pitch is not { } pitch
        ? default
        : Expected.OnSensor(place.SetUp, place.Framing, pitch, isUpright: false, shot)?.Darkest - Expected.Darkest(place.SetUp, place.Framing, shot) ?? default;
}
