using StudioKit.Kits;
using StudioKit.Planning;
using StudioKit.Planning.Standing;
using StudioKit.Wording;

namespace StudioKit.Sheets.Json;

/// <summary>Where a light about the subject stands, as JSON.</summary>
internal static class LightStandJson
{
    /// <summary>Writes one light in one exposure.</summary>
    public static void Write(JsonReport json, LightStandPlan stand) => json
        .Text("setUp", stand.SetUp)
        .Text("framing", stand.Framing)
        .Text("flash", stand.Flash)
        .Text("role", MemberText.Of(stand.Role))
        .Number("azimuthDeg", stand.From.Azimuth.Degrees)
        .Number("elevationDeg", stand.From.Elevation.Degrees)
        .Number("clockHours", stand.From.Hour)
        .Millimetres("distance", stand.Distance)
        .Millimetres("right", stand.Right)
        .Millimetres("back", stand.Back)
        .Millimetres("up", stand.Up)
        .Millimetres("overGround", stand.OverGround)
        .Number("angleAcrossDeg", stand.AngleAcross.Degrees)
        .Number("angleUpDeg", stand.AngleUp.Degrees)
        .Text("softness", MemberText.Of(stand.Softness))
        .Stops("shadowDepth", stand.ShadowDepth)
        .Stops("directionLoss", stand.DirectionLoss)
        .Number("lensCoversShare", stand.LensCovers)
        .Number("lensCoversAtPitchDeg", stand.LensCoversAt.Degrees)
        .Stops("sheetLevel", stand.SheetLevel)
        .Stops("glareLevel", stand.GlareLevel)
        .Text("holder", stand.Holder)
        .Text("heldBy", MemberText.Of(stand.HeldBy))
        .Millimetres("reachNeeded", stand.ReachNeeded)
        .Flag("withinReach", stand.WithinReach)
        .List("faults", stand.Faults, fault => Write(json, fault))
        .Text("text", $"{StandText.Where(stand)}; {StandText.Held(stand)}; {StandText.Soft(stand)}");

    /// <summary>Writes what is wrong with where a light stands.</summary>
    public static void Write(JsonReport json, LightFault fault) => json
        .Text("kind", MemberText.Of(fault.Kind))
        .Number("pitchDeg", fault.Pitch?.Degrees)
        .Millimetres("by", fault.By)
        .Stops("over", fault.Over)
        .Number("share", fault.Share);
}
