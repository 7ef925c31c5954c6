using StudioKit.Kits;
using StudioKit.Kits.Carrying;
using StudioKit.Physics.Packing;
using UnitsNet;

namespace StudioKit.Planning.Packing;

/// <summary>Parts of an upright sheet on the pack list: the sheet and its pipes.</summary>
internal static class UprightInventory
{
    /// <summary>Its lines.</summary>
    public static IEnumerable<PackedItem> Of(KitSpec kit, UprightStandPlan upright)
    {
        yield return Part(upright, StudioPart.UprightSheet, $"{upright.Name}, sheet {PlanFormat.Rectangle(upright.Width, upright.Height)}") with
        {
            Sold = new SoldName($"{upright.Name}, sheet", SoldForm.Beside, [upright.Width, upright.Height]),
            Mass = upright.SheetMass,
            Origin = upright.SheetMassOrigin,
            Size = new BoxSize(upright.Width, upright.Height, kit.Uprights.First(one => one.Name == upright.Name).Sheet.Thickness),
            Fragile = true,
        };
        yield return Part(upright, StudioPart.UprightPoles, FormattableString.Invariant($"{upright.Name}, {upright.PieceCount} pieces of {kit.Frame.Pipe.Name}{(upright.Fittings.Count > 0 ? " with fittings" : "")}")) with
        {
            Mass = upright.CarrierMass,
            Origin = MassOrigin.FromGeometry,
            Size = Bundle(kit.Frame.Pipe.OutsideDiameter, upright),
        };
    }

    private static PackedItem Part(UprightStandPlan upright, StudioPart part, string name) => new()
    {
        Part = part,
        Upright = upright.Name,
        Name = name,
        Count = 1,
        Mass = Mass.Zero,
        Origin = MassOrigin.FromGeometry,
        Stage = PackItemStage.SettingUp,
        Essential = false,
    };

    // Pipes side by side in a square, as long as the longest.
    private static BoxSize Bundle(Length diameter, UprightStandPlan upright)
    {
        var side = Math.Ceiling(Math.Sqrt(upright.PieceCount)) * diameter;
        return new BoxSize(upright.LongestPiece, side, side);
    }
}
