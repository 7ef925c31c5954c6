using StudioKit.Field;
using StudioKit.Field.Analysis;
using StudioKit.Physics.Exposure;
using StudioKit.Planning;
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
}
