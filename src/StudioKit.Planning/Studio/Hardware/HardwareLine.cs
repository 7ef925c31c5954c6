using StudioKit.Physics;
using StudioKit.Physics.Structure.Fasteners;
using UnitsNet;

namespace StudioKit.Planning.Studio.Hardware;

/// <summary>Small parts that are alike, for one studio: what they are, with every size that a shop asks for, and where each is used.</summary>
public sealed record HardwareLine
{
    /// <summary>What they are.</summary>
    public required HardwareKind Kind { get; init; }

    /// <summary>Where they are used, and how many in each place.</summary>
    public required ValueList<HardwarePlace> Places { get; init; }

    /// <summary>Name of the upright sheet, holder or modifier that they belong to; none for the frame's own.</summary>
    public string? For { get; init; }

    /// <summary>Diameter of what is round; of a pipe for what fits in or on its end.</summary>
    public Length? Diameter { get; init; }

    /// <summary>Length of each, where all have one: of a screw under its head, of a cord with what its knots take.</summary>
    public Length? Length { get; init; }

    /// <summary>Width of what is flat.</summary>
    public Length? Width { get; init; }

    /// <summary>Thickness of what is flat.</summary>
    public Length? Thickness { get; init; }

    /// <summary>Drill for its hole, a whole or half millimetre; none where none is drilled.</summary>
    public Length? Hole { get; init; }

    /// <summary>Mouth of the fitting to the middle of the hole; none but for pins.</summary>
    public Length? HoleFromMouth { get; init; }

    /// <summary>What a clip opens to.</summary>
    public ValueList<Length> Grips { get; init; } = [];

    /// <summary>What it must hold, or what is filled into it; none where nothing is asked.</summary>
    public Mass? Holds { get; init; }

    /// <summary>Screw of a foot; none of all else.</summary>
    public HexagonScrew? Screw { get; init; }

    /// <summary>What lies along the screw, from the leg down; empty of all else.</summary>
    public ValueList<FootPart> Order { get; init; } = [];

    /// <summary>Price of one, or of a metre; none where the kit gives none.</summary>
    public decimal? PriceEach { get; init; }

    /// <summary>Mass of one, by its usual make.</summary>
    public Mass MassEach { get; init; }

    /// <summary>How many for one studio [1].</summary>
    public int Count => Places.Sum(place => place.Count);

    /// <summary>Length of all for one studio; nought of what has none.</summary>
    public Length Whole => UnitsNet.Length.FromMeters(Places.Sum(place => place.Count * (place.Length ?? Length ?? UnitsNet.Length.Zero).Meters));

    /// <summary>Whether it is sold by the metre.</summary>
    public bool ByTheMetre => Kind is HardwareKind.PadStrip or HardwareKind.LedgeStrip or HardwareKind.GuyCord or HardwareKind.BallastCord or HardwareKind.SafetyCord or HardwareKind.FlapTape or HardwareKind.PlantCord;

    /// <summary>Whether most homes have it, so that it counts as no cost.</summary>
    public bool IsFromTheHouse => Kind is HardwareKind.FlapTape or HardwareKind.HeadBand or HardwareKind.NutGlue or HardwareKind.CordRag or HardwareKind.PlantCord
        or HardwareKind.PanelCloth or HardwareKind.WipingCloth;

    /// <summary>Whether it goes into the bag; glue and tape stay at home, strips and their screws travel on their pipes.</summary>
    public bool Travels => Kind is not (HardwareKind.FlapTape or HardwareKind.NutGlue or HardwareKind.PadStrip or HardwareKind.LedgeStrip or HardwareKind.LedgeScrew);

    /// <summary>Whether it stays on the frame, so that a frame that was weighed was weighed with it.</summary>
    public bool StaysOnFrame => Kind is HardwareKind.Pin or HardwareKind.Foot;

    /// <summary>How many to buy, whole metres of what is sold by the metre [1].</summary>
    /// <param name="studios">How many studios are built [1].</param>
    public int ToBuy(int studios) => ByTheMetre ? (int)Math.Ceiling((Whole.Meters * studios) - 1e-9) : Kind is HardwareKind.NutGlue or HardwareKind.WipingCloth ? 1 : Count * studios;
}
