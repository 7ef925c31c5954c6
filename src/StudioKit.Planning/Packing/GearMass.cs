using StudioKit.Kits.Lighting;
using StudioKit.Physics.Packing;
using UnitsNet;

namespace StudioKit.Planning.Packing;

/// <summary>What flashes and modifiers weigh, in the bag and on the frame.</summary>
internal static class GearMass
{
    /// <summary>A flash without cells.</summary>
    public static MassStatement Of(FlashSpec flash) => Of(flash.Mass, UsualMass.Flash);

    /// <summary>A modifier.</summary>
    public static MassStatement Of(ModifierSpec modifier) => Of(modifier.Mass, UsualMass.Modifier);

    /// <summary>As given, else what is usual.</summary>
    public static MassStatement Of(Mass? given, Mass usual) =>
        new(given ?? usual, given is null ? MassOrigin.Assumed : MassOrigin.Weighed);

    /// <summary>Cells of a flash's kind.</summary>
    public static Mass Cells(FlashSpec flash, int count) => (flash.Cell?.Mass ?? Mass.Zero) * count;

    /// <summary>A flash with the set of cells that works in it.</summary>
    public static Mass FlashWithCells(FlashSpec flash) => Of(flash).Mass + Cells(flash, flash.CellCount);
}
