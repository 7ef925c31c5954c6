using StudioKit.Kits.Description;
using StudioKit.Kits.Quantities;
using StudioKit.Physics.Light.Covers;
using UnitsNet;

namespace StudioKit.Kits.Covers;

/// <summary>Keys of what is turned over an animal, or holds its water.</summary>
internal static class CoverSections
{
    private static readonly Length SameLength = Length.FromMicrometers(1);

    public static readonly Section<CoverSpec> Cover = new Section<CoverSpec>(
        "cover", "A clear tub or dome that is turned over an animal, or a tank of water that it swims in.",
        new() { Name = "", Shape = CoverShape.Tub, Width = Length.Zero, Depth = Length.Zero, Height = Length.Zero }, namedAmong: "covers")
        .Required("name", "Name on the sheets; each cover has its own.").Name((cover, value) => cover with { Name = value })
        .Required("shape", "What it is like: flat walls, a round wall, a dome, or a tank of water.").Choice<CoverShape>("a shape of a cover", (cover, value) => cover with { Shape = value })
        .Required("inside", "Inside width, depth away from the camera and height, e.g. '120 mm x 100 mm x 60 mm'; a round one is as deep as wide.", "5 mm", "2 m")
            .Box((cover, value) => cover with { Width = value.First, Depth = value.Second, Height = value.Third })
        .Optional("wall", "Thickness of its walls.", "0.1 mm", "30 mm").Length((cover, value) => cover with { Wall = value }, cover => cover.Wall)
        .Optional("material", "What it is made of; its refractive index follows.").Choice<ClearMaterial>("a clear material", (cover, value) => cover with { Material = value }, cover => cover.Material)
        .Optional("water", "Depth of the water in a tank; else to 10 mm under its rim.", "5 mm", "2 m").Length((cover, value) => cover with { Water = value })
        .Optional("lifted", "Whether it is lifted for the picture, so that the animal settles under it and nothing is photographed through it.")
            .YesNo((cover, value) => cover with { Lifted = value }, cover => cover.Lifted)
        .Optional("time-limit", "Most time that an animal stays in it; else 5 min in air, 15 min in water.", "1 s", "24 h").Duration((cover, value) => cover with { TimeLimit = value })
        .Optional("mass", "Mass without water; else from its walls.", "1 g", "50 kg").Mass((cover, value) => cover with { Mass = value })
        .Optional("price", "Price where it is to be bought; else it is on hand.", "0", "100000").Price((cover, value) => cover with { Price = value })
        .Optional("packed", "Its three sides as it is packed, e.g. nested in another; else as it is.", "1 mm", "3 m")
            .Box((cover, value) => cover with { PackedLength = value.First, PackedWidth = value.Second, PackedDepth = value.Third })
        .Check(Round)
        .Check(Water);

    private static Fault? Round(CoverSpec cover) => cover switch
    {
        { Shape: CoverShape.RoundTub or CoverShape.Dome } when !cover.Width.Equals(cover.Depth, SameLength) =>
            new Fault("inside", $"'{cover.Name}' is round, but is not as deep as it is wide.", $"Write 'inside: {Text(cover.Width)} x {Text(cover.Width)} x {Text(cover.Height)}', or 'shape: tub'."),
        { Shape: CoverShape.Dome } when cover.Height > cover.Width / 2 =>
            new Fault("inside", $"The dome '{cover.Name}' is higher than half its width, which no cap of a ball is.", $"Write a height of {Text(cover.Width / 2)} at most, or 'shape: round-tub'."),
        _ => null,
    };

    private static Fault? Water(CoverSpec cover) => cover switch
    {
        { Shape: not CoverShape.Tank, Water: not null } => new Fault("water", $"'{cover.Name}' is turned over the animal and holds no water.", "Leave 'water' out, or write 'shape: tank'."),
        { Shape: CoverShape.Tank, Lifted: true } => new Fault("lifted", $"The tank '{cover.Name}' cannot be lifted off an animal in water.", "Leave 'lifted' out, or write 'shape: tub'."),
        { Water: { } water } when water > cover.Height => new Fault("water", $"The water in '{cover.Name}' stands higher than its walls.", $"Write 'water: {Text(cover.Height)}' or less."),
        _ => null,
    };

    private static string Text(Length length) => Kinds.Length.Write(length.Millimeters);
}
