using StudioKit.Kits;
using StudioKit.Physics.Structure;
using StudioKit.Physics.Structure.Frames;
using UnitsNet;

namespace StudioKit.Planning.Frames;

/// <summary>What a frame weighs and carries, and the studio to be checked with it.</summary>
internal static class FrameLoads
{
    // Subjects weigh little; the box that holds one counts for more (common practice, no source).
    private static readonly Mass SubjectInItsBox = Mass.FromGrams(200);

    // What a bare head with its cells weighs where the kit does not say (common practice, no source).
    private static readonly Mass UsualFlash = Mass.FromGrams(450);

    /// <summary>Pipe and fittings.</summary>
    public static Mass FrameMass(KitSpec kit, FrameResult frame)
    {
        if (kit.Frame.Mass is { } weighed)
        {
            return weighed;
        }

        var fittings = FrameDesign.CaseOf(kit.Frame.Fittings);
        return Mass.FromKilograms(
            (frame.PipeLength.Meters * PipeMass.PerMetre(FrameDesign.PipeOf(kit.Frame.Pipe)))
            + frame.FittingCounts.Sum(pair => fittings.Of(pair.Key).Mass.Kilograms * pair.Value));
    }

    /// <summary>All that stands, without ballast.</summary>
    public static Mass StandingMass(KitSpec kit, PanelPlan panel, FrameResult frame, IReadOnlyList<SheetPart> parts) =>
        FrameMass(kit, frame) + panel.Mass + SkirtMass(kit, parts) + (frame.Cradle is null ? Mass.Zero : FlashMass(kit));

    /// <summary>The studio on its site.</summary>
    public static StudioCheckCase CaseOf(KitSpec kit, PanelPlan panel, FrameResult frame, Mass standing) => new()
    {
        Frame = frame,
        Pipe = FrameDesign.PipeOf(kit.Frame.Pipe),
        Sheet = new Sheet
        {
            Thickness = panel.Thickness,
            Density = kit.Panel.Density,
            YoungsModulus = kit.Panel.YoungsModulus,
            PoissonRatio = kit.Panel.PoissonRatio,
            LongTermStress = kit.Panel.LongTermStress,
            ThermalExpansion = kit.Panel.ThermalExpansion,
            ColdBendRatio = kit.Panel.ColdBendRatio,
        },
        PanelWidth = panel.Width,
        PanelDepth = panel.FlatDepth,
        SweepRadius = frame.Shape == FrameShape.SweptTable ? panel.SweepRadius : null,
        StandingMass = standing,
        Ballast = kit.Frame.Ballast,
        Pegs = kit.Frame.Pegs.Count,
        PegHold = PegHold(kit),
        Guyed = kit.Frame.Pegs.Guys,
        Gust = kit.Site.Wind,
        Air = kit.Site.Temperature,
        Subject = SubjectInItsBox,
        SkirtHeight = kit.Panel.Skirts ? kit.Frame.Height : Length.Zero,
    };

    /// <summary>What one peg holds.</summary>
    public static Force PegHold(KitSpec kit) => Force.FromNewtons(kit.Frame.Pegs.Hold.Kilograms * PanelSag.Gravity);

    private static Mass SkirtMass(KitSpec kit, IReadOnlyList<SheetPart> parts) => Mass.FromKilograms(
        kit.Panel.SkirtArealMass.KilogramsPerSquareMeter
        * parts.Where(part => part.Label.StartsWith(SheetParts.SkirtLabel, StringComparison.Ordinal)).Sum(part => part.Count * part.Width.Meters * part.Height.Meters));

    private static Mass FlashMass(KitSpec kit)
    {
        var below = kit.SetUps.SelectMany(setUp => setUp.Lights).First(light => light.Role == LightRole.Below);
        var flash = kit.Flashes.FirstOrDefault(flash => flash.Name == below.Flash);
        return flash?.Mass is { } mass ? mass + ((flash.Cell?.Mass ?? Mass.Zero) * flash.CellCount) : UsualFlash;
    }
}
