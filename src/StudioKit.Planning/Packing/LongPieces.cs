using StudioKit.Kits;
using StudioKit.Kits.Carrying;
using StudioKit.Physics.Packing;
using UnitsNet;

namespace StudioKit.Planning.Packing;

/// <summary>How the longest pipe and the panel travel.</summary>
internal static class LongPieces
{
    // As for pipes: a tenth longer than the bag catches on branches and door frames.
    private const double Sticking = 1.1;

    private const string PipeName = "longest pipe";

    /// <summary>Both, each with the bag that carries it.</summary>
    public static IReadOnlyList<LongPiece> Of(KitSpec kit, PanelPlan panel, FramePlan frame, IReadOnlyList<PackedItem> items)
    {
        var pieces = new List<LongPiece>();
        if (Carrying(kit, items, StudioPart.Frame) is { } pipeBag)
        {
            pieces.Add(Pipe(kit, StudioInventory.LongestPipe(frame), pipeBag));
        }

        if (Carrying(kit, items, StudioPart.Panel) is { } panelBag)
        {
            pieces.Add(Panel(panel, panelBag));
        }

        return pieces;
    }

    /// <summary>Whether an item is the frame and its longest pipe lies inside its bag after all, from corner to corner.</summary>
    public static bool GoesInside(IReadOnlyList<LongPiece> pieces, PackedItem item) =>
        item is { Outside: true, Part: StudioPart.Frame } && pieces.Any(piece => piece.Part == item.Part && piece.Placement != LongItemPlacement.StrappedOutside);

    private static BagSpec? Carrying(KitSpec kit, IReadOnlyList<PackedItem> items, StudioPart part) =>
        items.FirstOrDefault(item => item.Bag is not null && item.Part == part) is { } found
            ? kit.Pack.Bags.First(bag => bag.Name == found.Bag)
            : null;

    private static LongPiece Pipe(KitSpec kit, Length length, BagSpec bag)
    {
        var inside = PackCases.InsideOf(bag);
        var diameter = kit.Frame.Pipe.OutsideDiameter;
        if (diameter > inside.Middle)
        {
            return new LongPiece
            {
                Name = PipeName,
                Part = StudioPart.Frame,
                Length = length,
                Bag = bag.Name,
                Placement = LongItemPlacement.StrappedOutside,
                LongestInside = Length.Zero,
                SticksOut = true,
                Caveats = [new LongPieceCaveat(LongPieceCaveatKind.TooThick, bag.Name, inside)],
            };
        }

        var placed = LongItem.Place(length, diameter, inside);
        return new LongPiece
        {
            Name = PipeName,
            Part = StudioPart.Frame,
            Length = length,
            Bag = bag.Name,
            Placement = placed.Placement,
            LongestInside = placed.LongestInside,
            SticksOut = placed.SticksOut,
            Caveats = placed.SticksOut ? [new LongPieceCaveat(LongPieceCaveatKind.SticksOut, bag.Name, inside)] : [],
        };
    }

    // Along the sides only: tilting a thin sheet gains a few millimetres.
    private static LongPiece Panel(PanelPlan panel, BagSpec bag)
    {
        var inside = PackCases.InsideOf(bag);
        var size = new BoxSize(panel.Width, panel.Depth, panel.Thickness);
        var goesInside = inside.Takes(size);
        return new LongPiece
        {
            Name = "panel",
            Part = StudioPart.Panel,
            Length = size.Longest,
            Bag = bag.Name,
            Placement = goesInside ? LongItemPlacement.AlongBag : LongItemPlacement.StrappedOutside,
            LongestInside = inside.Longest,
            SticksOut = !goesInside && size.Longest > Sticking * inside.Longest,
            Caveats = goesInside
                ? []
                : [new LongPieceCaveat(LongPieceCaveatKind.LargerThanBack, bag.Name, inside) { Size = size }],
        };
    }
}
