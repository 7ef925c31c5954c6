using StudioKit.Kits;
using StudioKit.Planning.Covers;
using StudioKit.Wording;

namespace StudioKit.Sheets.Json;

/// <summary>Clear covers and tanks as JSON.</summary>
internal static class CoverJson
{
    /// <summary>Writes the cover of one set-up.</summary>
    public static void Write(JsonReport json, CoverPlan cover) => json
        .Text("setUp", cover.SetUp)
        .Text("cover", cover.Cover)
        .Text("shape", MemberText.Of(cover.Shape))
        .Flag("lifted", cover.Lifted)
        .Millimetres("water", cover.Water)
        .Millimetres("footWidth", cover.FootWidth)
        .Millimetres("footDepth", cover.FootDepth)
        .Flag("standsOnSheet", cover.StandsOnSheet)
        .Millimetres("longestAnimal", cover.LongestAnimal)
        .Millimetres("highestAnimal", cover.HighestAnimal)
        .Number("stayS", cover.Stay.Limit.Seconds)
        .Text("stayLimitedBy", MemberText.Of(cover.Stay.Kind))
        .Number("warmingK", cover.Warming?.Kelvins)
        .List("subjects", cover.Subjects, subject => json.Text("name", subject.Name).Flag("fits", subject.Fits).Millimetres("leastSide", subject.LeastSide).Millimetres("leastHeight", subject.LeastHeight))
        .List("framings", cover.Framings, framing => Write(json, framing))
        .Text("text", CoverText.Whole(cover));

    /// <summary>Writes one view.</summary>
    public static void Write(JsonReport json, CoveredView view) => json
        .Number("pitchDeg", view.Pitch.Degrees)
        .Number("rollDeg", view.Roll.Degrees)
        .Text("through", view.Seen.Face is { } face ? MemberText.Of(face) : null)
        .Number("incidenceDeg", view.Seen.Incidence.Degrees)
        .Stops("sheetLoss", view.Seen.SheetLoss)
        .Stops("subjectLoss", view.Seen.SubjectLoss)
        .Millimetres("glassToCover", view.Room)
        .Millimetres("distance", view.Seen.Distance)
        .Millimetres("seemingDistance", view.Seen.SeemingDistance)
        .Millimetres("astigmaticDifference", view.Seen.AstigmaticDifference)
        .Texts("faults", view.Faults.Select(fault => MemberText.Of(fault)))
        .List("flashesThatShow", view.Shown, shown => json
            .Text("flash", shown.Flash).Text("role", MemberText.Of(shown.Role)).Text("in", MemberText.Of(shown.Where.Face))
            .Number("frameRight", shown.Where.Right).Number("frameUp", shown.Where.Up).Number("clockHours", shown.Hour).Number("towardsEdge", shown.TowardsEdge).Flag("overSubject", shown.Where.OnSubject));

    private static void Write(JsonReport json, CoveredFraming framing) => json
        .Text("framing", framing.Framing)
        .Millimetres("depthOfField", framing.DepthOfField)
        .List("views", framing.Views, view => Write(json, view))
        .List("clear", framing.Clear, range => json.Number("fromDeg", range.From.Degrees).Number("toDeg", range.To.Degrees));
}
