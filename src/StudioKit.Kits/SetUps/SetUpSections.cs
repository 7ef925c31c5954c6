using StudioKit.Kits.Description;
using UnitsNet;

namespace StudioKit.Kits.SetUps;

/// <summary>Keys of the ways of lighting.</summary>
internal static class SetUpSections
{
    public static readonly Section<LightSpec> Light = new Section<LightSpec>(
        "light", "One flash at work in a set-up.", new() { Flash = "", Role = LightRole.Key, Distance = Length.Zero })
        .Reference("flash", "flashes", "Name of the flash.", (light, value) => light with { Flash = value }, isRequired: true)
        .Required("role", "What it does: below, above, key, fill, rim, or behind an upright sheet.")
            .Choice<LightRole>("a role of a light", (light, value) => light with { Role = value })
        .Reference("modifier", "modifiers", "Name of the modifier before it; bare where none is named.", (light, value) => light with { Modifier = value })
        .Required("distance", "Bright window to panel for a flash below, to the upright sheet for one behind it, to subject for all others.", "1 cm", "100 m")
            .Length((light, value) => light with { Distance = value })
        .Optional("offset-right", "How far right of the panel's centre, or of the subject before an upright sheet, it stands, as the camera sees it.", "-10 m", "10 m")
            .Length((light, value) => light with { OffsetRight = value }, light => light.OffsetRight)
        .Optional("offset-back", "How far beyond the panel's centre it stands, away from the camera.", "-10 m", "10 m")
            .Length((light, value) => light with { OffsetBack = value }, light => light.OffsetBack)
        .Optional("offset-up", "How far above the level of the subject a flash behind an upright sheet stands; it is aimed at the sheet behind the subject.", "-3 m", "3 m")
            .Length((light, value) => light with { OffsetUp = value }, light => light.OffsetUp)
        .Optional("tilt", "Tilt of its axis from straight up, towards the panel's centre.", "-90°", "90°")
            .Angle((light, value) => light with { Tilt = value }, light => light.Tilt)
        .Optional("aim-right", "Point of the panel that a flash below is aimed at, right of the flat panel's centre; it stands in for the tilt.", "-10 m", "10 m")
            .Length((light, value) => light with { AimRight = value })
        .Optional("aim-back", "The same point, beyond the flat panel's centre.", "-10 m", "10 m")
            .Length((light, value) => light with { AimBack = value })
        .Optional("azimuth", "From where it comes, seen from above: '0°' from the camera, '90°' from its right, '-90°' from its left, '180°' from behind the subject.", "-180°", "180°")
            .Angle((light, value) => light with { Azimuth = value }, light => light.From?.Azimuth ?? Angle.Zero)
        .Optional("elevation", "How high it stands over the level of the subject; 90° is straight above.", "-60°", "90°")
            .Angle((light, value) => light with { Elevation = value }, light => light.From?.Elevation ?? Angle.Zero)
        .Reference("holder", "holders", "Name of what holds it; else a free hand.", (light, value) => light with { Holder = value })
        .Optional("zoom", "Zoom setting; else the guide number's own.", "5 mm", "500 mm").Length((light, value) => light with { Zoom = value })
        .Reference("trigger", "triggers", "Name of what fires it: the radio or cell at the flash, its cord, or a hand.", (light, value) => light with { Trigger = value })
        .Optional("group", "Letter of its group on the radio, e.g. 'B'.").RadioGroup((light, value) => light with { Group = value }, light => light.Group)
        .Without(["group"], light => light.Trigger is null, "changes nothing without 'trigger'", "Say what fires the flash: 'trigger: receiver'.")
        .Without(["azimuth", "elevation"], IsBehind, "is for a light about the subject; one behind an upright sheet is aimed through it at the subject", "Place it with 'distance', 'offset-right' and 'offset-up'.")
        .Without(["offset-back", "tilt", "aim-right", "aim-back"], IsBehind, "is for a light below the panel; one behind an upright sheet is aimed through it at the subject", "Place it with 'distance', 'offset-right' and 'offset-up'.")
        .Without(["offset-up"], light => !IsBehind(light), "is for a light behind an upright sheet", "Say how high it stands otherwise: 'elevation: 45°', or 'distance' below the panel.")
        .Without(["azimuth", "elevation", "holder"], IsBelow, "is for a light about the subject; one below the panel stands on the ground or in the frame", "Place it with 'distance', 'offset-right' and 'offset-back', and turn it with 'tilt' or 'aim-right' and 'aim-back'.")
        .Without(
            ["offset-right", "offset-back", "tilt", "aim-right", "aim-back"], light => !light.Role.IsBackground(), "is for a light below the panel; this one stands about the subject and is aimed at it",
            "Say from where it comes: 'azimuth: -45°' is from the left before the subject, 'elevation: 45°' halfway up.")
        .Without(["tilt"], light => light.AimRight is not null || light.AimBack is not null, "changes nothing where the light is aimed at a point", "Leave out either 'tilt' or 'aim-right' and 'aim-back'.");

    public static readonly Section<SetUpSpec> SetUp = new Section<SetUpSpec>(
        "set-up", "One way of lighting, with its targets and limits.", new() { Name = "", Kind = SetUpKind.WhiteBackground }, namedAmong: "set-ups")
        .Required("name", "Name on the cards; each set-up has its own.").Name((setUp, value) => setUp with { Name = value })
        .Required("kind", "Which way of lighting.").Choice<SetUpKind>("a kind of set-up", (setUp, value) => setUp with { Kind = value })
        .References("lenses", "lenses", "Names of the lenses used; else all.", (setUp, value) => setUp with { Lenses = value })
        .Optional("magnifications", "Magnifications that it is used at, e.g. '[1:4, 1:2]'; else all that its lenses have.", "0.001", "20")
            .Magnifications((setUp, value) => setUp with { Magnifications = value })
        .References("subjects", "subjects", "Names of the subjects; else all.", (setUp, value) => setUp with { Subjects = value })
        .Optional("aperture", "f-number to set, or 'best' for the sharpest over the subject's depth.", "f/0.5", "f/256")
            .FNumberOrBest((setUp, value) => setUp with { Aperture = value }, setUp => setUp.Aperture)
        .Optional("shutter", "Shutter speed; else the camera's flash sync.", "1/32000 s", "60 s")
            .Shutter((setUp, value) => setUp with { Shutter = value })
        .Optional("iso", "ISO speed to stay near; else the camera's lowest.", "3", "10000000").Iso((setUp, value) => setUp with { Iso = value })
        .Optional("ambient", "Ambient light that the set-up is planned for, e.g. 'EV 6'; else the site's.", "EV -6", "EV 18")
            .ExposureValue((setUp, value) => setUp with { Ambient = value })
        .Optional("subject-ambient", "Ambient light metered on the subject, e.g. 'EV 11', where its background is brighter or darker; 'ambient' is then the background's.", "EV -6", "EV 18")
            .ExposureValue((setUp, value) => setUp with { SubjectAmbient = value })
        .Optional("light-window", "Ambient light that it is photographed in, from the darkest, e.g. 'EV 12 to EV 15'; else as far from what it is planned for as its exposures work.", "EV -6", "EV 18")
            .Lights((setUp, value) => setUp with { LightWindow = value })
        .Optional("clock", "Hours of the day that it is photographed in, e.g. '09:00 to 17:00'; past midnight where the second comes first; else any.")
            .Hours((setUp, value) => setUp with { Clock = value })
        .Optional("camera-pitch", "Line of sight under the horizontal, one angle or a list; 90° looks straight down.", "0°", "90°")
            .Angles((setUp, value) => setUp with { CameraPitches = value }, setUp => setUp.CameraPitches)
        .Optional("camera-roll", "Turn of the camera about its line of sight, one angle or a list; 90° is an upright frame.", "-180°", "180°")
            .Angles((setUp, value) => setUp with { CameraRolls = value }, setUp => setUp.CameraRolls)
        .Many("lights", Light, "The flashes at work.", (setUp, value) => setUp with { Lights = value })
        .Optional("target-white-margin", "Least stops by which the visible panel lies above clipping.", "-3", "4")
            .Stops((setUp, value) => setUp with { TargetWhiteMargin = value }, setUp => setUp.TargetWhiteMargin)
        .Optional("veil-limit", "Shadow lift by veiling glare that is still accepted on a mid-tone.", "0", "10")
            .Stops((setUp, value) => setUp with { VeilLimit = value }, setUp => setUp.VeilLimit)
        .Optional("ambient-below-flash", "How far daylight on the subject must stay under the flash in a white-background set-up.", "0", "12")
            .Stops((setUp, value) => setUp with { AmbientBelowFlash = value }, setUp => setUp.AmbientBelowFlash)
        .Optional("fill-level", "Level of the fill against correct exposure, negative under it; where 'subject-ambient' is given, else what the subject's own light lacks.", "-8", "8")
            .Stops((setUp, value) => setUp with { FillLevel = value }, setUp => setUp.FillLevel ?? SetUpSpec.UsualFill)
        .Optional("ambient-under", "How far the background is pushed under its metered exposure in a dark-background set-up.", "0", "15")
            .Stops((setUp, value) => setUp with { AmbientUnder = value }, setUp => setUp.AmbientUnder)
        .Optional("rim-level", "Level of the rim light against the key.", "-8", "8")
            .Stops((setUp, value) => setUp with { RimLevel = value }, setUp => setUp.RimLevel)
        .Optional("background-distance", "Subject to background, or to its upright sheet.", "1 cm", "1000 m")
            .Length((setUp, value) => setUp with { BackgroundDistance = value }, setUp => setUp.BackgroundDistance)
        .Optional("background-reflectance", "Mean reflectance of the background as a flash meter sees it; before the panel it is the panel's own.", "0.001", "1")
            .Ratio((setUp, value) => setUp with { BackgroundReflectance = value }, setUp => setUp.BackgroundReflectance)
        .Optional("metered-share", "Share of the metered frame that the subject covers, e.g. '30 %'; else from its length.", "0.01", "1")
            .Ratio((setUp, value) => setUp with { MeteredShare = value })
        .Optional("height-over-ground", "How high the subject sits over the ground; on the panel it sits as high as that.", "0 cm", "5 m")
            .Length((setUp, value) => setUp with { HeightOverGround = value }, setUp => setUp.HeightOverGround)
        .Reference("filter", "filters", "Name of the filter before the lens.", (setUp, value) => setUp with { Filter = value })
        .Reference("cover", "covers", "Name of the clear cover over the animal, or of the tank that it swims in.", (setUp, value) => setUp with { Cover = value })
        .Reference("upright", "uprights", "Name of the sheet that stands behind the subject.", (setUp, value) => setUp with { Upright = value })
        .Reference("support", "supports", "Name of what the camera rests on; else the free hand, as steady as the site's 'hand-speed'.", (setUp, value) => setUp with { Support = value })
        .Reference("sender", "triggers", "Name of the radio on the camera; else the kit's first sender.", (setUp, value) => setUp with { Sender = value })
        .References("shelters", "shelters", "Names of what is put up against sun and wind; 'ambient' and 'subject-ambient' are metered without it.", (setUp, value) => setUp with { Shelters = value })
        .Optional("sun-share", "Share of the sun's own light in what is metered, e.g. '80 %'; measure it: one less what the meter reads in your hand's shadow over what it reads in the sun.", "0", "1")
            .Ratio((setUp, value) => setUp with { SunShare = value })
        .Without(["sun-share"], setUp => setUp.Shelters.Count == 0, "changes nothing where nothing is put up against the sun", "Say what is: 'shelters: [umbrella]'.")
        .Without(["sender"], setUp => setUp.Lights.All(light => light.Trigger is null), "changes nothing where no light has a 'trigger'", "Say what fires each flash: 'trigger: receiver'.")
        .Follows("fill-level", setUp => setUp.SubjectAmbient is not null)
        .Without(["height-over-ground"], setUp => setUp.Kind == SetUpKind.WhiteBackground && !setUp.IsBeforeUpright, "changes nothing for a subject on the panel", "Set the height of the frame: 'height: 500 mm' under 'frame'.")
        .Check(SetUpLights.Check)
        .Check(SubjectApart)
        .Check(CoveredWhereItSits)
        .Check(CoveredBeforeUpright)
        .Check(LightOutsideWindow);

    private static bool IsBehind(LightSpec light) => light.Role == LightRole.Behind;

    private static bool IsBelow(LightSpec light) => light.Role == LightRole.Below;

    private static Fault? SubjectApart(SetUpSpec setUp) => setUp switch
    {
        { SubjectAmbient: null } => null,
        { Kind: SetUpKind.WhiteBackground } => new Fault("subject-ambient", $"The white-background set-up '{setUp.Name}' has no background but the panel.", "Leave it out, or say with 'ambient' how bright the place is."),
        { Ambient: null } => new Fault("subject-ambient", $"The set-up '{setUp.Name}' says how bright its subject is, but not its background.", "Meter the background too: 'ambient: EV 14'."),
        _ => null,
    };

    private static Fault? CoveredWhereItSits(SetUpSpec setUp) => setUp is { Cover: not null, Kind: SetUpKind.DaylightFill or SetUpKind.LowLightFill }
        ? new Fault("cover", $"The animal of '{setUp.Name}' is photographed where it sits, and so under no cover.", "Leave 'cover' out, or write 'kind: white-background'.")
        : null;

    private static Fault? CoveredBeforeUpright(SetUpSpec setUp) => setUp is { Cover: not null, IsBeforeUpright: true }
        ? new Fault("cover", $"The subject of '{setUp.Name}' stands where it grows, and so under no cover.", "Leave 'cover' out, or add a flash below the panel: 'role: below'.")
        : null;

    private static Fault? LightOutsideWindow(SetUpSpec setUp) => setUp is { Ambient: { } ambient, LightWindow: { } window } && !window.Holds(ambient)
        ? new Fault("light-window", $"The light that '{setUp.Name}' is planned for lies outside its window of light.", "Let 'ambient' lie within 'light-window'.")
        : null;
}
