using StudioKit.Kits.Covers;
using StudioKit.Kits.Lighting;
using StudioKit.Physics.Light.Covers;
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

    /// <summary>A cover, without water.</summary>
    public static MassStatement Of(CoverSpec cover) => cover.Mass is { } weighed
        ? new MassStatement(weighed, MassOrigin.Weighed)
        : new MassStatement(CoverWalls.MassOf(cover.Case, cover.Material), MassOrigin.FromGeometry);

    /// <summary>A cover as it stands on the sheet, with its water.</summary>
    public static Mass Standing(CoverSpec cover) =>
        Of(cover).Mass + Mass.FromKilograms(1000 * cover.Width.Meters * cover.Depth.Meters * cover.WaterDepth.Meters);

    /// <summary>As given, else what is usual.</summary>
    public static MassStatement Of(Mass? given, Mass usual) =>
        new(given ?? usual, given is null ? MassOrigin.Assumed : MassOrigin.Weighed);

    /// <summary>Cells of a flash's kind.</summary>
    public static Mass Cells(FlashSpec flash, int count) => (flash.Cell?.Mass ?? Mass.Zero) * count;

    /// <summary>A flash with the set of cells that works in it.</summary>
    public static Mass FlashWithCells(FlashSpec flash) => Of(flash).Mass + Cells(flash, flash.CellCount);
}
