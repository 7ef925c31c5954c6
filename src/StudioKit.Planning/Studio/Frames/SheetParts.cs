using StudioKit.Kits;
using StudioKit.Kits.Lighting;
using StudioKit.Kits.Uprights;
using StudioKit.Physics.Structure.Frames;
using UnitsNet;

namespace StudioKit.Planning.Studio.Frames;

/// <summary>Panel, skirts and softbox parts of one studio.</summary>
internal static class SheetParts
{
    // A hem of 20 mm at either side, 50 mm at the top to go round the rail, 10 mm short of the ground (common practice, no source).
    private static readonly Length Hem = Length.FromMillimeters(20);
    private static readonly Length RoundTheRail = Length.FromMillimeters(50);
    private static readonly Length OffTheGround = Length.FromMillimeters(10);

    // Glue flaps and lips of a folded softbox, and the play its opening has round the head (common practice, no source).
    private static readonly Length Flap = Length.FromMillimeters(12);
    private static readonly Length HeadPlay = Length.FromMillimeters(2);

    /// <summary>Every flat piece of one studio.</summary>
    public static IReadOnlyList<SheetPart> Of(KitSpec kit, PanelPlan panel, FrameResult frame, IReadOnlyList<FoldedSoftbox> softboxes) =>
    [
        new SheetPart(SheetPartKind.Panel, "panel", "panel", PanelMaterial(panel), panel.Width, frame.SheetLength, 1, kit.Panel.KeepDirection) { Sold = Sold(panel.Material, panel.Thickness) },
        .. kit.Panel.Skirts ? Skirts(kit, frame) : [],
        .. Modifiers(kit, softboxes),
    ];

    /// <summary>Parts of softboxes and flat modifiers.</summary>
    public static IReadOnlyList<SheetPart> Modifiers(KitSpec kit, IReadOnlyList<FoldedSoftbox> softboxes) =>
    [
        .. softboxes.SelectMany(box => Softbox(kit, box)),
        .. kit.Modifiers.Where(modifier => modifier is { Kind: ModifierKind.Flat, MadeFrom: not null }).Select(Flat),
    ];

    /// <summary>An upright sheet. Stock has no thickness but the panel's: of the panel's material in another thickness only what is named so is stock.</summary>
    public static SheetPart Upright(KitSpec kit, UprightSpec upright, UprightPlan sheet)
    {
        var material = $"{sheet.Material}, {PlanFormat.Millimetres(sheet.Thickness)}";
        var other = sheet.Material == kit.Panel.Material && PlanFormat.Millimetres(sheet.Thickness) != PlanFormat.Millimetres(kit.Panel.Thickness);
        return new SheetPart(SheetPartKind.Upright, upright.Name, $"upright sheet {upright.Name}", material, sheet.Width, sheet.Height, 1, upright.Sheet.KeepDirection)
        {
            Sold = Sold(sheet.Material, sheet.Thickness),
            StockedAs = other ? material : sheet.Material,
        };
    }

    /// <summary>Softboxes that are folded, each for the first flash that wears it.</summary>
    public static IReadOnlyList<FoldedSoftbox> Softboxes(KitSpec kit) =>
    [
        .. from modifier in kit.Modifiers
           where modifier is { Kind: ModifierKind.Softbox, MadeFrom: not null }
           let light = kit.SetUps.SelectMany(setUp => setUp.Lights).FirstOrDefault(light => light.Modifier == modifier.Name)
           where kit.Flashes.Count > 0
           let flash = kit.Flashes.FirstOrDefault(flash => flash.Name == light?.Flash) ?? kit.Flashes[0]
           select new FoldedSoftbox(
               modifier.Name, flash.Name, flash.HeadWidth + HeadPlay, flash.HeadHeight + HeadPlay, modifier.Width, modifier.Height, modifier.Reach, Flap),
    ];

    /// <summary>What the skirts have for their seams; none without skirts.</summary>
    public static SkirtSeams? Seams(KitSpec kit) => kit.Panel.Skirts ? new SkirtSeams(Hem, RoundTheRail) : null;

    /// <summary>The panel's material as a shop asks for it.</summary>
    public static string PanelMaterial(PanelPlan panel) => $"{panel.Material}, {PlanFormat.Millimetres(panel.Thickness)}";

    private static SoldName Sold(string material, Length thickness) => new(material, SoldForm.Plain, []) { Thickness = thickness };

    private static IEnumerable<SheetPart> Skirts(KitSpec kit, FrameResult frame)
    {
        var pipe = kit.Frame.Pipe.OutsideDiameter;
        var height = frame.PanelHeight + RoundTheRail - OffTheGround;
        var (across, along) = (frame.BaseWidth + pipe + (2 * Hem), frame.BaseDepth + pipe + (2 * Hem));
        yield return new SheetPart(SheetPartKind.Skirt, "skirt front/back", "skirts before and behind", kit.Panel.SkirtMaterial, across, height, 2, true);
        yield return new SheetPart(SheetPartKind.Skirt, "skirt side", "skirts at the sides", kit.Panel.SkirtMaterial, along, height, 2, true);
    }

    private static IEnumerable<SheetPart> Softbox(KitSpec kit, FoldedSoftbox box)
    {
        var material = kit.Modifiers.First(modifier => modifier.Name == box.Modifier).MadeFrom!;
        yield return new SheetPart(SheetPartKind.SoftboxBody, $"{box.Modifier} body", $"body of {box.Modifier}, cut by its template", material, UpToMillimetre(box.PatternWidth), UpToMillimetre(box.PatternHeight), 1, false);
        yield return new SheetPart(
            SheetPartKind.SoftboxFront, $"{box.Modifier} front", $"front of {box.Modifier}", kit.Panel.SkirtMaterial, box.FrontWidth + (2 * Flap), box.FrontHeight + (2 * Flap), 1, true);
    }

    // A rectangle to cut the pattern from is marked in whole millimetres.
    private static Length UpToMillimetre(Length length) => Length.FromMillimeters(Math.Ceiling(length.Millimeters - 1e-6));

    private static SheetPart Flat(ModifierSpec modifier) => new(
        SheetPartKind.FlatModifier, modifier.Name, $"{modifier.Name} with flaps", modifier.MadeFrom!, modifier.Width + (2 * Flap), modifier.Height + (2 * Flap), 1, false);
}
