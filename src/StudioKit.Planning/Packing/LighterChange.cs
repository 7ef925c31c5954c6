using StudioKit.Kits;
using StudioKit.Planning.Changes;
using UnitsNet;

namespace StudioKit.Planning.Packing;

/// <summary>A change of a kit that makes it lighter and keeps what it is for; one of the forms below.</summary>
public abstract record LighterChange
{
    private LighterChange()
    {
    }

    /// <summary>The kit with the change made.</summary>
    /// <param name="kit">The kit.</param>
    public abstract KitSpec Of(KitSpec kit);

    /// <summary>No more spare sets of cells than the session needs.</summary>
    /// <param name="SpareSets">Spare sets by the name of the flash [1]; flashes that keep theirs are left out.</param>
    public sealed record FewerCells(Physics.ValueDictionary<int> SpareSets) : LighterChange
    {
        /// <inheritdoc/>
        public override KitSpec Of(KitSpec kit) => kit with
        {
            Flashes = [.. kit.Flashes.Select(flash => SpareSets.TryGetValue(flash.Name, out var sets) ? flash with { SpareSets = sets } : flash)],
        };
    }

    /// <summary>A panel no larger than the framings need; a mass as weighed is that of the old one and goes.</summary>
    /// <param name="Width">Across the camera's view.</param>
    /// <param name="Depth">Along the camera's view.</param>
    public sealed record SmallerPanel(Length Width, Length Depth) : LighterChange
    {
        /// <inheritdoc/>
        public override KitSpec Of(KitSpec kit) => kit with
        {
            Panel = kit.Panel with { Width = Width, Depth = Depth, Mass = null },
            Frame = kit.Frame with { Mass = null },
        };
    }

    /// <summary>A lighter pipe of the parts library, with fittings that take it.</summary>
    /// <param name="Stocked">Pipe and fittings.</param>
    public sealed record LighterPipe(StockedPipe Stocked) : LighterChange
    {
        /// <inheritdoc/>
        public override KitSpec Of(KitSpec kit) => new StructuralChange.OtherPipe(Stocked).Of(kit);
    }

    /// <summary>A thinner sheet, as shops carry it.</summary>
    /// <param name="Thickness">Its thickness.</param>
    public sealed record ThinnerSheet(Length Thickness) : LighterChange
    {
        /// <inheritdoc/>
        public override KitSpec Of(KitSpec kit) => new StructuralChange.OtherSheet(Thickness).Of(kit);
    }
}
