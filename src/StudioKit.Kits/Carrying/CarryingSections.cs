using StudioKit.Kits.Description;
using UnitsNet;

namespace StudioKit.Kits.Carrying;

/// <summary>Keys of what is carried, and by whom.</summary>
internal static class CarryingSections
{
    public static readonly Section<BagSpec> Bag = new Section<BagSpec>(
        "bag", "A bag or backpack.", new() { Name = "", InsideLength = Length.Zero, InsideWidth = Length.Zero, InsideDepth = Length.Zero },
        partKind: "bags", namedAmong: "bags")
        .Required("name", "Name on the pack list; each bag has its own.").Name((bag, value) => bag with { Name = value })
        .Required("inside", "Inside length, width and depth, e.g. '600 mm x 300 mm x 220 mm'.", "1 cm", "3 m")
            .Box((bag, value) => bag with { InsideLength = value.First, InsideWidth = value.Second, InsideDepth = value.Third })
        .Optional("mass", "Mass of the empty bag.", "0 g", "20 kg").Mass((bag, value) => bag with { Mass = value }, bag => bag.Mass)
        .Optional("highest-load", "Greatest load with the bag's own mass.", "100 g", "100 kg").Mass((bag, value) => bag with { HighestLoad = value })
        .Reference("carrier", "people", "Name of the person who carries it.", (bag, value) => bag with { Carrier = value });

    public static readonly Section<PersonSpec> Person = new Section<PersonSpec>("person", "A person who carries.", new() { Name = "", BodyMass = Mass.Zero }, namedAmong: "people")
        .Required("name", "Name or role on the pack list.").Name((person, value) => person with { Name = value })
        .Required("body-mass", "Body mass.", "10 kg", "300 kg").Mass((person, value) => person with { BodyMass = value });

    public static readonly Section<PackItemSpec> Item = new Section<PackItemSpec>(
        "item", "A thing carried that is no part of camera, lighting, panel or frame.", new() { Name = "", Mass = Mass.Zero })
        .Required("name", "Name on the pack list.").Name((item, value) => item with { Name = value })
        .Required("mass", "Mass of one.", "0 g", "100 kg").Mass((item, value) => item with { Mass = value })
        .Optional("count", "How many.", "1", "1000").Count((item, value) => item with { Count = value }, item => item.Count)
        .Optional("size", "Its three sides, e.g. '300 mm x 80 mm x 80 mm'.", "0.1 mm", "5 m")
            .Box((item, value) => item with { Length = value.First, Width = value.Second, Depth = value.Third })
        .Reference("bag", "bags", "Bag it must go in.", (item, value) => item with { Bag = value })
        .Optional("kind", "What it is for.")
            .Choice<PackItemKind>("a kind of thing carried", (item, value) => item with { Kind = value }, item => item.Kind)
        .Optional("stage", "When it is needed.")
            .Choice<PackItemStage>("a stage of the day", (item, value) => item with { Stage = value }, item => item.Stage)
        .Optional("fragile", "Whether it breaks easily.").YesNo((item, value) => item with { Fragile = value }, item => item.Fragile)
        .Optional("essential", "Whether the day cannot do without it.")
            .YesNo((item, value) => item with { Essential = value }, item => item.Essential);

    public static readonly Section<PackSpec> Pack = new Section<PackSpec>("pack", "Bags, people and the other things carried.", new())
        .Many("bags", Bag, "Bags; whatever names no bag is shared out among them.", (pack, value) => pack with { Bags = value })
        .Many("people", Person, "The people who carry.", (pack, value) => pack with { People = value })
        .Many("items", Item, "Everything else carried.", (pack, value) => pack with { Items = value })
        .Optional("highest-share", "Share of body mass that nobody should carry more than.", "0.05", "0.4")
            .Ratio((pack, value) => pack with { HighestShare = value }, pack => pack.HighestShare)
        .Optional("packing-factor", "Share of a bag's volume that things of odd sizes fill.", "0.1", "1")
            .Ratio((pack, value) => pack with { PackingFactor = value }, pack => pack.PackingFactor)
        .Optional("target-mass", "Mass that everything may have, bags included; the plan then says what to leave at home.", "100 g", "200 kg")
            .Mass((pack, value) => pack with { TargetMass = value });
}
