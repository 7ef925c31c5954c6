using StudioKit.Kits.Description;
using StudioKit.Kits.Quantities;
using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Kits.Lighting;

/// <summary>Keys of flashes, their cells and what goes before them.</summary>
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
        .Values("zooms", Kinds.GuideNumber, "Guide numbers at other zoom settings.", (flash, value) => flash with { Zooms = [.. value.Cast<GuideNumber>()] }, _ => [], "1 m", "300 m")
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
        .Free("energy", Kinds.Energy, "Energy of a flash at full power, e.g. '75 J'.", (flash, value) => flash with { Energy = (Energy)value! }, "0.1 J", "10 kJ")
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
}
