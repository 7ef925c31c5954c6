using StudioKit.Kits.Description;
using StudioKit.Kits.Quantities;
using UnitsNet;

namespace StudioKit.Kits.Carrying;

/// <summary>Keys of what is carried, and by whom.</summary>
internal static class CarryingSections
{
    public static readonly Section<BagSpec> Bag = new Section<BagSpec>(
        "bag", "A bag or backpack.", new() { Name = "", InsideLength = Length.Zero, InsideWidth = Length.Zero, InsideDepth = Length.Zero },
        partKind: "bags", namedAmong: "bags")
        .Required("name", Kinds.Name, "Name on the pack list; each bag has its own.", (bag, value) => bag with { Name = (string)value! })
        .Required("inside", Kinds.Box, "Inside length, width and depth, e.g. '600 mm x 300 mm x 220 mm'.",
            (bag, value) => bag with { InsideLength = ((Box)value!).First, InsideWidth = ((Box)value!).Second, InsideDepth = ((Box)value!).Third }, "1 cm", "3 m")
        .Optional("mass", Kinds.Mass, "Mass of the empty bag.", (bag, value) => bag with { Mass = (Mass)value! }, bag => bag.Mass, "0 g", "20 kg")
        .Free("highest-load", Kinds.Mass, "Greatest load with the bag's own mass.", (bag, value) => bag with { HighestLoad = (Mass)value! }, "100 g", "100 kg")
        .Reference("carrier", "people", "Name of the person who carries it.", (bag, value) => bag with { Carrier = value });

    public static readonly Section<PersonSpec> Person = new Section<PersonSpec>("person", "A person who carries.", new() { Name = "", BodyMass = Mass.Zero }, namedAmong: "people")
        .Required("name", Kinds.Name, "Name or role on the pack list.", (person, value) => person with { Name = (string)value! })
        .Required("body-mass", Kinds.Mass, "Body mass.", (person, value) => person with { BodyMass = (Mass)value! }, "10 kg", "300 kg");

    public static readonly Section<PackItemSpec> Item = new Section<PackItemSpec>(
        "item", "A thing carried that is no part of camera, lighting, panel or frame.", new() { Name = "", Mass = Mass.Zero })
        .Required("name", Kinds.Name, "Name on the pack list.", (item, value) => item with { Name = (string)value! })
        .Required("mass", Kinds.Mass, "Mass of one.", (item, value) => item with { Mass = (Mass)value! }, "0 g", "100 kg")
        .Optional("count", Kinds.Count, "How many.", (item, value) => item with { Count = (int)value! }, item => item.Count, "1", "1000")
        .Free("size", Kinds.Box, "Its three sides, e.g. '300 mm x 80 mm x 80 mm'.",
            (item, value) => item with { Length = ((Box)value!).First, Width = ((Box)value!).Second, Depth = ((Box)value!).Third }, "0.1 mm", "5 m")
        .Reference("bag", "bags", "Bag it must go in.", (item, value) => item with { Bag = value })
        .Optional("kind", Kinds.Choice(typeof(PackItemKind), "a kind of thing carried"), "What it is for.", (item, value) => item with { Kind = (PackItemKind)value! }, item => item.Kind)
        .Optional("stage", Kinds.Choice(typeof(PackItemStage), "a stage of the day"), "When it is needed.", (item, value) => item with { Stage = (PackItemStage)value! }, item => item.Stage)
        .Optional("fragile", Kinds.YesNo, "Whether it breaks easily.", (item, value) => item with { Fragile = (bool)value! }, item => item.Fragile)
        .Optional("essential", Kinds.YesNo, "Whether the day cannot do without it.", (item, value) => item with { Essential = (bool)value! }, item => item.Essential);

    public static readonly Section<PackSpec> Pack = new Section<PackSpec>("pack", "Bags, people and the other things carried.", new())
        .Many("bags", Bag, "Bags; whatever names no bag is shared out among them.", (pack, value) => pack with { Bags = value })
        .Many("people", Person, "The people who carry.", (pack, value) => pack with { People = value })
        .Many("items", Item, "Everything else carried.", (pack, value) => pack with { Items = value })
        .Optional("highest-share", Kinds.Ratio, "Share of body mass that nobody should carry more than.",
            (pack, value) => pack with { HighestShare = (double)value! }, pack => pack.HighestShare, "0.05", "0.4")
        .Optional("packing-factor", Kinds.Ratio, "Share of a bag's volume that things of odd sizes fill.",
            (pack, value) => pack with { PackingFactor = (double)value! }, pack => pack.PackingFactor, "0.1", "1")
        .Free("target-mass", Kinds.Mass, "Mass that everything may have, bags included; the plan then says what to leave at home.",
            (pack, value) => pack with { TargetMass = (Mass)value! }, "100 g", "200 kg");
}
