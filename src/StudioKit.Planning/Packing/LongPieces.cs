using StudioKit.Kits;
using StudioKit.Kits.Carrying;
using StudioKit.Physics.Packing;
using UnitsNet;

namespace StudioKit.Planning.Packing;

/// <summary>How the longest pipe, the panel and the upright sheets travel.</summary>
internal static class LongPieces
{
    // As for pipes: a tenth longer than the bag catches on branches and door frames.
    private const double Sticking = 1.1;

    private const string PipeName = "longest pipe";

    /// <summary>Each with the bag that carries it.</summary>
    public static IReadOnlyList<LongPiece> Of(KitSpec kit, PanelPlan panel, FramePlan? frame, IReadOnlyList<UprightStandPlan> uprights, IReadOnlyList<PackedItem> items)
    {
        var pieces = new List<LongPiece>();
        if (frame is not null && Carrying(kit, items, item => item.Part == StudioPart.Frame) is { } pipeBag)
        {
            pieces.Add(Pipe(kit, StudioInventory.LongestPipe(frame), pipeBag));
        }

        if (frame is not null && Carrying(kit, items, item => item.Part == StudioPart.Panel) is { } panelBag)
        {
            pieces.Add(Sheet("panel", StudioPart.Panel, new BoxSize(panel.Width, panel.Depth, panel.Thickness), panelBag));
        }

        foreach (var sheet in items.Where(item => item.Part == StudioPart.UprightSheet && uprights.Any(upright => upright.Name == item.Upright)))
        {
            if (Carrying(kit, items, item => item == sheet) is { } bag)
            {
                pieces.Add(Sheet(sheet.Upright!, StudioPart.UprightSheet, sheet.Size!, bag));
            }
        }

        return pieces;
    }

    /// <summary>Whether an item is the frame and its longest pipe lies inside its bag after all, from corner to corner.</summary>
    public static bool GoesInside(IReadOnlyList<LongPiece> pieces, PackedItem item) =>
        item is { Outside: true, Part: StudioPart.Frame } && pieces.Any(piece => piece.Part == item.Part && piece.Placement != LongItemPlacement.StrappedOutside);

    private static BagSpec? Carrying(KitSpec kit, IReadOnlyList<PackedItem> items, Func<PackedItem, bool> isIt) =>
        items.FirstOrDefault(item => item.Bag is not null && isIt(item)) is { } found
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
    private static LongPiece Sheet(string name, StudioPart part, BoxSize size, BagSpec bag)
    {
        var inside = PackCases.InsideOf(bag);
        var goesInside = inside.Takes(size);
        return new LongPiece
        {
            Name = name,
            Part = part,
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
