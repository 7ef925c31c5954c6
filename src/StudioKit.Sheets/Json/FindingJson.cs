using StudioKit.Kits;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning.Checks;
using StudioKit.Sheets.Wording;

namespace StudioKit.Sheets.Json;

/// <summary>What stands in the way of a check as JSON: its kind, its numbers where it has any, and the words that sheets print.</summary>
internal static class FindingJson
{
    /// <summary>Writes one finding.</summary>
    public static void Write(JsonReport json, CheckFinding finding)
    {
        switch (finding)
        {
            case CheckFinding.Said said:
                json.Text("part", said.Part);
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
        }

        json.Text("text", FindingText.Of(finding));
    }

    /// <summary>Writes a move of a flash.</summary>
    public static void Write(JsonReport json, CradleMove move) => json.Text("kind", MemberText.Of(move.Kind)).Millimetres("by", move.By);
}
