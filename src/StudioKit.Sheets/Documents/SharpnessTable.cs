using StudioKit.Physics.Optics;
using StudioKit.Planning;
using StudioKit.Planning.Framing;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Documents;

/// <summary>What the framings of one set-up resolve and what smears them, side by side; all lengths at the subject.</summary>
internal static class SharpnessTable
{
    public static Table Of(IReadOnlyList<ExposurePlan> setUp) => new(
        [
            new Column("Sharpness at the subject"), new Column($"Depth of field, {FigureFormat.FigureUnit}", ColumnKind.Decimal), new Column("Two pixels, µm", ColumnKind.Decimal),
            new Column("Two points part (Rayleigh), µm", ColumnKind.Decimal), new Column("Airy disc, µm", ColumnKind.Decimal),
            new Column("Smear by hand, subject, flash; in all, pixels", ColumnKind.Right), new Column("Passes for sharp, pixels", ColumnKind.Decimal),
            new Column("Finest detail, µm", ColumnKind.Decimal),
        ],
        [.. setUp.Select(exposure => Row(exposure.Framing.Name, exposure.Sharpness))],
        TypeScale.Tables);

    private static TableRow Row(string framing, SharpnessPlan sharpness) => new(
    [
        framing,
        FigureFormat.RoughFigure(sharpness.DepthOfField),
        MeasureFormat.TwoDigits(sharpness.AtSubject(2).Micrometers),
        MeasureFormat.TwoDigits(sharpness.RayleighSeparation.Micrometers),
        MeasureFormat.TwoDigits(sharpness.AiryDiscAtSubject.Micrometers),
        $"{Counted(sharpness.Smear.Hand)}, {Counted(sharpness.Smear.Subject)}, {Counted(sharpness.Smear.Flash)}; {MeasureFormat.TwoDigits(sharpness.SmearPixels)}",
        MeasureFormat.TwoDigits(sharpness.SmearLimit),
        MeasureFormat.TwoDigits(sharpness.FinestDetail.Micrometers),
    ]);

    // By its share of the light, as it counts in the whole picture.
    private static string Counted(MotionBlurPart part) => MeasureFormat.TwoDigits(part.Counted);
}
