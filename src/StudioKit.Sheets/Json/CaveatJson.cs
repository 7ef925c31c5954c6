using StudioKit.Kits;
using StudioKit.Physics.Structure;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning.Checks;
using StudioKit.Wording;

namespace StudioKit.Sheets.Json;

/// <summary>What to bear in mind of a check as JSON: its kind, its numbers where it has any, and the words that sheets print.</summary>
internal static class CaveatJson
{
    /// <summary>Writes one caveat.</summary>
    public static void Write(JsonReport json, CheckCaveat caveat)
    {
        switch (caveat)
        {
            case CheckCaveat.OfStructure structural:
                Write(json, structural.Caveat);
                break;
            case CheckCaveat.OfFrame frame:
                Write(json, frame.Caveat);
                break;
            case CheckCaveat.OfTrigger trigger:
                json.Text("kind", MemberText.Of(trigger.Caveat.Kind)).Text("part", trigger.Caveat.Flash);
                break;
            case CheckCaveat.OfLongPiece piece:
                json.Text("kind", MemberText.Of(piece.Caveat.Kind));
                break;
        }

        json.Text("text", CaveatText.Of(caveat));
    }

    private static void Write(JsonReport json, FrameCaveat caveat)
    {
        json.Text("kind", MemberText.Of(caveat.Kind));
        if (caveat.Size is { } size)
        {
            json.Millimetres("size", size);
        }

        if (caveat.Against is { } against)
        {
            json.Millimetres("against", against);
        }
    }

    private static void Write(JsonReport json, StructuralCaveat caveat)
    {
        json.Text("kind", MemberText.Of(caveat.Kind));
        if (caveat.Size is { } size)
        {
            json.Millimetres("size", size);
        }

        if (caveat.Stress is { } stress)
        {
            json.Number("stressPa", stress.Pascals);
        }

        if (caveat.Safety is { } safety)
        {
            json.Number("safetyFactor", safety);
        }

        if (caveat.Warmth is { } warmth)
        {
            json.Number("warmthDegC", warmth.DegreesCelsius)
                .Number("stiffnessKept", caveat.StiffnessKept)
                .Number("strengthKept", caveat.StrengthKept);
        }
    }
}
