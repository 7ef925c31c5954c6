using StudioKit.Kits.Quantities;
using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Kits.Description;

/// <summary>Keys of what is carried, of the living things portrayed and of the place.</summary>
internal static class FieldSections
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
        .Optional("stage", Kinds.Choice(typeof(PackItemStage), "a stage of the day"), "When it is needed.", (item, value) => item with { Stage = (PackItemStage)value! }, item => item.Stage)
        .Optional("fragile", Kinds.YesNo, "Whether it breaks easily.", (item, value) => item with { Fragile = (bool)value! }, item => item.Fragile)
        .Optional("essential", Kinds.YesNo, "Whether the day cannot do without it.", (item, value) => item with { Essential = (bool)value! }, item => item.Essential);

    public static readonly Section<PackSpec> Pack = new Section<PackSpec>("pack", "Bags, people and the other things carried.", new())
        .Many("bags", Bag, "Bags; the first carries the studio unless an item says otherwise.", (pack, value) => pack with { Bags = value })
        .Many("people", Person, "The people who carry.", (pack, value) => pack with { People = value })
        .Many("items", Item, "Everything else carried.", (pack, value) => pack with { Items = value });

    public static readonly Section<SubjectSpec> Subject = new Section<SubjectSpec>(
        "subject", "An animal or plant to be portrayed.", new() { Name = "", Group = SubjectGroup.FlyingInsects, Length = Length.Zero }, namedAmong: "subjects")
        .Required("name", Kinds.Name, "Name on cards and lists; each subject has its own.", (subject, value) => subject with { Name = (string)value! })
        .Required("group", Kinds.Choice(typeof(SubjectGroup), "a group of subjects"), "How it is handled.", (subject, value) => subject with { Group = (SubjectGroup)value! })
        .Required("length", Kinds.Length, "Longest dimension.", (subject, value) => subject with { Length = (Length)value! }, "0.1 mm", "3 m")
        .Free("height", Kinds.Length, "Height above the panel; else a third of the length.", (subject, value) => subject with { Height = (Length)value! }, "0.05 mm", "3 m")
        .Free("depth", Kinds.Length, "Depth that must be sharp, along the line of sight; else half its height.", (subject, value) => subject with { Depth = (Length)value! }, "0.01 mm", "3 m")
        .Optional("speed", Kinds.Speed, "How fast it moves on the panel.", (subject, value) => subject with { Speed = (Speed)value! }, subject => subject.Speed, "0 m/s", "20 m/s")
        .Optional("reflectance", Kinds.Ratio, "Mean reflectance, above 0 and at most 1.",
            (subject, value) => subject with { Reflectance = (double)value! }, subject => subject.Reflectance, "0.001", "1")
        .Optional("wet", Kinds.YesNo, "Whether its skin is wet and glares.", (subject, value) => subject with { Wet = (bool)value! }, subject => subject.Wet)
        .Free("hold-limit", Kinds.Duration, "Most time it is held; else the group's usual limit.", (subject, value) => subject with { HoldLimit = (Duration)value! }, "1 s", "1 h");

    public static readonly Section<SiteSpec> Site = new Section<SiteSpec>("site", "Light, wind and ground of the place.", new())
        .Optional("name", Kinds.Name, "Name of the place.", (site, value) => site with { Name = (string)value! }, site => site.Name)
        .Optional("ambient", Kinds.ExposureValue, "Ambient light on the subject, e.g. 'EV 12' or '10000 lx'.",
            (site, value) => site with { Ambient = (ExposureValue)value! }, site => site.Ambient, "EV -6", "EV 18")
        .Optional("wind", Kinds.Wind, "Wind at its strongest, e.g. 'Beaufort 4' (its upper bound) or '6 m/s'.",
            (site, value) => site with { Wind = (Speed)value! }, site => site.Wind, "0 m/s", "40 m/s")
        .Optional("slope", Kinds.Angle, "Slope of the ground.", (site, value) => site with { Slope = (Angle)value! }, site => site.Slope, "0°", "45°")
        .Optional("ground-reflectance", Kinds.Ratio, "Diffuse reflectance of the ground under the panel.",
            (site, value) => site with { GroundReflectance = (double)value! }, site => site.GroundReflectance, "0", "1")
        .Optional("temperature", Kinds.Temperature, "Air temperature of a warm day.",
            (site, value) => site with { Temperature = (Temperature)value! }, site => site.Temperature, "-40 °C", "60 °C")
        .Optional("hand-speed", Kinds.Speed, "Speed at which a hand-held camera sways against the subject.",
            (site, value) => site with { HandSpeed = (Speed)value! }, site => site.HandSpeed, "0 m/s", "1 m/s")
        .Optional("outdoor-correction", Kinds.Stops, "What guide numbers lose outdoors, where no walls help; negative stops.",
            (site, value) => site with { OutdoorCorrection = (Stops)value! }, site => site.OutdoorCorrection, "-3", "1");
}
