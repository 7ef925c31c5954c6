using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning.Packing;
using UnitsNet;

namespace StudioKit.Planning.Studio.Frames;

/// <summary>Every flash under the panel in every place that a set-up puts it: where it is, what holds it, what it weighs.</summary>
internal static class LowerFlashes
{
    // A flash on the ground stands on its hot-shoe foot, its window about so far up (common practice, no source).
    private static readonly Length HeadOnGround = Length.FromMillimeters(40);

    /// <summary>The flashes, one for each flash and place, in the order of the set-ups.</summary>
    public static IReadOnlyList<LowerFlash> Of(KitSpec kit) =>
    [
        .. from setUp in kit.SetUps
           from light in setUp.Lights
           where light.Role == LightRole.Below
           join flash in kit.Flashes on light.Flash equals flash.Name
           group (setUp.Name, Flash: flash, Light: light) by (flash.Name, light.Distance, light.OffsetRight, light.OffsetBack) into place
           select new LowerFlash(place.First().Flash, place.First().Light, [.. place.Select(use => use.Name).Distinct(StringComparer.Ordinal)]),
    ];

    /// <summary>Cradles to ask the frame for; a flash that lies on the ground asks for none.</summary>
    public static IReadOnlyList<FlashCradleCase> Cradles(KitSpec kit) =>
        [.. Of(kit).Where(flash => !OnGround(kit, flash)).Select(flash => CaseOf(kit, flash))];

    /// <summary>Where each is and what holds it.</summary>
    public static IReadOnlyList<FlashBelow> Placed(KitSpec kit, PanelPlan panel, FrameCase design, FrameResult frame)
    {
        var cradles = new Queue<(FlashCradle Cradle, int Number)>(frame.Cradles.Select((cradle, number) => (cradle, number)));
        var taken = new HashSet<string>(StringComparer.Ordinal);
        return [.. Of(kit).Select(flash =>
        {
            if (OnGround(kit, flash))
            {
                return LyingFlashes.Checked(Placed(panel, frame, flash, null, taken), CaseOf(kit, flash), frame, kit);
            }

            var (cradle, number) = cradles.Dequeue();
            var placed = Placed(panel, frame, flash, cradle, taken);
            return placed.Support == FlashSupport.OwnStand ? placed with { Moves = CradleMoves.Of(design, number) } : placed;
        })];
    }

    /// <summary>Middle of a light's window in the frame's space.</summary>
    public static FramePoint Window(LightSpec light, Length panelHeight) =>
        new(light.OffsetRight.Meters, light.OffsetBack.Meters, (panelHeight - light.Distance).Meters);

    /// <summary>Panel's left edge to the middle of a light's window.</summary>
    public static Length FromLeft(PanelPlan panel, LightSpec light) => (panel.Width / 2) + light.OffsetRight;

    /// <summary>Panel's front edge to the middle of a light's window.</summary>
    public static Length FromFront(PanelPlan panel, LightSpec light) => (panel.FlatDepth / 2) + light.OffsetBack;

    /// <summary>Mass of all that hangs on cradles: each flash once, with the cells in it and what it wears.</summary>
    public static Mass CradledMass(KitSpec kit, FrameResult frame)
    {
        var held = Of(kit).Where(flash => !OnGround(kit, flash)).Zip(frame.Cradles).Where(pair => pair.Second.Joint is not null).Select(pair => pair.First).ToList();
        var flashes = held.Select(flash => flash.Flash).DistinctBy(flash => flash.Name).Select(GearMass.FlashWithCells);
        var worn = held.Select(flash => flash.Light.Modifier).Distinct(StringComparer.Ordinal)
            .SelectMany(name => kit.Modifiers.Where(modifier => modifier.Name == name)).Select(modifier => GearMass.Of(modifier).Mass);
        return flashes.Concat(worn).Aggregate(Mass.Zero, (sum, mass) => sum + mass);
    }

    private static FlashBelow Placed(PanelPlan panel, FrameResult frame, LowerFlash flash, FlashCradle? cradle, HashSet<string> taken) => new(
        flash.Flash.Name,
        flash.SetUps,
        Window(flash.Light, frame.PanelHeight),
        flash.Flash.HeadWidth,
        flash.Flash.HeadHeight,
        FromLeft(panel, flash.Light),
        FromFront(panel, flash.Light),
        flash.Light.Distance)
    {
        Support = cradle is null or { Fault.Kind: CradleFaultKind.LowFrame } ? FlashSupport.Ground
            : cradle.Joint is not { } joint ? FlashSupport.OwnStand
            : taken.Add(joint) ? FlashSupport.Cradle : FlashSupport.SharedCradle,
        CradleJoint = cradle?.Joint,
        Fault = cradle?.Fault,
    };

    // A flash that would stand lower than its own height over the ground needs no rail: it lies on the ground.
    private static bool OnGround(KitSpec kit, LowerFlash flash) =>
        flash.Light.Distance + kit.Frame.CradleStandOff + HeadOnGround >= kit.Frame.Height;

    private static FlashCradleCase CaseOf(KitSpec kit, LowerFlash flash) =>
        new(flash.Light.Distance, flash.Light.OffsetRight, flash.Light.OffsetBack, kit.Frame.CradleStandOff)
        {
            HeadWidth = flash.Flash.HeadWidth,
            HeadHeight = flash.Flash.HeadHeight,
            BodyLength = flash.Flash.BodyLength,
            BodyWidth = flash.Flash.BodyWidth,
            BodyHeight = flash.Flash.BodyHeight,
            UpFor = flash.SetUps,
        };
}
