using System.Globalization;
using StudioKit.Kits;
using StudioKit.Physics;
using UnitsNet;

namespace StudioKit.Planning.Changes;

/// <summary>How changes against structural checks are written into a kit's text.</summary>
internal static class StructuralSettings
{
    public static ValueList<KitSetting> Of(StructuralChange change, KitSpec kit) => change switch
    {
        StructuralChange.AllEdgesRest => [KitSettings.Of("frame.panel-rests", "all-edges")],
        StructuralChange.OtherSheet sheet => [KitSettings.Of("panel.thickness", KitSettings.Text(sheet.Thickness)), KitSettings.Gone("panel.mass")],
        StructuralChange.OtherSweep sweep => [KitSettings.Of("panel.sweep-radius", KitSettings.Text(sweep.Radius))],
        StructuralChange.EdgeRoom edge => [KitSettings.Of("frame.edge-clearance", Up(edge.Room))],
        StructuralChange.OtherPipe pipe => Pipe(pipe, kit),
        StructuralChange.Stretched => [KitSettings.Of("frame.stretchers", "always")],
        StructuralChange.WithGuys guys => [KitSettings.Of("frame.pegs.guys", "yes"), KitSettings.Of("frame.pegs.count", KitSettings.Text(guys.Pegs))],
        StructuralChange.Pegged pegs => [KitSettings.Of("frame.pegs.count", KitSettings.Text(pegs.Pegs))],
        StructuralChange.Weighted weighted => [KitSettings.Of("frame.ballast", Up(weighted.Hung))],
        StructuralChange.Shaded => [KitSettings.Of("site.sun-warming", "0 K")],
        StructuralChange.LighterElbow elbow => [KitSettings.Of("panel.elbow-load", string.Create(CultureInfo.InvariantCulture, $"{Math.Floor(elbow.Push.Newtons):0} N"))],
        _ => throw new ArgumentOutOfRangeException(nameof(change), change, "Not a change that a kit's text can hold."),
    };

    // What is written is what is needed or more, never less by rounding.
    private static string Up(Length room) => string.Create(CultureInfo.InvariantCulture, $"{Math.Ceiling((room.Millimeters * 10) - 1e-6) / 10:0.#} mm");

    private static string Up(Mass ballast) => string.Create(CultureInfo.InvariantCulture, $"{Math.Ceiling((ballast.Kilograms * 10) - 1e-6) / 10:0.#} kg");

    // A part's name stands for all that was said of the old pipe; fittings of the same bore stay as they are.
    private static ValueList<KitSetting> Pipe(StructuralChange.OtherPipe pipe, KitSpec kit) =>
    [
        KitSettings.Of("frame.pipe", pipe.Stocked.Part),
        .. pipe.Of(kit).Frame.Fittings == kit.Frame.Fittings ? [] : new[] { KitSettings.Of("frame.fittings", pipe.Stocked.FittingsPart) },
        KitSettings.Gone("frame.mass"),
    ];
}
