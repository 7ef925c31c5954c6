using StudioKit.Field.Analysis;
using StudioKit.Field.Pictures;
using StudioKit.Physics.Exposure;
using StudioKit.Planning;
using StudioKit.Planning.Advising;
using StudioKit.Planning.Expected;
using UnitsNet;

namespace StudioKit.Field.Advice;

/// <summary>The plan that test frames are held against.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Expected">What it expects to be read.</param>
/// <param name="SetUp">Name of the set-up as named; empty for the only one.</param>
/// <param name="Framing">Name of the framing as named; empty where the file is to tell it.</param>
/// <param name="Pitch">Camera pitch as named; none where nobody did.</param>
public sealed record TestFramePlan(Plan Plan, ExpectedLight Expected, string SetUp, string Framing, Angle? Pitch)
{
    /// <summary>Set-up and framing of a frame.</summary>
    /// <param name="frame">The frame.</param>
    public FieldResult<PlanPlace> PlaceOf(FrameAnalysis frame)
    {
        ArgumentNullException.ThrowIfNull(frame);
        return new PlanSearch(Plan, frame.Path).FrameAtAnyPitch(SetUp, Framing, frame.Settings.FocalLength);
    }

    /// <summary>Set-up, framing and camera pitch of a frame.</summary>
    /// <param name="frame">The frame.</param>
    public FieldResult<PlanPlace> ViewOf(FrameAnalysis frame)
    {
        ArgumentNullException.ThrowIfNull(frame);
        return new PlanSearch(Plan, frame.Path).Frame(SetUp, Framing, Pitch, frame.Settings.FocalLength);
    }

    /// <summary>The starting exposure there.</summary>
    /// <param name="place">Set-up and framing.</param>
    public ExposurePlan ExposureAt(PlanPlace place)
    {
        ArgumentNullException.ThrowIfNull(place);
        return Plan.Exposures.First(exposure => exposure.SetUp == place.SetUp.Name && exposure.Framing.Name == place.Framing);
    }

    /// <summary>What a frame comes to, and what the plan makes of it.</summary>
    /// <param name="frame">The frame.</param>
    /// <param name="place">Set-up and framing; the camera pitch counts where it was named.</param>
    /// <param name="flash">How the flash below stood.</param>
    /// <param name="target">Margin to aim for; the set-up's own where there is none.</param>
    public FrameReport Report(FrameAnalysis frame, PlanPlace place, BeneathFlash flash, Stops? target)
    {
        ArgumentNullException.ThrowIfNull(frame);
        ArgumentNullException.ThrowIfNull(place);
        var darkest = frame is { Doubt: null, StopsMissing: > 0 } ? new Stops(-frame.StopsMissing) : (Stops?)null;
        var planned = frame.Doubt is null ? Advice(place, frame.Settings, flash, darkest, new Stops(frame.UnevennessStops), target) : null;
        var limits = new FrameLimits { VeilLimit = place.SetUp.VeilLimit, GlareIndex = Plan.Kit.Camera.VeilingGlare, Flash = flash, Planned = planned };
        return new FrameReport(frame, FrameFinding.Of(frame, limits))
        {
            Planned = planned,
            Differences = [.. SettingsDifference.Of(frame.Settings, ExposureAt(place))],
        };
    }

    /// <summary>The flash below as it stands there, or as named.</summary>
    /// <param name="place">Set-up and framing.</param>
    /// <param name="shot">Power and distance where they differ from the plan's.</param>
    /// <param name="nearest">How near the flash can stand.</param>
    public BeneathFlash FlashAt(PlanPlace place, (FlashPower? Power, Length? Distance) shot, Length nearest) =>
        BeneathFlash.Of(Plan, place, shot, nearest, Expected);

    /// <summary>What the plan makes of a frame.</summary>
    /// <param name="place">Set-up and framing; the camera pitch counts where it was named.</param>
    /// <param name="settings">What its file says.</param>
    /// <param name="flash">How the flash below stood.</param>
    /// <param name="darkest">Margin of its darkest background; none where all is white.</param>
    /// <param name="spread">Brightest less darkest background, or the least that this is; none where nothing of it is seen.</param>
    /// <param name="target">Margin to aim for; the set-up's own where there is none.</param>
    public FrameAdvice? Advice(PlanPlace place, FrameSettings settings, BeneathFlash flash, Stops? darkest, Stops? spread, Stops? target) =>
        Plan.Advice.AfterFrame(ExposureAt(place), Tested(place, settings, flash, darkest) with { Spread = spread, Target = target });

    /// <summary>How a frame was taken, and what it showed.</summary>
    /// <param name="place">Set-up and framing; the camera pitch counts where it was named.</param>
    /// <param name="settings">What its file says.</param>
    /// <param name="flash">How the flash below stood.</param>
    /// <param name="darkest">Margin of its darkest background; none where all is white.</param>
    public TestedFrame Tested(PlanPlace place, FrameSettings settings, BeneathFlash flash, Stops? darkest)
    {
        ArgumentNullException.ThrowIfNull(settings);
        ArgumentNullException.ThrowIfNull(flash);
        var shot = new ShotSettings(flash.Power, flash.Distance, SettingsDifference.ApertureOf(settings, ExposureAt(place)), settings.MarkedIso);
        return new TestedFrame(shot, darkest) { ViewAboveDarkest = ViewAboveDarkest(place, shot) };
    }

    // Corners of another view than the darkest are brighter by so much in the plan too.
    private Stops ViewAboveDarkest(PlanPlace place, ShotSettings shot) => Pitch is not { } pitch
        ? default
        : Expected.OnSensor(place.SetUp, place.Framing, pitch, isUpright: false, shot)?.Darkest - Expected.Darkest(place.SetUp, place.Framing, shot) ?? default;
}
