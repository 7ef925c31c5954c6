using StudioKit.Kits.Quantities;
using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Kits.Description;

/// <summary>Keys of flashes, their cells and modifiers, and of the ways of lighting.</summary>
internal static class LightingSections
{
    public static readonly Section<CellSpec> Cell = new Section<CellSpec>(
        "cell", "A battery cell or pack.",
        new() { Name = "", Chemistry = CellChemistry.NickelMetalHydride, Voltage = ElectricPotential.Zero, Capacity = ElectricCharge.Zero, Mass = Mass.Zero },
        partKind: "cells")
        .Required("name", Kinds.Name, "Name on the sheets.", (cell, value) => cell with { Name = (string)value! })
        .Required("chemistry", Kinds.Choice(typeof(CellChemistry), "a cell chemistry"), "What it is made of; air rules depend on it.",
            (cell, value) => cell with { Chemistry = (CellChemistry)value! })
        .Required("voltage", Kinds.Voltage, "Nominal voltage.", (cell, value) => cell with { Voltage = (ElectricPotential)value! }, "0.5 V", "100 V")
        .Required("capacity", Kinds.Charge, "Charge it holds, e.g. '2000 mAh'.", (cell, value) => cell with { Capacity = (ElectricCharge)value! }, "1 mAh", "200 Ah")
        .Required("mass", Kinds.Mass, "Mass of one.", (cell, value) => cell with { Mass = (Mass)value! }, "0.5 g", "10 kg");

    public static readonly Section<FlashSpec> Flash = new Section<FlashSpec>(
        "flash", "A battery flash.", new() { Name = "", GuideNumber = new GuideNumber(Length.FromMeters(1)) }, partKind: "flashes", namedAmong: "flashes")
        .Required("name", Kinds.Name, "Name on the sheets; each flash has its own.", (flash, value) => flash with { Name = (string)value! })
        .Required("guide-number", Kinds.GuideNumber, "Guide number at full power, e.g. '38 m @ ISO 100, 35 mm'; the length at the end is the zoom.",
            (flash, value) => flash with { GuideNumber = (GuideNumber)value! }, "1 m", "300 m")
        .Values("zooms", Kinds.GuideNumber, "Guide numbers at other zoom settings.", (flash, value) => flash with { Zooms = Array.ConvertAll(value, item => (GuideNumber)item!) }, _ => [], "1 m", "300 m")
        .Optional("lowest-power", Kinds.Power, "Lowest power setting.", (flash, value) => flash with { LowestPower = (FlashPower)value! }, flash => flash.LowestPower, "1/4096", "1/1")
        .Free("beam-width", Kinds.Angle, "Full width of the bare beam at half intensity; else it follows from the zoom.",
            (flash, value) => flash with { BeamWidth = (Angle)value! }, "1°", "179°")
        .Free("beam-height", Kinds.Angle, "Full height of the bare beam at half intensity.", (flash, value) => flash with { BeamHeight = (Angle)value! }, "1°", "179°")
        .Optional("head", Kinds.Size, "Width and height of the bright window, e.g. '70 mm x 40 mm'.",
            (flash, value) => flash with { HeadWidth = ((Size)value!).First, HeadHeight = ((Size)value!).Second }, flash => new Size(flash.HeadWidth, flash.HeadHeight), "1 mm", "1 m")
        .Optional("full-power-duration", Kinds.Duration, "Flash duration at full power, t0.1 by threshold.",
            (flash, value) => flash with { FullPowerDuration = (Duration)value! }, flash => flash.FullPowerDuration, "1 µs", "1 s")
        .Optional("recycle-time", Kinds.Duration, "Time to recharge after a full-power flash with fresh cells.",
            (flash, value) => flash with { RecycleTime = (Duration)value! }, flash => flash.RecycleTime, "10 ms", "60 s")
        .Optional("flashes-per-set", Kinds.Count, "Full-power flashes from one set of cells.",
            (flash, value) => flash with { FlashesPerSet = (int)value! }, flash => flash.FlashesPerSet, "1", "100000")
        .Within("cell", Cell, "Cells it takes; leave out for a flash with its own battery.", (flash, value) => flash with { Cell = value })
        .Optional("cell-count", Kinds.Count, "Cells in a set.", (flash, value) => flash with { CellCount = (int)value! }, flash => flash.CellCount, "1", "24")
        .Optional("spare-sets", Kinds.Count, "Spare sets of cells carried.", (flash, value) => flash with { SpareSets = (int)value! }, flash => flash.SpareSets, "0", "50")
        .Free("mass", Kinds.Mass, "Mass without cells.", (flash, value) => flash with { Mass = (Mass)value! }, "1 g", "20 kg");

    public static readonly Section<ModifierSpec> Modifier = new Section<ModifierSpec>(
        "modifier", "A dome, softbox or flat diffuser before a flash.", new() { Name = "", Kind = ModifierKind.Dome }, partKind: "modifiers", namedAmong: "modifiers")
        .Required("name", Kinds.Name, "Name on the sheets; each modifier has its own.", (modifier, value) => modifier with { Name = (string)value! })
        .Required("kind", Kinds.Choice(typeof(ModifierKind), "a kind of modifier"), "What it is.", (modifier, value) => modifier with { Kind = (ModifierKind)value! })
        .Optional("size", Kinds.Size, "Width and height of its glowing front, e.g. '120 mm x 90 mm'.",
            (modifier, value) => modifier with { Width = ((Size)value!).First, Height = ((Size)value!).Second }, modifier => new Size(modifier.Width, modifier.Height), "5 mm", "2 m")
        .Optional("transmittance", Kinds.Ratio, "Share of the flash's light that comes out of it.",
            (modifier, value) => modifier with { Transmittance = (double)value! }, modifier => modifier.Transmittance, "0.001", "1")
        .Optional("lobe-exponent", Kinds.Plain, "Exponent n of its cosⁿ lobe; 1 is Lambertian.",
            (modifier, value) => modifier with { LobeExponent = (double)value! }, modifier => modifier.LobeExponent, "0", "1000")
        .Free("loss", Kinds.Stops, "On-axis loss as measured, a positive number of stops; else computed from the two beams.",
            (modifier, value) => modifier with { Loss = (Stops)value! }, "-3", "12")
        .Free("made-from", Kinds.Name, "Sheet it is folded or cut from, matched with the stock's sheets; bought where none is named.",
            (modifier, value) => modifier with { MadeFrom = (string)value! })
        .Optional("reach", Kinds.Length, "Front of the flash to the glowing front of a softbox that is folded.",
            (modifier, value) => modifier with { Reach = (Length)value! }, modifier => modifier.Reach, "1 cm", "1 m")
        .Free("mass", Kinds.Mass, "Mass.", (modifier, value) => modifier with { Mass = (Mass)value! }, "1 g", "10 kg");

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
            (setUp, value) => setUp with { CameraPitches = Array.ConvertAll(value, item => (Angle)item!) }, setUp => [.. setUp.CameraPitches], "0°", "90°")
        .Values("camera-roll", Kinds.Angle, "Turn of the camera about its line of sight, one angle or a list; 90° is an upright frame.",
            (setUp, value) => setUp with { CameraRolls = Array.ConvertAll(value, item => (Angle)item!) }, setUp => [.. setUp.CameraRolls], "-180°", "180°")
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
