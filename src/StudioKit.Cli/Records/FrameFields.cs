using StudioKit.Field.Log;
using StudioKit.Kits;
using UnitsNet;

namespace StudioKit.Cli.Records;

/// <summary>The fields of a frame as options; the rest is read from its file.</summary>
internal static class FrameFields
{
    public static RecordFields<FieldFrame> Create(CommandHost host) => new RecordFields<FieldFrame>(host)
        .Quantity<Length>(
            "--pixel-size", "Size of a pixel at the subject, e.g. \"5.6 um\"; from the picture's sidecar where left out.", QuantityText.TryLength,
            (frame, value) => frame with { MicrometresPerPixel = Rounded(value?.Micrometers) })
        .Words("--caption", "Caption, e.g. \"from above\".", (frame, value) => frame with { Caption = value })
        .Words("--creator", "Photographer, e.g. \"A. Sedge\".", (frame, value) => frame with { Creator = value })
        .Words("--licence", "Licence, best as an address, e.g. https://creativecommons.org/licenses/by/4.0/.", (frame, value) => frame with { Licence = value })
        .Words("--framing", "Framing of the kit, by its name in the plan, e.g. \"55 mm at 1:1\".", (frame, value) => frame with { Framing = value })
        .Words("--set-up", "Set-up of the kit, e.g. white.", (frame, value) => frame with { SetUp = value });

    /// <summary>With what a picture's file tells when it is logged.</summary>
    public static RecordFields<FieldFrame> ForEdit(CommandHost host) => Create(host)
        .Date("--taken", "When it was taken, e.g. 2026-05-09T14:06.", (frame, value) => frame with { Taken = value }, frame => frame with { Taken = null });

    // 5 um is no 5.000000000000001, which a conversion through metres makes of it; a femtometre is none of a picture's concern.
    private static double? Rounded(double? micrometres) => micrometres is { } value ? Math.Round(value, 9) : null;
}
