using StudioKit.Physics.Structure;

namespace StudioKit.Sheets.Documents;

/// <summary>What of an upright sheet gives first in the wind, in words.</summary>
internal static class UprightWeakness
{
    public static string Of(StructuralCheckKind kind) => kind switch
    {
        StructuralCheckKind.UprightTipping => "it tips over",
        StructuralCheckKind.UprightSliding => "its feet slide",
        StructuralCheckKind.UprightPoles => "its poles",
        StructuralCheckKind.UprightSheet => "the sheet",
        StructuralCheckKind.UprightSheetLeaning => "the sheet, which leans",
        StructuralCheckKind.UprightReach => "it swings too near to the subject",
        StructuralCheckKind.Tipping => "the frame tips over with it",
        StructuralCheckKind.Sliding => "the frame slides with it",
        StructuralCheckKind.Sway => "the frame sways with it",
        StructuralCheckKind.Cords => "the frame's cords",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not what an upright sheet gives by."),
    };
}
