using StudioKit.Kits;
using StudioKit.Physics.Light;
using StudioKit.Physics.Optics;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning.Checks;
using StudioKit.Planning.Packing;
using StudioKit.Wording;

namespace StudioKit.Sheets.Json;

/// <summary>What stands in the way of a check as JSON: its kind, its numbers where it has any, and the words that sheets print.</summary>
internal static class FindingJson
{
    /// <summary>Writes one finding.</summary>
    public static void Write(JsonReport json, CheckFinding finding)
    {
        switch (finding)
        {
            case CheckFinding.OutOfReach { Limit: var limit }:
                Write(json, limit);
                break;
            case CheckFinding.OfFeature { Feature: var feature }:
                json.Section("feature", () => FeatureJson.Write(json, feature));
                break;
            case CheckFinding.OfCover of:
                json.Text("setUp", of.Cover.SetUp).Text("framing", of.Framing.Framing);
                CoverJson.Write(json, of.View);
                break;
            case CheckFinding.OfNoFrame none:
                json.Text("kind", MemberText.Of(none.Obstacle.Kind)).Millimetres("size", none.Obstacle.Size);
                break;
            case CheckFinding.OfFrame frame:
                json.Text("kind", MemberText.Of(frame.Problem.Kind))
                    .Text("part", frame.Problem.Member?.Label)
                    .Millimetres("size", frame.Problem.Size)
                    .Millimetres("limit", frame.Problem.Limit);
                break;
            case CheckFinding.OfCradle cradle:
                json.Text("kind", MemberText.Of(cradle.Fault.Kind)).Millimetres("by", cradle.Fault.By);
                break;
            case CheckFinding.OfLight light:
                json.Text("setUp", light.SetUp).Text("part", light.Flash);
                Write(json, light.Problem);
                break;
            case CheckFinding.OfUpright light:
                json.Text("setUp", light.SetUp).Text("part", light.Flash);
                Write(json, light.Problem);
                break;
            case CheckFinding.OfGap { Gap: var gap }:
                json.Text("setUp", gap.SetUp).Text("framing", gap.Framing).Number("pitchDegrees", gap.Pitch.Degrees).Millimetres("by", gap.By);
                break;
            case CheckFinding.OfStand of:
                json.Text("setUp", of.Stand.SetUp).Text("framing", of.Stand.Framing).Text("part", of.Stand.Flash);
                LightStandJson.Write(json, of.Fault);
                break;
            case CheckFinding.OfTrigger { Fault: var fault }:
                json.Text("kind", MemberText.Of(fault.Kind)).Text("setUp", fault.SetUp).Text("part", fault.Flash).Text("trigger", fault.Trigger)
                    .Millimetres("way", fault.Range?.Way).Millimetres("reach", fault.Range?.Reach);
                break;
            case CheckFinding.NotCut { Piece: var piece }:
                json.Text("kind", MemberText.Of(piece.Reason))
                    .Text("part", piece.Label)
                    .Count("count", piece.Count)
                    .Millimetres("side", piece.Side)
                    .Millimetres("otherSide", piece.OtherSide);
                break;
            case CheckFinding.NoPlace { Misfit: var misfit }:
                Write(json, misfit);
                break;
        }

        json.Text("text", FindingText.Of(finding));
    }

    /// <summary>Writes why a magnification is out of reach.</summary>
    public static void Write(JsonReport json, ReachLimit limit) => json
        .Text("kind", MemberText.Of(limit.Kind))
        .Number("wanted", limit.Wanted.Value)
        .Number("nearest", limit.Nearest?.Value)
        .Millimetres("leastExtension", limit.LeastExtension);

    private static void Write(JsonReport json, Misfit misfit) => json
        .Text("kind", "no-place")
        .Text("part", misfit.Name)
        .Millimetres("longestSide", misfit.Size?.Longest)
        .Millimetres("middleSide", misfit.Size?.Middle)
        .Millimetres("shortestSide", misfit.Size?.Shortest);

    private static void Write(JsonReport json, LightProblem problem)
    {
        json.Text("kind", MemberText.Of(problem.Kind)).Text("view", problem.View);
        if (problem.Quantity is { } quantity)
        {
            json.Text("quantity", MemberText.Of(quantity)).Number("value", problem.Value);
        }

        if (problem.By is { } by)
        {
            json.Millimetres("by", by);
        }

        if (problem.Pitch is { } pitch)
        {
            json.Number("pitchDeg", pitch.Degrees);
        }

        if (problem.Right is { } right)
        {
            json.Millimetres("right", right).Millimetres("back", problem.Back);
        }

        if (problem.Arc is { } arc)
        {
            json.Millimetres("arc", arc).Millimetres("radius", problem.Radius);
        }
    }

    /// <summary>Writes a move of a flash.</summary>
    public static void Write(JsonReport json, CradleMove move) => json.Text("kind", MemberText.Of(move.Kind)).Millimetres("by", move.By);
}
