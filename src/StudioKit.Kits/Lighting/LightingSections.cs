using StudioKit.Kits.Description;
using StudioKit.Kits.Quantities;
using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Kits.Lighting;

/// <summary>Keys of flashes, their cells and what goes before them.</summary>
internal static class LightingSections
{
    private const int MostFlashesPerSet = 100_000;

    public static readonly Section<CellSpec> Cell = new Section<CellSpec>(
        "cell", "A battery cell or pack.",
        new() { Name = "", Chemistry = CellChemistry.NickelMetalHydride, Voltage = ElectricPotential.Zero, Capacity = ElectricCharge.Zero, Mass = Mass.Zero },
        partKind: "cells")
        .Required("name", "Name on the sheets.").Name((cell, value) => cell with { Name = value })
        .Required("chemistry", "What it is made of; air rules depend on it.")
            .Choice<CellChemistry>("a cell chemistry", (cell, value) => cell with { Chemistry = value })
        .Required("voltage", "Nominal voltage.", "0.5 V", "100 V").Voltage((cell, value) => cell with { Voltage = value })
        .Required("capacity", "Charge it holds, e.g. '2000 mAh'.", "1 mAh", "200 Ah").Charge((cell, value) => cell with { Capacity = value })
        .Required("mass", "Mass of one.", "0.5 g", "10 kg").Mass((cell, value) => cell with { Mass = value });

    public static readonly Section<FlashSpec> Flash = new Section<FlashSpec>(
        "flash", "A battery flash.", new() { Name = "", GuideNumber = new GuideNumber(Length.FromMeters(1)) }, partKind: "flashes", namedAmong: "flashes")
        .Required("name", "Name on the sheets; each flash has its own.").Name((flash, value) => flash with { Name = value })
        .Required("guide-number", "Guide number at full power, e.g. '38 m @ ISO 100, 35 mm' or '60 (ISO 100, m, 200 mm)'; the length at the end is the zoom.", "1 m", "300 m")
            .GuideNumber((flash, value) => flash with { GuideNumber = value })
        .Optional("zooms", "Guide numbers at other zoom settings.", "1 m", "300 m").GuideNumbers((flash, value) => flash with { Zooms = value })
        .Optional("zoom", "Zoom that the head is set to where a set-up names none, as focal length on a 36 mm x 24 mm sensor; else that of its guide number.", "4 mm", "1 m")
            .Length((flash, value) => flash with { Zoom = value })
        .Optional("power-step", "How far one click of its power dial goes: a third of a stop, half or a whole one.")
            .Choice<PowerStep>("a power step", (flash, value) => flash with { PowerStep = value }, flash => flash.PowerStep)
        .Optional("lowest-power", "Lowest power setting.", "1/4096", "1/1")
            .Power((flash, value) => flash with { LowestPower = value }, flash => flash.LowestPower)
        .Optional("metered", "Whether the camera can meter it through the lens; cards then name the compensation beside the power.")
            .YesNo((flash, value) => flash with { Metered = value }, flash => flash.Metered)
        .Optional("beam-width", "Full width of the bare beam at half intensity; else it follows from the zoom.", "1°", "179°")
            .Angle((flash, value) => flash with { BeamWidth = value })
        .Optional("beam-height", "Full height of the bare beam at half intensity.", "1°", "179°")
            .Angle((flash, value) => flash with { BeamHeight = value })
        .Distribution("light-distribution", "Measured shape of the bare beam at the flash's own zoom: name of an IES LM-63 file in parts/light-distributions beside the kit, e.g. 'reed.ies'; how bright it is stays with the guide number.",
            (flash, value) => flash with { LightDistribution = value })
        .Optional("head", "Width and height of the bright window, e.g. '70 mm x 40 mm'.", "1 mm", "1 m")
            .Size((flash, value) => flash with { HeadWidth = value.First, HeadHeight = value.Second }, flash => new Size(flash.HeadWidth, flash.HeadHeight))
        .Optional("body", "Length, width and height of the flash as it lies with its bright window facing up, e.g. '200 mm x 75 mm x 50 mm'.", "1 cm", "2 m")
            .Box((flash, value) => flash with { BodyLength = value.First, BodyWidth = value.Second, BodyHeight = value.Third }, flash => new Box(flash.BodyLength, flash.BodyWidth, flash.BodyHeight))
        .Optional("full-power-duration", "Flash duration at full power, t0.1 by threshold.", "1 µs", "1 s")
            .Duration((flash, value) => flash with { FullPowerDuration = value }, flash => flash.FullPowerDuration)
        .Optional("recycle-time", "Time to recharge after a full-power flash with fresh cells.", "10 ms", "60 s")
            .Duration((flash, value) => flash with { RecycleTime = value }, flash => flash.RecycleTime)
        .Optional("energy", "Energy of a flash at full power, e.g. '75 J'.", "0.1 J", "10 kJ").Energy((flash, value) => flash with { Energy = value })
        .Optional("flashes-per-set", "Full-power flashes from one set of cells; else they follow from the energy of flash and cells where both are given.", "1", $"{MostFlashesPerSet}")
            .Count((flash, value) => flash with { FlashesPerSet = value }, flash => flash.FlashesPerSet ?? FlashSpec.UsualFlashesPerSet)
        .Within("cell", Cell, "Cells it takes; leave out for a flash with its own battery.", (flash, value) => flash with { Cell = value })
        .Optional("cell-count", "Cells in a set.", "1", "24").Count((flash, value) => flash with { CellCount = value }, flash => flash.CellCount)
        .Optional("spare-sets", "Spare sets of cells carried.", "0", "50")
            .Count((flash, value) => flash with { SpareSets = value }, flash => flash.SpareSets)
        .Optional("mass", "Mass without cells.", "1 g", "20 kg").Mass((flash, value) => flash with { Mass = value })
        .Without(["beam-width", "beam-height"], flash => flash.LightDistribution is not null, "changes nothing beside a measured light distribution, which has the whole beam", "Leave it out, or 'light-distribution'.")
        .Follows("flashes-per-set", flash => flash.FlashesFromCells is not null)
        .Check(flash => flash is { FlashesPerSet: null, FlashesFromCells: < 1 or > MostFlashesPerSet }
            ? new Fault(
                "energy", $"The cells would give {flash.FlashesFromCells} flashes of this energy.",
                "Check the flash's energy, the charge and voltage of its cells and their number, or write 'flashes-per-set'.")
            : null);

    public static readonly Section<ModifierSpec> Modifier = new Section<ModifierSpec>(
        "modifier", "A dome, softbox or flat diffuser before a flash.", new() { Name = "", Kind = ModifierKind.Dome }, partKind: "modifiers", namedAmong: "modifiers")
        .Required("name", "Name on the sheets; each modifier has its own.").Name((modifier, value) => modifier with { Name = value })
        .Required("kind", "What it is.").Choice<ModifierKind>("a kind of modifier", (modifier, value) => modifier with { Kind = value })
        .Optional("size", "Width and height of its glowing front, e.g. '120 mm x 90 mm'.", "5 mm", "2 m")
            .Size((modifier, value) => modifier with { Width = value.First, Height = value.Second }, modifier => new Size(modifier.Width, modifier.Height))
        .Optional("transmittance", "Share of the flash's light that comes out of it.", "0.001", "1")
            .Ratio((modifier, value) => modifier with { Transmittance = value }, modifier => modifier.Transmittance)
        .Optional("lobe-exponent", "Exponent n of its cosⁿ lobe; 1 is Lambertian.", "0", "1000")
            .Plain((modifier, value) => modifier with { LobeExponent = value }, modifier => modifier.LobeExponent)
        .Distribution("light-distribution", "Measured shape of the light that leaves it: name of an IES LM-63 file in parts/light-distributions beside the kit, e.g. 'reed.ies'; what it loses is still computed, or its 'loss'.",
            (modifier, value) => modifier with { LightDistribution = value })
        .Optional("half-ball", "Whether a dome is a translucent half ball, which shines sideways and backwards too, in place of a cosⁿ front.")
            .YesNo((modifier, value) => modifier with { HalfBall = value }, modifier => modifier.HalfBall)
        .Optional("loss", "On-axis loss as measured, a positive number of stops; else computed from the two beams.", "-3", "12")
            .Stops((modifier, value) => modifier with { Loss = value })
        .Optional("made-from", "Sheet it is folded or cut from, matched with the stock's sheets; bought where none is named.")
            .Name((modifier, value) => modifier with { MadeFrom = value })
        .Optional("reach", "Front of the flash to the glowing front of a softbox that is folded.", "1 cm", "1 m")
            .Length((modifier, value) => modifier with { Reach = value }, modifier => modifier.Reach)
        .Optional("mass", "Mass.", "1 g", "10 kg").Mass((modifier, value) => modifier with { Mass = value })
        .Without(["lobe-exponent", "half-ball"], modifier => modifier.LightDistribution is not null, "changes nothing beside a measured light distribution, which has the whole beam", "Leave it out, or 'light-distribution'.")
        .Follows("lobe-exponent", modifier => modifier.HalfBall)
        .Follows("half-ball", modifier => modifier.Kind != ModifierKind.Dome)
        .Check(OnlyDomes);

    public static readonly Section<HolderSpec> Holder = new Section<HolderSpec>(
        "holder", "What holds a flash where it stands.", new() { Name = "", Kind = HolderKind.Stand }, namedAmong: "holders")
        .Required("name", "Name on the sheets; each holder has its own.").Name((holder, value) => holder with { Name = value })
        .Required("kind", "What it is: a stand, an arm or a clamp on the frame, a hand, or the ground.").Choice<HolderKind>("a kind of holder", (holder, value) => holder with { Kind = value })
        .Optional("lowest", "Lowest that it holds the flash over the ground.", "0 cm", "5 m")
            .Length((holder, value) => holder with { Lowest = value }, holder => holder.LowestHold)
        .Optional("highest", "Highest that it holds the flash over the ground.", "1 cm", "6 m")
            .Length((holder, value) => holder with { Highest = value }, holder => holder.HighestHold)
        .Optional("reach", "From where it is fastened to the flash; from the camera for a hand, from its post for a stand with a boom.", "0 cm", "5 m")
            .Length((holder, value) => holder with { Reach = value }, holder => holder.FullReach)
        .Optional("built", "Whether it is built of the frame's pipe, rather than bought.").YesNo((holder, value) => holder with { Built = value }, holder => holder.Built)
        .Optional("price", "Price of one that is bought.", "0", "100000").Price((holder, value) => holder with { Price = value })
        .Optional("size", "Its three sides as it is packed, e.g. '500 mm x 90 mm x 90 mm'.", "1 mm", "3 m")
            .Box((holder, value) => holder with { PackedLength = value.First, PackedWidth = value.Second, PackedDepth = value.Third })
        .Optional("mass", "Mass.", "1 g", "20 kg").Mass((holder, value) => holder with { Mass = value })
        .Without(["lowest", "highest"], holder => !holder.StandsOnGround, "changes nothing for what is fastened or held: its height is that of what holds it", "Say how far it goes: 'reach: 60 cm'.")
        .Without(["reach"], holder => holder.Kind == HolderKind.Ground, "changes nothing for a flash on the ground", "Say how high it may stand there: 'highest: 20 cm'.")
        .Without(["built", "price", "size", "mass"], holder => !holder.IsCarried, "changes nothing for a hand: nobody packs or buys it", "Say how far it goes from the camera: 'reach: 75 cm'.")
        .Without(["built"], holder => holder.Kind == HolderKind.Ground, "changes nothing for a flash on the ground: there is nothing to cut for it", "Leave it out.")
        .Without(["price", "size", "mass"], holder => holder.Built, "changes nothing for what is built: it follows from the pipe", "Leave it out, or write 'built: no'.")
        .Check(holder => holder.StandsOnGround && holder.LowestHold > holder.HighestHold
            ? new Fault("highest", "The holder's lowest place lies over its highest.", "Write the lower one first: 'lowest: 45 cm', 'highest: 190 cm'.")
            : null);

    private static Fault? OnlyDomes(ModifierSpec modifier) => modifier switch
    {
        { HalfBall: false } => null,
        { Kind: not ModifierKind.Dome } => new Fault("half-ball", $"The modifier '{modifier.Name}' is no dome, so it is no half ball.", "Write 'kind: dome', or leave 'half-ball' out."),
        { LobeExponent: not 1 } => new Fault("lobe-exponent", $"The modifier '{modifier.Name}' is a half ball, whose lobe is known.", "Leave 'lobe-exponent' out, or 'half-ball'."),
        _ => null,
    };
}
