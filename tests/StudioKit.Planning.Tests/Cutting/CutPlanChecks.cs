using StudioKit.Planning.Cutting;
using UnitsNet;

namespace StudioKit.Planning.Tests.Cutting;

/// <summary>What must hold for every cut plan, worked out from the request alone.</summary>
internal static class CutPlanChecks
{
    // Places are whole tenths of a millimetre; a double holds them to far less than this.
    private const double Exactly = 1e-6;

    public static bool Holds(BarCutRequest request, BarCutPlan plan) =>
        EveryPieceIsThereOnce(request, plan)
        && plan.Bars.All(bar => MeasuresClose(request, bar))
        && StockSuffices(request, plan)
        && (!plan.Complete || plan.Proof.LowerBound <= plan.Proof.Value)
        && plan.TotalCost == plan.Bars.Sum(bar => request.Stock.First(stock => stock.Label == bar.StockLabel).Price);

    public static bool Holds(SheetCutRequest request, SheetCutPlan plan) =>
        EveryPieceIsThereOnce(request, plan)
        && plan.Sheets.All(sheet => CutsFromEdgeToEdge(request, sheet) && PanelsStayApart(request, sheet))
        && request.Stock.All(stock => stock.Count is null || plan.Sheets.Count(sheet => sheet.StockLabel == stock.Label) <= stock.Count)
        && (!plan.Complete || plan.Proof.LowerBound <= plan.Proof.Value);

    private static bool EveryPieceIsThereOnce(BarCutRequest request, BarCutPlan plan)
    {
        var wanted = request.Pieces.SelectMany(piece => Enumerable.Repeat(piece.Label, piece.Count));
        var cut = plan.Bars.SelectMany(bar => bar.Marks).Select(mark => mark.Label);
        var uncut = plan.Uncut.SelectMany(piece => Enumerable.Repeat(piece.Label, piece.Count));
        return wanted.Order(StringComparer.Ordinal).SequenceEqual(cut.Concat(uncut).Order(StringComparer.Ordinal));
    }

    private static bool EveryPieceIsThereOnce(SheetCutRequest request, SheetCutPlan plan)
    {
        var wanted = request.Pieces.SelectMany(piece => Enumerable.Repeat(piece.Label, piece.Count));
        var cut = plan.Sheets.SelectMany(sheet => sheet.Panels).Select(panel => panel.Label);
        var uncut = plan.Uncut.SelectMany(piece => Enumerable.Repeat(piece.Label, piece.Count));
        return wanted.Order(StringComparer.Ordinal).SequenceEqual(cut.Concat(uncut).Order(StringComparer.Ordinal));
    }

    private static bool MeasuresClose(BarCutRequest request, CutBar bar)
    {
        var usable = (bar.StockLength - request.Trim).Millimeters;
        var kerf = request.Kerf.Millimeters;
        var at = 0.0;
        foreach (var mark in bar.Marks)
        {
            var asAsked = request.Pieces.First(piece => piece.Label == mark.Label).Length.Millimeters;
            if (!Same(mark.Start.Millimeters, at) || !Same(mark.End.Millimeters, at + asAsked))
            {
                return false;
            }

            at = mark.End.Millimeters + kerf;
        }

        var end = bar.Marks[^1].End.Millimeters;
        var cuts = bar.Marks.Count - (Same(end, usable) ? 1 : 0) + (request.Trim > Length.Zero ? 1 : 0);
        return end <= usable + Exactly
            && Same(bar.Offcut.Millimeters, Math.Max(0, usable - at))
            && bar.SawCuts == cuts;
    }

    private static bool StockSuffices(BarCutRequest request, BarCutPlan plan) => request.Stock.All(stock =>
        stock.Count is null || plan.Bars.Count(bar => bar.StockLabel == stock.Label) <= stock.Count);

    /// <summary>Walks the tree: both parts and the kerf between them fill their region, and every leaf is in its place.</summary>
    private static bool CutsFromEdgeToEdge(SheetCutRequest request, CutSheet sheet)
    {
        var squared = sheet.Squared;
        return Same(squared.Width.Millimeters, (sheet.StockWidth - request.Trim).Millimeters)
            && Same(squared.Height.Millimeters, (sheet.StockHeight - request.Trim).Millimeters)
            && Closes(request.Kerf.Millimeters, squared);
    }

    private static bool Closes(double kerf, SheetRegion region)
    {
        if (region.Piece is { } piece)
        {
            return Same(piece.X.Millimeters, region.X.Millimeters) && Same(piece.Y.Millimeters, region.Y.Millimeters)
                && Same(piece.Width.Millimeters, region.Width.Millimeters) && Same(piece.Height.Millimeters, region.Height.Millimeters);
        }

        return region.Cut is not { } cut || (cut.Direction == SheetCutDirection.AcrossWidth
            ? Splits(kerf, cut, Span(region, true), part => Span(part, true), Span(region, false), part => Span(part, false))
            : Splits(kerf, cut, Span(region, false), part => Span(part, false), Span(region, true), part => Span(part, true)));
    }

    private static bool Splits(
        double kerf,
        SheetCut cut,
        (double From, double To) along,
        Func<SheetRegion, (double From, double To)> alongOf,
        (double From, double To) across,
        Func<SheetRegion, (double From, double To)> acrossOf)
    {
        var first = alongOf(cut.First);
        return Same(first.From, along.From) && Same(first.To, cut.Position.Millimeters) && first.To <= along.To + Exactly
            && Same(acrossOf(cut.First).From, across.From) && Same(acrossOf(cut.First).To, across.To)
            && Closes(kerf, cut.First)
            && (cut.Second is not { } second
                ? first.To + kerf >= along.To - Exactly
                : Same(alongOf(second).From, first.To + kerf) && Same(alongOf(second).To, along.To)
                    && Same(acrossOf(second).From, across.From) && Same(acrossOf(second).To, across.To)
                    && Closes(kerf, second));
    }

    private static (double From, double To) Span(SheetRegion region, bool alongX) => alongX
        ? (region.X.Millimeters, (region.X + region.Width).Millimeters)
        : (region.Y.Millimeters, (region.Y + region.Height).Millimeters);

    /// <summary>An independent look at the places alone: inside the sheet, a kerf apart, turned only where allowed.</summary>
    private static bool PanelsStayApart(SheetCutRequest request, CutSheet sheet)
    {
        var kerf = request.Kerf.Millimeters;
        return sheet.Panels.All(panel => AsAsked(request, panel)
            && (panel.X + panel.Width).Millimeters <= (sheet.StockWidth - request.Trim).Millimeters + Exactly
            && (panel.Y + panel.Height).Millimeters <= (sheet.StockHeight - request.Trim).Millimeters + Exactly
            && sheet.Panels.All(other => ReferenceEquals(panel, other) || Apart(panel, other, kerf)));
    }

    private static bool AsAsked(SheetCutRequest request, PlacedPanel panel)
    {
        var asked = request.Pieces.First(piece => piece.Label == panel.Label);
        var (width, height) = panel.Turned ? (panel.Height, panel.Width) : (panel.Width, panel.Height);
        return (asked.MayTurn || !panel.Turned)
            && Same(width.Millimeters, asked.Width.Millimeters) && Same(height.Millimeters, asked.Height.Millimeters);
    }

    private static bool Apart(PlacedPanel a, PlacedPanel b, double kerf) =>
        b.X.Millimeters >= (a.X + a.Width).Millimeters + kerf - Exactly
        || a.X.Millimeters >= (b.X + b.Width).Millimeters + kerf - Exactly
        || b.Y.Millimeters >= (a.Y + a.Height).Millimeters + kerf - Exactly
        || a.Y.Millimeters >= (b.Y + b.Height).Millimeters + kerf - Exactly;

    private static bool Same(double a, double b) => Math.Abs(a - b) < Exactly;
}
