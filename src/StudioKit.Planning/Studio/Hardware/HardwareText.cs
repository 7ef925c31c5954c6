using UnitsNet;

namespace StudioKit.Planning.Studio.Hardware;

/// <summary>Small parts in the words of the trade, with the sizes that a shop asks for.</summary>
public static class HardwareText
{
    // Once round the fitting and a knot in the ring (common practice, no source).
    private static readonly Length PinCord = Length.FromCentimeters(20);

    /// <summary>What to ask for in a shop.</summary>
    /// <param name="line">The parts.</param>
    /// <exception cref="ArgumentNullException">There is no line.</exception>
    public static string Name(HardwareLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return line.For is { } belongs ? $"{What(line)}, for {belongs}" : What(line);
    }

    /// <summary>The same in few words, for a pack list.</summary>
    /// <param name="line">The parts.</param>
    /// <exception cref="ArgumentNullException">There is no line.</exception>
    public static string Brief(HardwareLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return line.For is { } belongs ? $"{belongs}: {Plural(line.Kind)}" : Plural(line.Kind);
    }

    /// <summary>Where they are used, and how many there.</summary>
    /// <param name="line">The parts.</param>
    /// <exception cref="ArgumentNullException">There is no line.</exception>
    public static string Where(HardwareLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return string.Join(", ", line.Places.Select(place => place switch
        {
            { Length: { } length, Count: 1 } => $"{place.Where}: {Cut(line, length)}",
            { Length: { } length } => FormattableString.Invariant($"{place.Where}: {place.Count} of {Cut(line, length)}"),
            { Count: 1 } => place.Where,
            _ => FormattableString.Invariant($"{place.Where} × {place.Count}"),
        }));
    }

    /// <summary>The screw of a foot as a shop knows it, e.g. <c>M8 × 90 mm</c>.</summary>
    /// <param name="line">The feet.</param>
    /// <exception cref="ArgumentNullException">There is no line.</exception>
    public static string Screw(HardwareLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return $"{line.Screw!.Thread} × {PlanFormat.GearMillimetres(line.Length!.Value)}";
    }

    /// <summary>How wide a clip must open.</summary>
    /// <param name="line">The clips.</param>
    /// <exception cref="ArgumentNullException">There is no line.</exception>
    public static Length Opening(HardwareLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return Length.FromMeters(line.Grips.Sum(grip => grip.Meters));
    }

    private static string What(HardwareLine line) => line.Kind switch
    {
        HardwareKind.Pin => $"pin, {Sold(line.Diameter)} thick, {Sold(line.Length)} long, with a ring and {DistanceFormat.Centimetres(PinCord)} of thin cord",
        HardwareKind.Foot => $"foot: hexagon screw {Screw(line)} threaded to its head, two nuts {line.Screw!.Thread}, washer of {Sold(line.Screw.WasherDiameter)}, rubber tip for a head {Sold(line.Screw.AcrossFlats)} wide",
        HardwareKind.PanelClip => $"spring clip that opens to {Sold(Opening(line))} and holds the panel to a rail{Gripped(line)}",
        HardwareKind.PadStrip => $"pad strip, self-adhesive, {Sold(line.Width)} wide, {Sold(line.Thickness)} thick",
        HardwareKind.LedgeStrip => $"ledge strip, angle of {Sold(line.Width)}, {Sold(line.Thickness)} thick",
        HardwareKind.LedgeScrew => $"self-tapping screw, {Sold(line.Diameter)} thick, {Sold(line.Length)} long",
        HardwareKind.SkirtClip => $"spring clip that opens to {Sold(Opening(line))} and holds a skirt to a rail",
        HardwareKind.Peg => $"ground peg, {Sold(line.Length)} long",
        HardwareKind.GuyCord => $"bright cord, {Sold(line.Diameter)} thick, in pieces of {Pieces(line)}",
        HardwareKind.BallastBag => $"bag with a handle that holds {MeasureFormat.Mass(line.Holds!.Value)} of sand, stones or water",
        HardwareKind.BallastCord => $"cord for the ballast, {Sold(line.Diameter)} thick, in pieces of {Pieces(line)}",
        HardwareKind.SheetClip => $"spring clip from sheet to pipe, opens to {Sold(Opening(line))}",
        HardwareKind.PipeClip => $"clip from pipe to pipe, {Sold(line.Diameter)} across {Sold(line.Diameter)}",
        HardwareKind.PolePeg => $"round stake, {Sold(line.Diameter)} thick, {Sold(line.Length)} long, that fills the pole",
        HardwareKind.CradleClamp => $"clamp for a flash: ball joint with a shoe, on a stub of pipe {Sold(line.Diameter)} thick",
        HardwareKind.FlashJoint => $"ball joint or clip for a flash, on the end of a pipe {Sold(line.Diameter)} thick",
        HardwareKind.LowStand => "low stand for a flash under the panel",
        HardwareKind.SafetyCord => $"cord that catches the flash, {Sold(line.Diameter)} thick, in pieces of {Pieces(line)}",
        HardwareKind.FlapTape => $"glue, or adhesive tape on both faces {Sold(line.Width)} wide",
        HardwareKind.HeadBand => $"elastic band, {Sold(line.Width)} wide, that fits tight round {PlanFormat.WholeMillimetres(line.Length!.Value)}",
        HardwareKind.NutGlue => "two-part glue that holds metal to plastic, a small tube",
        HardwareKind.CordRag => "bright rag for a cord",
        HardwareKind.PlantCord => "soft cord to bend plants aside",
        HardwareKind.PanelCloth => $"soft cloth for a face of the panel, {PlanFormat.Rectangle(line.Width!.Value, line.Length!.Value)}",
        HardwareKind.WipingCloth => "soft cloth to wipe the panel with",
        _ => throw new ArgumentOutOfRangeException(nameof(line), line.Kind, "A part without words."),
    };

    private static string Plural(HardwareKind kind) => kind switch
    {
        HardwareKind.Pin => "pins with their cords",
        HardwareKind.Foot => "feet with nuts and tips",
        HardwareKind.PanelClip => "clips of the panel",
        HardwareKind.PadStrip or HardwareKind.LedgeStrip => "strips under the panel",
        HardwareKind.LedgeScrew => "screws of the ledge",
        HardwareKind.SkirtClip => "clips of the skirts",
        HardwareKind.Peg => "pegs",
        HardwareKind.GuyCord => "cords to the pegs",
        HardwareKind.BallastBag => "bags for ballast, empty",
        HardwareKind.BallastCord => "cords of the ballast",
        HardwareKind.SheetClip => "clips from sheet to pipe",
        HardwareKind.PipeClip => "clips from pipe to pipe",
        HardwareKind.PolePeg => "round stake",
        HardwareKind.CradleClamp => "clamps for the flashes below",
        HardwareKind.FlashJoint => "ball joint for the flash",
        HardwareKind.LowStand => "low stand",
        HardwareKind.SafetyCord => "cord that catches the flash",
        HardwareKind.FlapTape => "glue or tape",
        HardwareKind.HeadBand => "elastic band",
        HardwareKind.NutGlue => "two-part glue",
        HardwareKind.CordRag => "bright rags for the cords",
        HardwareKind.PlantCord => "soft cord for plants",
        HardwareKind.PanelCloth => "cloths for the panel's faces",
        HardwareKind.WipingCloth => "cloth to wipe the panel with",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "A part without words."),
    };

    private static string Sold(Length? length) => PlanFormat.AsSold(length!.Value);

    // Cords by hand, strips with a rule.
    private static string Cut(HardwareLine line, Length length) => line.Kind is HardwareKind.PadStrip or HardwareKind.LedgeStrip ? PlanFormat.WholeMillimetres(length) : DistanceFormat.Centimetres(length);

    private static string Pieces(HardwareLine line) => string.Join(" and ", line.Places
        .GroupBy(place => Cut(line, place.Length ?? line.Length!.Value), StringComparer.Ordinal)
        .Select(alike => FormattableString.Invariant($"{alike.Key}: {alike.Sum(place => place.Count)}")));

    private static string Gripped(HardwareLine line) => line.Grips.Count < 3
        ? ""
        : $" ({Sold(line.Grips[0])} pipe, {Sold(line.Grips[1])} pad, {Sold(line.Grips[2])} sheet)";
}
