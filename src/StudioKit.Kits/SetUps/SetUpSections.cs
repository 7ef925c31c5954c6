using StudioKit.Kits.Description;
using StudioKit.Kits.Quantities;
using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Kits.SetUps;

/// <summary>Keys of the ways of lighting.</summary>
internal static class SetUpSections
{
    public static readonly Section<LightSpec> Light = new Section<LightSpec>(
        "light", "One flash at work in a set-up.", new() { Flash = "", Role = LightRole.Key, Distance = Length.Zero })
        .Reference("flash", "flashes", "Name of the flash.", (light, value) => light with { Flash = value }, isRequired: true)
        .Required("role", Kinds.Choice(typeof(LightRole), "a role of a light"), "What it does: below, above, key, fill or rim.", (light, value) => light with { Role = (LightRole)value! })
        .Reference("modifier", "modifiers", "Name of the modifier before it; bare where none is named.", (light, value) => light with { Modifier = value })
        .Required("distance", Kinds.Length, "Bright window to panel for a flash below, to subject for all others.",
            (light, value) => light with { Distance = (Length)value! }, "1 cm", "100 m")
        .Optional("offset-right", Kinds.Length, "How far right of the panel's centre it stands, as the camera sees it.",
            (light, value) => light with { OffsetRight = (Length)value! }, light => light.OffsetRight, "-10 m", "10 m")
        .Optional("offset-back", Kinds.Length, "How far beyond the panel's centre it stands, away from the camera.",
            (light, value) => light with { OffsetBack = (Length)value! }, light => light.OffsetBack, "-10 m", "10 m")
        .Optional("tilt", Kinds.Angle, "Tilt of its axis from straight up, towards the panel's centre.",
            (light, value) => light with { Tilt = (Angle)value! }, light => light.Tilt, "-90°", "90°")
        .Free("aim-right", Kinds.Length, "Point of the panel that a flash below is aimed at, right of the flat panel's centre; it stands in for the tilt.",
            (light, value) => light with { AimRight = (Length)value! }, "-10 m", "10 m")
        .Free("aim-back", Kinds.Length, "The same point, beyond the flat panel's centre.",
            (light, value) => light with { AimBack = (Length)value! }, "-10 m", "10 m")
        .Free("zoom", Kinds.Length, "Zoom setting; else the guide number's own.", (light, value) => light with { Zoom = (Length)value! }, "5 mm", "500 mm");

    public static readonly Section<SetUpSpec> SetUp = new Section<SetUpSpec>(
        "set-up", "One way of lighting, with its targets and limits.", new() { Name = "", Kind = SetUpKind.WhiteBackground }, namedAmong: "set-ups")
        .Required("name", Kinds.Name, "Name on the cards; each set-up has its own.", (setUp, value) => setUp with { Name = (string)value! })
        .Required("kind", Kinds.Choice(typeof(SetUpKind), "a kind of set-up"), "Which way of lighting.", (setUp, value) => setUp with { Kind = (SetUpKind)value! })
        .References("lenses", "lenses", "Names of the lenses used; else all.", (setUp, value) => setUp with { Lenses = value })
        .References("subjects", "subjects", "Names of the subjects; else all.", (setUp, value) => setUp with { Subjects = value })
        .Optional("aperture", Kinds.FNumberOrBest, "f-number to set, or 'best' for the sharpest over the subject's depth.",
            (setUp, value) => setUp with { Aperture = (FNumber?)value }, setUp => setUp.Aperture, "f/0.5", "f/256")
        .Free("shutter", Kinds.Shutter, "Shutter speed; else the camera's flash sync.", (setUp, value) => setUp with { Shutter = (ShutterSpeed)value! }, "1/32000 s", "60 s")
        .Free("iso", Kinds.Iso, "ISO speed to stay near; else the camera's lowest.", (setUp, value) => setUp with { Iso = (IsoSpeed)value! }, "3", "10000000")
        .Free("ambient", Kinds.ExposureValue, "Ambient light that the set-up is planned for, e.g. 'EV 6'; else the site's.",
            (setUp, value) => setUp with { Ambient = (ExposureValue)value! }, "EV -6", "EV 18")
        .Values("camera-pitch", Kinds.Angle, "Line of sight under the horizontal, one angle or a list; 90° looks straight down.",
            (setUp, value) => setUp with { CameraPitches = [.. value.Cast<Angle>()] }, setUp => [.. setUp.CameraPitches], "0°", "90°")
        .Values("camera-roll", Kinds.Angle, "Turn of the camera about its line of sight, one angle or a list; 90° is an upright frame.",
            (setUp, value) => setUp with { CameraRolls = [.. value.Cast<Angle>()] }, setUp => [.. setUp.CameraRolls], "-180°", "180°")
        .Many("lights", Light, "The flashes at work.", (setUp, value) => setUp with { Lights = value })
        .Optional("target-white-margin", Kinds.Stops, "Least stops by which the visible panel lies above clipping.",
            (setUp, value) => setUp with { TargetWhiteMargin = (Stops)value! }, setUp => setUp.TargetWhiteMargin, "-3", "4")
        .Optional("veil-limit", Kinds.Stops, "Shadow lift by veiling glare that is still accepted on a mid-tone.",
            (setUp, value) => setUp with { VeilLimit = (Stops)value! }, setUp => setUp.VeilLimit, "0", "10")
        .Optional("ambient-below-flash", Kinds.Stops, "How far daylight on the subject must stay under the flash in a white-background set-up.",
            (setUp, value) => setUp with { AmbientBelowFlash = (Stops)value! }, setUp => setUp.AmbientBelowFlash, "0", "12")
        .Optional("fill-level", Kinds.Stops, "Level of the fill against the ambient light, negative under it.",
            (setUp, value) => setUp with { FillLevel = (Stops)value! }, setUp => setUp.FillLevel, "-8", "8")
        .Optional("ambient-under", Kinds.Stops, "How far the background is pushed under its metered exposure in a dark-background set-up.",
            (setUp, value) => setUp with { AmbientUnder = (Stops)value! }, setUp => setUp.AmbientUnder, "0", "15")
        .Optional("rim-level", Kinds.Stops, "Level of the rim light against the key.", (setUp, value) => setUp with { RimLevel = (Stops)value! }, setUp => setUp.RimLevel, "-8", "8")
        .Optional("background-distance", Kinds.Length, "Subject to background.",
            (setUp, value) => setUp with { BackgroundDistance = (Length)value! }, setUp => setUp.BackgroundDistance, "1 cm", "1000 m")
        .Reference("filter", "filters", "Name of the filter before the lens.", (setUp, value) => setUp with { Filter = value })
        .Check(SetUpLights.Check);
}
