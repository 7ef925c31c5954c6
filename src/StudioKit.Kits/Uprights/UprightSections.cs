using StudioKit.Kits.Description;
using StudioKit.Kits.Studio;

namespace StudioKit.Kits.Uprights;

/// <summary>Keys of the sheets that stand behind a subject.</summary>
internal static class UprightSections
{
    public static readonly Section<UprightSpec> Upright = new Section<UprightSpec>(
        "upright", "A translucent sheet that stands behind the subject, lit from behind.", new() { Name = "" }, namedAmong: "uprights")
        .Required("name", "Name on the sheets; each upright sheet has its own.").Name((upright, value) => upright with { Name = value })
        .Optional("carrier", "What holds it: stakes in the ground, feet that lie on it, or the frame of the panel.")
            .Choice<UprightCarrier>("a carrier of an upright sheet", (upright, value) => upright with { Carrier = value }, upright => upright.Carrier)
        .Within("sheet", StudioSections.UprightSheet, "What it is of.", (upright, value) => upright with { Sheet = value }, upright => upright.Sheet)
        .Optional("width", "Side across the camera's view; else computed from the framings.", "5 cm", "3 m").Length((upright, value) => upright with { Width = value })
        .Optional("height", "Side from its lower to its upper edge; else computed.", "5 cm", "3 m").Length((upright, value) => upright with { Height = value })
        .Optional("margin", "Sheet kept beyond the visible field on every side.", "0 mm", "1 m")
            .Length((upright, value) => upright with { Margin = value }, upright => upright.Margin)
        .Optional("over-ground", "Lower edge over the ground, or over the panel where the frame carries it.", "0 cm", "2 m")
            .Length((upright, value) => upright with { OverGround = value }, upright => upright.OverGround)
        .Optional("lean", "How far its top leans away from the camera, from upright.", "0°", "45°")
            .Angle((upright, value) => upright with { Lean = value }, upright => upright.Lean)
        .Optional("stake-depth", "How deep each stake stands in the ground.", "5 cm", "1 m")
            .Length((upright, value) => upright with { StakeDepth = value }, upright => upright.StakeDepth)
        .Optional("stake-hold", "What a stake holds, as a spring balance reads when it pulls the stake level, 30 cm over the ground, until it gives.", "0 g", "200 kg")
            .Mass((upright, value) => upright with { StakeHold = value }, upright => upright.StakeHold)
        .Optional("foot-length", "Length of each foot along the camera's view, the pole in its middle.", "20 cm", "2 m")
            .Length((upright, value) => upright with { FootLength = value }, upright => upright.FootLength)
        .Optional("ballast", "Mass laid on both feet together.", "0 g", "50 kg")
            .Mass((upright, value) => upright with { Ballast = value }, upright => upright.Ballast)
        .Optional("cord-pegs", "Pegs that hold cords at 45° from its upper corners, half of them before and half behind it: 4 or 8.", "0", "8")
            .Count((upright, value) => upright with { CordPegs = value }, upright => upright.CordPegs)
        .Optional("peg-hold", "What one of those pegs holds, as a spring balance reads when it pulls the peg out.", "0 g", "500 kg")
            .Mass((upright, value) => upright with { PegHold = value }, upright => upright.PegHold)
        .Without(["stake-depth", "stake-hold"], upright => upright.Carrier != UprightCarrier.Stakes, "is for a sheet on stakes", "Leave it out, or write 'carrier: stakes'.")
        .Without(["foot-length", "ballast"], upright => upright.Carrier != UprightCarrier.Feet, "is for a sheet on feet", "Leave it out, or write 'carrier: feet'.")
        .Without(["lean"], upright => upright.Carrier != UprightCarrier.Stakes, "is for a sheet on stakes, as the fittings of feet and frames hold poles upright", "Leave it out, or write 'carrier: stakes'.")
        .Without(["cord-pegs"], upright => upright.Carrier == UprightCarrier.Frame, "is for a sheet that stands on the ground", "Give the frame its cords: 'guys: yes' and 'count: 4' under 'frame.pegs'.")
        .Without(["peg-hold"], upright => upright.CordPegs == 0, "changes nothing without cords", "Say how many pegs hold cords: 'cord-pegs: 4'.")
        .Check(Cords);

    // Cords pull against each other: one to the front and one to the back of each upper corner.
    private static Fault? Cords(UprightSpec upright) => upright.CordPegs % 4 == 0
        ? null
        : new Fault("cord-pegs", $"The cords of '{upright.Name}' are not as many before it as behind it at both upper corners.", "Write 'cord-pegs: 4', or 8.");

    // Fittings are some three tenths thicker than their pipe (common practice, no source).
    private const double FittingOverPipe = 1.3;

    /// <summary>What one sheet, the frame and the set-ups must agree on.</summary>
    public static Fault? Held(KitSpec kit) => kit.Uprights.FirstOrDefault(upright => upright.Carrier == UprightCarrier.Feet && upright.OverGround < FittingOverPipe * kit.Frame.Pipe.OutsideDiameter) is { } low
        ? new Fault(
            "uprights", $"The lower corners of '{low.Name}' would stand on its feet, which lie before and behind the poles.",
            $"Let its lower edge lie higher: 'over-ground: {Math.Ceiling(FittingOverPipe * kit.Frame.Pipe.OutsideDiameter.Millimeters):0} mm' or more.")
        : HeldByFrame(kit);

    private static Fault? HeldByFrame(KitSpec kit) => kit.Frame.Kind != FrameKind.Table && kit.Uprights.FirstOrDefault(upright => upright.Carrier == UprightCarrier.Frame) is { } held
        ? new Fault(
            "uprights", $"The frame is to hold the sheet '{held.Name}', but only a table has a back rail that poles can be clipped to.",
            "Write 'kind: table' under 'frame', or 'carrier: feet'.")
        : null;
}
