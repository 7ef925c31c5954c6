using StudioKit.Kits;
using StudioKit.Kits.Cameras;
using StudioKit.Kits.Carrying;
using StudioKit.Kits.Covers;
using StudioKit.Kits.Lighting;
using StudioKit.Kits.Session;
using StudioKit.Kits.SetUps;
using StudioKit.Kits.Shelters;
using StudioKit.Kits.Studio;
using StudioKit.Kits.Subjects;
using StudioKit.Kits.Supports;
using StudioKit.Kits.Triggers;
using StudioKit.Kits.Uprights;
using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Planning;

/// <summary>What of a kit each stage of a plan looks at; all else is put back to nothing, so that kits that differ only there are equal to that stage.</summary>
/// <remarks>A stage is handed its slice and never the whole kit: what is not in the slice cannot change what it works out.</remarks>
internal static class KitSlice
{
    private static readonly KitSpec Nothing = new()
    {
        Name = "",
        Camera = new CameraSpec { Name = "", SensorWidth = Length.Zero, SensorHeight = Length.Zero },
        Lenses = [],
    };

    /// <summary>The camera's size, lenses, and what goes between them.</summary>
    public static KitSpec ForFramings(KitSpec kit) => Nothing with
    {
        Camera = Nothing.Camera with
        {
            SensorWidth = kit.Camera.SensorWidth,
            SensorHeight = kit.Camera.SensorHeight,
            FlangeDistance = kit.Camera.FlangeDistance,
            ReportsEffectiveFNumber = kit.Camera.ReportsEffectiveFNumber,
        },
        Lenses = [.. kit.Lenses.Select(lens => lens with { Mass = null })],
        Accessories = kit.Accessories with { Filters = [], RailPitch = null },
    };

    /// <summary>Camera, lenses, and the features that decide what a subject is.</summary>
    public static KitSpec ForFeatures(KitSpec kit)
    {
        var framings = ForFramings(kit);
        return framings with
        {
            Camera = framings.Camera with { PixelsWide = kit.Camera.PixelsWide },
            Subjects = [.. kit.Subjects
                .Where(subject => subject.Feature is not null)
                .Select(subject => new SubjectSpec { Name = subject.Name, Group = default, Length = Length.Zero, Feature = subject.Feature })],
        };
    }

    /// <summary>The sheet, and from where it is looked at.</summary>
    public static KitSpec ForPanel(KitSpec kit) => Nothing with
    {
        Panel = kit.Panel,
        Subjects = kit.Subjects,
        Frame = new FrameSpec { Kind = kit.Frame.Kind },
        SetUps = [.. kit.SetUps.Select(LookedAt)],
    };

    /// <summary>The upright sheets, and from where they are looked at.</summary>
    public static KitSpec ForUprights(KitSpec kit) => kit.Uprights.Count == 0 ? Nothing : Nothing with
    {
        Uprights = kit.Uprights,
        Subjects = kit.Subjects,
        SetUps = [.. kit.SetUps.Where(setUp => setUp.Upright is not null).Select(setUp => LookedAt(setUp) with { HeightOverGround = setUp.HeightOverGround })],
    };

    /// <summary>Frame, sheet, site and stock, what hangs on the frame and what lies under it; of a bag only how long it is inside.</summary>
    public static KitSpec ForFrame(KitSpec kit) => Nothing with
    {
        Panel = kit.Panel,
        Frame = kit.Frame,
        Site = kit.Site with { Ambient = default, OutdoorCorrection = default, Date = null, Latitude = null, Longitude = null, UtcOffset = null, ShadeLoss = default },
        Stock = kit.Stock,
        Supports = [.. kit.Supports.Where(support => support.Price is not null).Select(support => new SupportSpec { Name = support.Name, Kind = default, Price = support.Price })],
        Triggers = [.. kit.Triggers.Where(trigger => trigger.Price is not null).Select(trigger => new TriggerSpec { Name = trigger.Name, Kind = default, Count = trigger.Count, Price = trigger.Price })],
        Modifiers = kit.Modifiers,
        Holders = [.. kit.Holders.Select(holder => holder with { Mass = null, PackedLength = null, PackedWidth = null, PackedDepth = null })],
        Flashes = Bodies(kit),
        Pack = new PackSpec { Bags = [.. kit.Pack.Bags.Select(bag => new BagSpec { Name = "", InsideLength = bag.InsideLength, InsideWidth = Length.Zero, InsideDepth = Length.Zero })] },
        SetUps = [.. kit.SetUps.Select(setUp => Named(setUp) with { Lights = setUp.Lights, Cover = setUp.Cover, Shelters = setUp.Shelters })],
        Shelters = [.. kit.Shelters.Select(shelter => shelter with { Measured = null, Held = false, Rated = null, Mass = null, PackedLength = null, PackedWidth = null, PackedDepth = null })],
        Uprights = [.. kit.Uprights.Select(Held)],
        Covers = [.. kit.Covers.Select(cover => cover with { Lifted = false, TimeLimit = null, PackedLength = null, PackedWidth = null, PackedDepth = null })],
    };

    /// <summary>Sheet, ground and pipes as light meets them, flashes and what is before them.</summary>
    public static KitSpec ForLight(KitSpec kit) => Nothing with
    {
        Panel = kit.Panel,
        Frame = new FrameSpec { Height = kit.Frame.Height, Pipe = kit.Frame.Pipe },
        Site = new SiteSpec { GroundReflectance = kit.Site.GroundReflectance, OutdoorCorrection = kit.Site.OutdoorCorrection },
        Flashes = kit.Flashes,
        Modifiers = kit.Modifiers,
        Subjects = kit.Subjects,
        Uprights = Lit(kit),
    };

    /// <summary>One set-up with its camera, flashes, filters and subjects, and the light of the place.</summary>
    public static KitSpec ForExposures(KitSpec kit, SetUpSpec setUp) => Nothing with
    {
        Camera = kit.Camera with { Name = "", Mass = null },
        Accessories = new AccessoriesSpec { Filters = kit.Accessories.Filters, RailPitch = kit.Accessories.RailPitch },
        Supports = [.. kit.Supports.Where(support => support.Name == setUp.Support).Select(support => new SupportSpec { Name = support.Name, Kind = support.Kind, MeasuredSway = support.MeasuredSway })],
        Triggers = [.. kit.Triggers.Select(Fired)],
        Flashes = kit.Flashes,
        Modifiers = kit.Modifiers,
        Holders = [.. kit.Holders.Select(holder => new HolderSpec { Name = holder.Name, Kind = holder.Kind })],
        Panel = new PanelSpec { Transmittance = kit.Panel.Transmittance, UndersideReflectance = kit.Panel.UndersideReflectance },
        Site = (setUp.Shelters.Count > 0 ? SunOf(kit.Site) : new SiteSpec()) with { Ambient = kit.Site.Ambient, HandSpeed = kit.Site.HandSpeed, OutdoorCorrection = kit.Site.OutdoorCorrection },
        Shelters = [.. kit.Shelters.Where(shelter => setUp.Shelters.Contains(shelter.Name)).Select(Hung)],
        Subjects = kit.Subjects,
        Session = kit.Session,
        SetUps = [setUp with { LightWindow = null, Clock = setUp.Shelters.Count > 0 ? setUp.Clock : null }],
        Uprights = [.. Lit(kit).Where(upright => upright.Name == setUp.Upright)],
        Covers = [.. kit.Covers.Where(cover => cover.Name == setUp.Cover).Select(LookedThrough)],
    };

    /// <summary>Covers with their set-ups, from where they are looked at and lit, and what sits in them.</summary>
    public static KitSpec ForCovers(KitSpec kit) => Nothing with
    {
        Covers = [.. kit.Covers.Select(Stood)],
        Flashes = kit.Flashes,
        Modifiers = kit.Modifiers,
        Site = new SiteSpec { Ambient = kit.Site.Ambient },
        Subjects = kit.Subjects,
        SetUps = [.. kit.SetUps.Where(setUp => setUp.Cover is not null).Select(setUp => setUp with { LightWindow = null, Clock = null })],
    };

    /// <summary>One set-up and the studio that it is looked at in.</summary>
    public static KitSpec ForPanelLights(KitSpec kit, SetUpSpec setUp) => ForExposures(kit, setUp) with
    {
        Panel = kit.Panel,
        Frame = new FrameSpec { Height = kit.Frame.Height, Pipe = kit.Frame.Pipe },
    };

    /// <summary>Lights about the subject, what holds them, and what they may hit or brighten.</summary>
    public static KitSpec ForLightStands(KitSpec kit) => Nothing with
    {
        Camera = kit.Camera with { Name = "", Mass = null },
        Accessories = new AccessoriesSpec { Filters = kit.Accessories.Filters },
        Flashes = kit.Flashes,
        Modifiers = kit.Modifiers,
        Holders = [.. kit.Holders.Select(holder => holder with { Mass = null, Price = null, Built = false, PackedLength = null, PackedWidth = null, PackedDepth = null })],
        Panel = new PanelSpec { UndersideReflectance = kit.Panel.UndersideReflectance, Finish = kit.Panel.Finish },
        Site = new SiteSpec { OutdoorCorrection = kit.Site.OutdoorCorrection },
        Subjects = kit.Subjects,
        SetUps = [.. kit.SetUps.Select(setUp => setUp with { LightWindow = null, Clock = null })],
    };

    /// <summary>Everything that is carried, and who carries it.</summary>
    public static KitSpec ForPack(KitSpec kit) => Nothing with
    {
        Camera = Nothing.Camera with { Name = kit.Camera.Name, Mass = kit.Camera.Mass },
        Lenses = kit.Lenses,
        Accessories = kit.Accessories,
        Supports = [.. kit.Supports.Select(support => support with { MeasuredSway = null, Price = null })],
        Triggers = [.. kit.Triggers.Select(trigger => trigger with { Channel = null, Groups = 1, SetsPower = false, Sync = null, Range = null, Price = null })],
        Shelters = [.. kit.Shelters.Select(shelter => shelter with { Measured = null, Porosity = 0, Distance = null, Rated = null, Price = null })],
        Flashes = Bodies(kit),
        Modifiers = kit.Modifiers,
        Covers = [.. kit.Covers.Select(cover => cover with { Lifted = false, TimeLimit = null, Price = null })],
        Holders = kit.Holders,
        Panel = kit.Panel,
        Frame = kit.Frame,
        Uprights = [.. kit.Uprights.Select(upright => new UprightSpec { Name = upright.Name, Sheet = new PanelSpec { Thickness = upright.Sheet.Thickness } })],
        Pack = kit.Pack,
    };

    /// <summary>Subjects, how they are held, and what there is time and energy for.</summary>
    public static KitSpec ForSession(KitSpec kit) => Nothing with
    {
        Subjects = kit.Subjects,
        Handling = kit.Handling,
        Session = kit.Session,
        Site = DayOf(kit.Site),
        Flashes = Bodies(kit),
        SetUps = [.. kit.SetUps.Select(setUp => Named(setUp) with { Subjects = setUp.Subjects, LightWindow = setUp.LightWindow, Clock = setUp.Clock, Cover = setUp.Cover })],
        Covers = [.. kit.Covers.Select(Stood)],
    };

    /// <summary>Where and when the sun is looked at.</summary>
    public static KitSpec ForDay(KitSpec kit) => Nothing with { Site = DayOf(kit.Site) };

    private static SiteSpec SunOf(SiteSpec site) => DayOf(site) with { ShadeLoss = default };

    // How it hangs and what comes through, whatever it weighs, costs and bears.
    private static ShelterSpec Hung(ShelterSpec shelter) => shelter with { Porosity = 0, Rated = null, Mass = null, Price = null, PackedLength = null, PackedWidth = null, PackedDepth = null };

    private static SiteSpec DayOf(SiteSpec site) => new() { Date = site.Date, Latitude = site.Latitude, Longitude = site.Longitude, UtcOffset = site.UtcOffset, ShadeLoss = site.ShadeLoss };

    // Whatever it weighs, costs and packs to.
    private static CoverSpec Stood(CoverSpec cover) => cover with { Mass = null, Price = null, PackedLength = null, PackedWidth = null, PackedDepth = null };

    // However much light its sheet lets through; its size is the plan's.
    private static UprightSpec Held(UprightSpec upright) => upright with
    {
        Sheet = upright.Sheet with { Transmittance = default, ScatterExponent = default, UndersideReflectance = default, HarmedBy = [] },
        Width = null,
        Height = null,
        Margin = default,
    };

    private static CoverSpec LookedThrough(CoverSpec cover) => Stood(cover) with { TimeLimit = null };

    // Whatever it weighs and reaches, and how many there are.
    private static TriggerSpec Fired(TriggerSpec trigger) => new()
    {
        Name = trigger.Name,
        Kind = trigger.Kind,
        Channel = trigger.Channel,
        Groups = trigger.Groups,
        Sync = trigger.Sync,
    };

    // Sheets as light meets them, whatever holds them.
    private static ValueList<UprightSpec> Lit(KitSpec kit) => [.. kit.Uprights.Select(upright => new UprightSpec
    {
        Name = upright.Name,
        Sheet = new PanelSpec
        {
            Transmittance = upright.Sheet.Transmittance,
            ScatterExponent = upright.Sheet.ScatterExponent,
            UndersideReflectance = upright.Sheet.UndersideReflectance,
        },
        OverGround = upright.OverGround,
        Lean = upright.Lean,
    })];

    // From where its sheets are looked at; how far off one stands that it has none of is nothing to them.
    private static SetUpSpec LookedAt(SetUpSpec setUp)
    {
        var seen = Named(setUp) with
        {
            Lenses = setUp.Lenses,
            Magnifications = setUp.Magnifications,
            CameraPitches = setUp.CameraPitches,
            CameraRolls = setUp.CameraRolls,
        };
        return setUp.Upright is null ? seen : seen with { BackgroundDistance = setUp.BackgroundDistance };
    }

    // Before an upright sheet it also counts whether the subject stands on the panel, which the roles of the lights say.
    private static SetUpSpec Named(SetUpSpec setUp) => setUp.Upright is null
        ? new() { Name = setUp.Name, Kind = setUp.Kind }
        : new()
        {
            Name = setUp.Name,
            Kind = setUp.Kind,
            Upright = setUp.Upright,
            BackgroundDistance = setUp.BackgroundDistance,
            Lights = [.. setUp.Lights.Select(light => light.Role).Distinct().Select(role => new LightSpec { Flash = "", Role = role, Distance = Length.Zero })],
        };

    // What a flash weighs, how big its head is and what it runs on, whatever light it gives.
    private static ValueList<FlashSpec> Bodies(KitSpec kit) => [.. kit.Flashes.Select(flash => flash with
    {
        GuideNumber = new GuideNumber(Length.FromMeters(1)),
        Zooms = [],
        Zoom = null,
        PowerStep = default,
        LowestPower = FlashPower.Full,
        BeamWidth = null,
        BeamHeight = null,
        LightDistribution = null,
        FullPowerDuration = Duration.Zero,
        RecycleTime = Duration.Zero,
    })];
}
