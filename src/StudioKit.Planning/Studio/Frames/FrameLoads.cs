using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Kits.Studio;
using StudioKit.Physics.Packing;
using StudioKit.Physics.Structure;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning.Packing;
using StudioKit.Planning.Sheltering;
using UnitsNet;

namespace StudioKit.Planning.Studio.Frames;

/// <summary>What a frame weighs and carries, and the studio to be checked with it.</summary>
internal static class FrameLoads
{
    /// <summary>Pipe and fittings.</summary>
    public static MassStatement FrameMass(KitSpec kit, FrameResult frame) =>
        StudioMass.Of(frame, FrameDesign.PipeOf(kit.Frame.Pipe), FrameDesign.CaseOf(kit.Frame.Fittings), kit.Frame.Mass);

    /// <summary>All that stands, without ballast.</summary>
    public static Mass StandingMass(KitSpec kit, PanelPlan panel, FrameResult frame, IReadOnlyList<SheetPart> parts) =>
        FrameMass(kit, frame).Mass + RestMass(kit, frame) + panel.Mass + SkirtMass(kit, parts) + LowerFlashes.CradledMass(kit, frame);

    /// <summary>The studio on its site.</summary>
    public static StudioCheckCase CaseOf(KitSpec kit, PanelPlan panel, FrameResult frame, Mass standing) => new()
    {
        Frame = frame,
        Pipe = FrameDesign.PipeOf(kit.Frame.Pipe),
        Sheet = SheetOf(kit.Panel) with { Density = SheetDensity(kit.Panel, panel) },
        PanelWidth = panel.Width,
        PanelDepth = panel.FlatDepth,
        SweepRadius = frame.Shape == FrameShape.SweptTable ? panel.SweepRadius : null,
        StandingMass = standing,
        Ballast = kit.Frame.Ballast,
        Pegs = kit.Frame.Pegs.Count,
        PegHold = PegHold(kit),
        Guyed = kit.Frame.Pegs.Guys,
        Gust = WindOf(kit, panel).Gust,
        Air = kit.Site.Temperature,
        SunWarming = kit.Site.SunWarming,
        Subject = OnSheet(kit),
        Elbow = kit.Panel.ElbowLoad,
        Friction = kit.Site.GroundFriction,
        JointStiffness = kit.Frame.JointStiffness,
        SkirtHeight = kit.Panel.Skirts ? kit.Frame.Height : Length.Zero,
    };

    /// <summary>The sheet the panel is cut from.</summary>
    public static Sheet SheetOf(PanelSpec panel) => new()
    {
        Thickness = panel.Thickness,
        Density = panel.Density,
        YoungsModulus = panel.YoungsModulus,
        PoissonRatio = panel.PoissonRatio,
        Making = panel.Making,
        LongTermStress = panel.LongTermStress,
        ShortTermStress = panel.ShortTermStress,
        ThermalExpansion = panel.ThermalExpansion,
        ColdBendRatio = panel.ColdBendRatio,
    };

    /// <summary>The wind of the site on a frame, from its mean to its gust; the frame stands for all set-ups on it, and so behind what all of them have put up.</summary>
    public static SiteWind WindOf(KitSpec kit, PanelPlan panel, FrameSail? sail = null) => WindOf(
        kit, PlanStages.OnPanel(kit), sail is null || sail.Width < panel.Width ? panel.Width : sail.Width, kit.Frame.Height + (sail is null ? Length.Zero : sail.LowerEdge + sail.Height));

    /// <summary>The wind of the site on something of a width and height, behind what all its set-ups have put up.</summary>
    public static SiteWind WindOf(KitSpec kit, IReadOnlyList<SetUpSpec> setUps, Length width, Length height) => new(kit.Site.Wind, Beaufort.ForceOf(kit.Site.Wind.MetersPerSecond), kit.Site.GustFactor)
    {
        Left = WindScreens.Behind(kit, setUps, width, height),
    };

    /// <summary>The studio with a sheet on its back rail, in the wind that reaches both.</summary>
    public static StudioCheckCase WithSail(StudioCheckCase studio, KitSpec kit, PanelPlan panel, FrameSail? sail) => studio with { Sail = sail, Gust = WindOf(kit, panel, sail).Gust };

    /// <summary>What one peg holds.</summary>
    public static Force PegHold(KitSpec kit) => Force.FromNewtons(kit.Frame.Pegs.Hold.Kilograms * PanelSag.Gravity);

    /// <summary>Strips of pad or ledge on the rails; a frame that was weighed was weighed with them.</summary>
    public static Mass RestMass(KitSpec kit, FrameResult frame) => kit.Frame.Mass is null ? StripsToBuy.MassOf(frame.Ledge) : Mass.Zero;

    /// <summary>All skirts, as they are cut.</summary>
    public static Mass SkirtMass(KitSpec kit, IReadOnlyList<SheetPart> parts) => Mass.FromKilograms(
        kit.Panel.SkirtArealMass.KilogramsPerSquareMeter
        * parts.Where(part => part.Kind == SheetPartKind.Skirt).Sum(part => part.Count * part.Width.Meters * part.Height.Meters));

    // A subject in its box, or in the heaviest cover of the set-ups on the panel if that is more.
    private static Mass OnSheet(KitSpec kit)
    {
        var used = PlanStages.OnPanel(kit).Select(setUp => setUp.Cover).ToHashSet(StringComparer.Ordinal);
        return kit.Covers.Where(cover => used.Contains(cover.Name)).Select(GearMass.Standing).Append(kit.Panel.SubjectInBox).Max();
    }

    // A panel that was weighed presses on its rails with what it weighs.
    private static Density SheetDensity(PanelSpec sheet, PanelPlan panel) => panel.MassOrigin == MassOrigin.Weighed
        ? Density.FromKilogramsPerCubicMeter(panel.Mass.Kilograms / (panel.Width.Meters * panel.Depth.Meters * panel.Thickness.Meters))
        : sheet.Density;
}
