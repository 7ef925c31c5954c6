namespace StudioKit.Planning.Cutting.Reports;

/// <summary>One cut across a sheet, in the order in which to make it.</summary>
/// <param name="Across">The side it shortens: <c>width</c> or <c>height</c>.</param>
/// <param name="AtMm">Where the kept edge of the first part lies, from the sheet's squared edge [mm].</param>
/// <param name="FromMm">Where the cut starts along the other axis [mm].</param>
/// <param name="ToMm">Where it ends along the other axis [mm].</param>
public sealed record ReportedCut(string Across, double AtMm, double FromMm, double ToMm)
{
    /// <summary>Cuts of a region, outermost first.</summary>
    internal static IEnumerable<ReportedCut> Of(SheetRegion region)
    {
        if (region.Cut is not { } cut)
        {
            return [];
        }

        var (from, size, across) = cut.Direction == SheetCutDirection.AcrossWidth
            ? (region.Y, region.Height, "width")
            : (region.X, region.Width, "height");
        var own = new ReportedCut(
            across, CutReport.Millimeters(cut.Position), CutReport.Millimeters(from), CutReport.Millimeters(from + size));
        return [own, .. Of(cut.First), .. cut.Second is null ? [] : Of(cut.Second)];
    }
}
