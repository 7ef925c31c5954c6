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
        .Free("hold-limit", Kinds.Duration, "Most time it is held; else the group's usual limit.", (subject, value) => subject with { HoldLimit = (Duration)value! }, "1 s", "1 h")
        .Free("frames", Kinds.Count, "Frames taken of it in each set-up; else the session's number.", (subject, value) => subject with { Frames = (int)value! }, "1", "1000")
        .Optional("stack", Kinds.YesNo, "Whether a focus stack is taken too, where one frame is not deep enough.", (subject, value) => subject with { Stack = (bool)value! }, subject => subject.Stack);

    public static readonly Section<SessionSpec> Session = new Section<SessionSpec>("session", "How long the steps of a session take.", new())
        .Optional("setting-up", Kinds.Duration, "Unpacking to the first set-up ready for its test.",
            (session, value) => session with { SettingUp = (Duration)value! }, session => session.SettingUp, "0 s", "4 h")
        .Optional("changing", Kinds.Duration, "Changing from one set-up to another.", (session, value) => session with { Changing = (Duration)value! }, session => session.Changing, "0 s", "2 h")
        .Optional("reframing", Kinds.Duration, "Changing lens or magnification within a set-up.",
            (session, value) => session with { Reframing = (Duration)value! }, session => session.Reframing, "0 s", "1 h")
        .Optional("settling", Kinds.Duration, "Catching or fetching an animal until it sits on the sheet.",
            (session, value) => session with { Settling = (Duration)value! }, session => session.Settling, "0 s", "1 h")
        .Optional("frame-time", Kinds.Duration, "Shortest time from one frame to the next: look, focus, fire.",
            (session, value) => session with { FrameTime = (Duration)value! }, session => session.FrameTime, "0.1 s", "10 min")
        .Optional("test-frames", Kinds.Count, "Frames of the test object at each framing of a set-up.",
            (session, value) => session with { TestFrames = (int)value! }, session => session.TestFrames, "1", "100")
        .Optional("frames", Kinds.Count, "Frames of a subject in each set-up.", (session, value) => session with { Frames = (int)value! }, session => session.Frames, "1", "1000")
        .Optional("rounds", Kinds.Count, "How often in a day the session is gone through with new animals.",
            (session, value) => session with { Rounds = (int)value! }, session => session.Rounds, "1", "100");

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
