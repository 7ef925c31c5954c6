using StudioKit.Planning;
using StudioKit.Planning.Checks;

namespace StudioKit.Wording;

/// <summary>Headings of checks.</summary>
internal static class CheckNames
{
    public static string Of(PlanCheck check) => Of(check.Kind, check.Parts);

    public static string Of(PlanCheckKind kind, IReadOnlyList<string> parts) => kind switch
    {
        PlanCheckKind.Magnification => $"Magnification, {parts[0]}",
        PlanCheckKind.RoomBeforeLens => $"Room before the lens, {parts[0]}",
        PlanCheckKind.PanelSize => "Panel size",
        PlanCheckKind.UprightSize => $"{parts[0]}: size",
        PlanCheckKind.UprightGround => $"{parts[0]}: fills the frames",
        PlanCheckKind.FlashBehind => $"{parts[0]}: flash behind",
        PlanCheckKind.FlashBelow => "Place of the flash below",
        PlanCheckKind.LowCameraAngles => "Low camera angles",
        PlanCheckKind.CameraAngles => "Camera angles over the panel",
        PlanCheckKind.FrameRoom or PlanCheckKind.FrameFit => "Frame can be built",
        PlanCheckKind.Cradle => $"Cradle of {parts[0]}, {string.Join(", ", parts.Skip(1))}",
        PlanCheckKind.GuideNumberAtZoom => $"Guide number of {parts[0]} at its zoom",
        PlanCheckKind.LensShadow => "Shadow of the lens on the subject",
        PlanCheckKind.LightsOutOfPicture => "Lights out of the picture",
        PlanCheckKind.LightRoom => "Room for the lights",
        PlanCheckKind.HolderReach => "Reach of what holds the lights",
        PlanCheckKind.LightOnSheet => "Light from above on the sheet",
        PlanCheckKind.Triggers => $"Every flash is fired, {parts[0]}",
        PlanCheckKind.Exposure => $"Exposure, {parts[0]}",
        PlanCheckKind.Feature => $"Feature of {parts[0]}: {parts[1]}",
        PlanCheckKind.CoverRoom => $"Room in the {parts[0]}, {parts[1]}",
        PlanCheckKind.CoverFoot => $"The {parts[0]} on the sheet, {parts[1]}",
        PlanCheckKind.CoverView => $"View through the {parts[0]}, {parts[1]}",
        PlanCheckKind.CoverWarmth => $"Warmth under the {parts[0]}, {parts[1]}",
        PlanCheckKind.ShelterSize => $"Size of the {parts[0]}, {parts[1]}",
        PlanCheckKind.ShelterWind => $"The {parts[0]} in the wind, {parts[1]}",
        PlanCheckKind.Hands => $"Hands for {parts[0]}",
        PlanCheckKind.Stock => "Everything can be cut from stock",
        PlanCheckKind.LongestPiece => "Longest piece of the frame",
        PlanCheckKind.LongThing => $"{Sentence.Begin(parts[0])} on {parts[1]}",
        PlanCheckKind.Places => "Everything has its place",
        PlanCheckKind.BagMass => $"Load of {parts[0]}",
        PlanCheckKind.BagRoom => $"Room in {parts[0]}",
        PlanCheckKind.Burden => $"Load on {parts[0]}",
        PlanCheckKind.TargetMass => "Mass asked for",
        PlanCheckKind.HoldTime => $"Hold time, {parts[0]}",
        PlanCheckKind.Hours => $"Hours for {string.Join(" and ", parts)}",
        PlanCheckKind.DayTime => $"Time of the day for {string.Join(" and ", parts)}",
        PlanCheckKind.Cells => $"Cells of {parts[0]}",
        PlanCheckKind.UprightTipping => $"{Sentence.Begin(parts[0])}: tipping in the gust",
        PlanCheckKind.UprightSliding => $"{Sentence.Begin(parts[0])}: sliding in the gust",
        PlanCheckKind.UprightPoles => $"{Sentence.Begin(parts[0])}: poles in the gust",
        PlanCheckKind.UprightSheet => $"{Sentence.Begin(parts[0])}: sheet in the gust",
        PlanCheckKind.UprightSheetLeaning => $"{Sentence.Begin(parts[0])}: sheet, as it leans",
        PlanCheckKind.UprightReach => $"{Sentence.Begin(parts[0])}: clear of the subject in the gust",
        _ => Structural(kind),
    };

    private static string Structural(PlanCheckKind kind) => kind switch
    {
        PlanCheckKind.PanelSag => "Panel sag, its own weight and the subject",
        PlanCheckKind.PanelStress => "Panel stress, standing load",
        PlanCheckKind.PanelStressUnderElbow => "Panel stress under a leaning elbow",
        PlanCheckKind.SweepBentCold => "Sweep bent cold",
        PlanCheckKind.SheetGrowth => "Sheet's growth in the sun, at each edge",
        PlanCheckKind.RailSag => "Rail sag, standing load",
        PlanCheckKind.RailStress => "Rail stress under a leaning elbow",
        PlanCheckKind.LegBuckling => "Leg buckling",
        PlanCheckKind.Sway => "Sway in the gust",
        PlanCheckKind.Cords => "Cords and pegs in the gust",
        PlanCheckKind.PipeWarmth => "Pipe in the sun",
        PlanCheckKind.Tipping => "Tipping in the gust",
        PlanCheckKind.Sliding => "Sliding in the gust",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "A check without a name."),
    };
}
