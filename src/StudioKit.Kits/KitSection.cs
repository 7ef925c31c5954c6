using StudioKit.Kits.Cameras;
using StudioKit.Kits.Carrying;
using StudioKit.Kits.Covers;
using StudioKit.Kits.Description;
using StudioKit.Kits.Exploring;
using StudioKit.Kits.Lighting;
using StudioKit.Kits.Session;
using StudioKit.Kits.SetUps;
using StudioKit.Kits.Shelters;
using StudioKit.Kits.Stock;
using StudioKit.Kits.Studio;
using StudioKit.Kits.Subjects;
using StudioKit.Kits.Supports;
using StudioKit.Kits.Triggers;
using StudioKit.Kits.Uprights;
using UnitsNet;

namespace StudioKit.Kits;

/// <summary>Keys of the whole kit.</summary>
internal static class KitSection
{
    public static readonly Section<KitSpec> Kit = new Section<KitSpec>(
        "kit", "A portable field studio: camera, lighting, panel, frame, pack, subjects and ways of lighting.",
        new() { Name = "", Camera = new() { Name = "", SensorWidth = Length.Zero, SensorHeight = Length.Zero }, Lenses = [] })
        .Required("kit", "Name of the kit, printed on every sheet.").Name((kit, value) => kit with { Name = value })
        .Optional("description", "A sentence about what the kit is for.")
            .Sentence((kit, value) => kit with { Description = value }, kit => kit.Description)
        .Within("camera", CameraSections.Camera, "The camera body.", (kit, value) => kit with { Camera = value }, isRequired: true)
        .Many("lenses", CameraSections.Lens, "Lenses, each with the magnifications it is used at.", (kit, value) => kit with { Lenses = value }, isRequired: true)
        .Within("accessories", CameraSections.Accessories, "Extension tubes, close-up lenses, teleconverters and filters.",
            (kit, value) => kit with { Accessories = value }, kit => kit.Accessories)
        .Many("supports", SupportSections.Support, "Tripods, rails and bags that the camera rests on.", (kit, value) => kit with { Supports = value })
        .Many("flashes", LightingSections.Flash, "Flashes.", (kit, value) => kit with { Flashes = value })
        .Many("modifiers", LightingSections.Modifier, "Domes, softboxes and flat diffusers that go before a flash.", (kit, value) => kit with { Modifiers = value })
        .Many("covers", CoverSections.Cover, "Clear tubs and domes that are turned over an animal, and tanks of water.", (kit, value) => kit with { Covers = value })
        .Many("uprights", UprightSections.Upright, "Translucent sheets that stand behind a subject, lit from behind.", (kit, value) => kit with { Uprights = value })
        .Many("holders", LightingSections.Holder, "Stands, arms and clamps that hold flashes.", (kit, value) => kit with { Holders = value })
        .Many("triggers", TriggerSections.Trigger, "Radios, cords and optical cells that fire flashes.", (kit, value) => kit with { Triggers = value })
        .Many("shelters", ShelterSections.Shelter, "Umbrellas, cloths and screens that are put up against sun and wind.", (kit, value) => kit with { Shelters = value })
        .Within("panel", StudioSections.Panel, "The translucent sheet the subject stands on.", (kit, value) => kit with { Panel = value }, kit => kit.Panel)
        .Within("frame", StudioSections.Frame, "The pipe frame that carries the panel.", (kit, value) => kit with { Frame = value }, kit => kit.Frame)
        .Within("pack", CarryingSections.Pack, "Bags, people and the other things carried.", (kit, value) => kit with { Pack = value }, kit => kit.Pack)
        .Many("subjects", SubjectSections.Subject, "Animals and plants to be portrayed.", (kit, value) => kit with { Subjects = value })
        .Many("set-ups", SetUpSections.SetUp, "Ways of lighting.", (kit, value) => kit with { SetUps = value })
        .Within("session", SessionSections.Session, "How long the steps of a session take.", (kit, value) => kit with { Session = value }, kit => kit.Session)
        .Within("site", SessionSections.Site, "Light, wind and ground of the place.", (kit, value) => kit with { Site = value }, kit => kit.Site)
        .Within("stock", StockSections.Stock, "Pipe lengths and sheets on hand or to buy.", (kit, value) => kit with { Stock = value }, kit => kit.Stock)
        .Within("explore", ExploreSections.Explore, "What the kit leaves open, and how its designs are compared.", (kit, value) => kit with { Explore = value })
        .Check(UprightCarriers.Check)
        .Check(UprightSections.Held);

    /// <summary>Every section below the kit's own, each once.</summary>
    public static IEnumerable<ISection> Inner => All(Kit).DistinctBy(section => section.Name);

    private static IEnumerable<ISection> All(ISection section) => section.Inner.SelectMany(inner => All(inner).Prepend(inner));
}
