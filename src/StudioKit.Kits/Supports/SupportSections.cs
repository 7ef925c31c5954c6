using StudioKit.Kits.Description;

namespace StudioKit.Kits.Supports;

/// <summary>Keys of what the camera rests on.</summary>
internal static class SupportSections
{
    public static readonly Section<SupportSpec> Support = new Section<SupportSpec>(
        "support", "Something that the camera rests on, steadier than the free hand.", new() { Name = "", Kind = SupportKind.Tripod }, namedAmong: "supports")
        .Required("name", "Name on the cards and the pack list; each support has its own.").Name((support, value) => support with { Name = value })
        .Required("kind", "What it is.").Choice<SupportKind>("a kind of support", (support, value) => support with { Kind = value })
        .Optional("sway", "Speed at which the camera on it sways against the subject; measure it by the smear of a still point in a long exposure, over magnification and time.", "0 m/s", "1 m/s")
            .Speed((support, value) => support with { MeasuredSway = value }, support => support.Sway)
        .Optional("mass", "Mass; else what is usual for its kind.", "10 g", "30 kg").Mass((support, value) => support with { Mass = value })
        .Optional("packed", "Its three sides as it is packed, e.g. '450 mm x 120 mm x 120 mm'.", "1 cm", "3 m")
            .Box((support, value) => support with { Length = value.First, Width = value.Second, Depth = value.Third })
        .Optional("price", "Price where it is to be bought; else it is on hand.", "0", "100000").Price((support, value) => support with { Price = value })
        .Check(NothingToCarry);

    private static Fault? NothingToCarry(SupportSpec support) => support switch
    {
        { IsCarried: true } => null,
        { Mass: not null } => Weightless(support, "mass"),
        { Length: not null } => Weightless(support, "packed"),
        { Price: not null } => Weightless(support, "price"),
        _ => null,
    };

    private static Fault Weightless(SupportSpec support, string key) =>
        new(key, $"'{support.Name}' is a hand and is not carried.", $"Leave '{key}' out, or say what the camera rests on: 'kind: bean-bag'.");
}
