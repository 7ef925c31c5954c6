using StudioKit.Kits;

namespace StudioKit.Planning.Studio.Frames;

/// <summary>Small parts of the upright sheets on the shopping list.</summary>
internal static class UprightShopping
{
    public static IEnumerable<ShoppingLine> Lines(KitSpec kit, IEnumerable<UprightStandPlan> uprights)
    {
        var (studios, family) = (kit.Stock.Studios, kit.Frame.Fittings.Name);
        foreach (var upright in uprights)
        {
            foreach (var fitting in upright.Fittings)
            {
                yield return new ShoppingLine($"{family}: {fitting.Name}, for {upright.Name}", fitting.Count * studios, fitting.PriceEach);
            }

            yield return new ShoppingLine($"clip from sheet to pipe, for {upright.Name}", upright.SheetClips * studios, kit.Stock.ClipPrice);
            yield return new ShoppingLine($"clip from pipe to pipe, for {upright.Name}", upright.PipeClips * studios, kit.Stock.ClipPrice);
            yield return new ShoppingLine($"ground peg, for {upright.Name}", upright.Cords * studios, kit.Stock.PegPrice);
            yield return new ShoppingLine($"cord, metre, for {upright.Name}", (int)Math.Ceiling((upright.Cords * studios * upright.CordLength.Meters) - 1e-9), null);
        }
    }
}
