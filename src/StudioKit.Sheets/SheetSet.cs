using StudioKit.Planning;
using StudioKit.Sheets.Documents;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Layout;
using StudioKit.Sheets.Pdf;
using StudioKit.Sheets.Svg;

namespace StudioKit.Sheets;

/// <summary>All sheets of a plan.</summary>
public static class SheetSet
{
    /// <summary>Makes every sheet and drawing that the plan has something to say on.</summary>
    /// <param name="plan">The plan; all numbers are read from it.</param>
    /// <param name="options">Paper, card sizes and the date.</param>
    /// <returns>The files: PDF sheets first, then each drawing as SVG. The same plan and options give the same bytes.</returns>
    public static IReadOnlyList<SheetFile> Write(Plan plan, SheetOptions options)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(options);

        var stamp = new Stamp(plan.Kit.Name, plan.ContentHash, options.Date);
        var page = new PageSetup(options.Paper);
        List<SheetFile> files = [Pdf("plan-report.pdf", Paginator.Lay(PlanReport.Make(plan, stamp, page)))];
        files.AddRange(plan.Exposures.Count == 0
            ? []
            : options.CardFormats.Select(format => Pdf($"cards-{format.Name}.pdf", ExposureCards.Lay(plan, format, options.Paper, stamp))));
        if (plan.Frame is { } frame)
        {
            files.Add(Pdf("cut-list.pdf", Paginator.Lay(CutListSheet.Make(plan, frame, stamp, page))));
            files.AddRange(CutDrawings.Of(plan, frame).Select(named => Svg(named.Name, named.Drawing)));
        }

        files.Insert(files.FindLastIndex(file => file.Name.EndsWith(".pdf", StringComparison.Ordinal)) + 1, Pdf("pack-list.pdf", Paginator.Lay(PackListSheet.Make(plan, stamp, page))));
        return files;
    }

    private static SheetFile Pdf(string name, LaidDocument laid) => new(name, PdfWriter.Write(laid.Document), laid.Problems);

    private static SheetFile Svg(string name, Drawing drawing) => new($"{name}.svg", SvgWriter.Write(drawing), []);
}
