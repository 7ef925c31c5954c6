using System.Text;
using StudioKit.Kits;
using StudioKit.Planning;
using StudioKit.Planning.Packing;
using StudioKit.Sheets.Documents;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Layout;
using StudioKit.Sheets.Pdf;
using StudioKit.Sheets.Plots;
using StudioKit.Sheets.Svg;

namespace StudioKit.Sheets;

/// <summary>All sheets of a plan.</summary>
public static class SheetSet
{
    /// <summary>Makes every sheet and drawing that the plan has something to say on.</summary>
    /// <param name="plan">The plan; all numbers are read from it.</param>
    /// <param name="options">Paper, card templates and the date.</param>
    /// <returns>The files: PDF sheets first, then each drawing as SVG, then tables as CSV. The same plan and options give the same bytes.</returns>
    public static IReadOnlyList<SheetFile> Write(Plan plan, SheetOptions options) => [.. Groups(plan, options).SelectMany(group => group.Write())];

    /// <summary>The same, group by group, for whoever wants some of them or one after the other.</summary>
    /// <param name="plan">The plan; all numbers are read from it.</param>
    /// <param name="options">Paper, card templates and the date.</param>
    /// <returns>The groups in the order in which <see cref="Write"/> makes their files; none of them made yet.</returns>
    public static IReadOnlyList<SheetGroup> Groups(Plan plan, SheetOptions options)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(options);

        var (stamp, units) = (StampOf(plan, options), UnitsOf(plan, options));
        SheetGroup[] groups =
        [
            .. SheetChapters.Of(plan, options, stamp).Select(named =>
                new SheetGroup(named.FileName, named.Kind, () => [Pdf(named.FileName, named.Chapter.Alone(stamp))], () => Pages(named, stamp))),
            .. plan.Workshop is { } workshop ? (SheetGroup[])[Svgs("build-drawings", () => Drawings(plan, workshop, options))] : [],
            Svgs("plots", () => PlanPlots.Of(plan).Select(plot => new NamedDrawing(plot.Name, plot.Drawing))),
            .. plan.SheetLights.Any() ? (SheetGroup[])[Svgs("light-drawings", () => LightDrawings.Of(plan))] : [],
            new SheetGroup("tables", SheetGroupKind.Tables, () => Tables(plan), () => []),
        ];
        return [.. groups.Select(group => group.In(units))];
    }

    /// <summary>Binds every printed sheet into one file, behind a cover and a table of contents; of the cards, those of the first template only.</summary>
    /// <param name="plan">The plan; all numbers are read from it.</param>
    /// <param name="options">Paper, card templates and the date.</param>
    /// <returns>The field pack, then the book. The same plan and options give the same bytes.</returns>
    public static IReadOnlyList<SheetFile> WriteBook(Plan plan, SheetOptions options)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(options);

        var stamp = StampOf(plan, options);
        return UnitsOf(plan, options).Tell(IReadOnlyList<SheetFile> () =>
        {
            // The field pack says again, for one day outdoors, what other chapters say, and ends with the paper log; it stays a file of its own.
            var chapters = SheetChapters.Of(plan, options with { Cards = [.. options.Cards.Take(1)] }, stamp)
                .Where(named => named.FileName != SheetChapters.PaperLogFile).ToLookup(named => named.FileName == SheetChapters.FieldPackFile);
            return
            [
                .. chapters[true].Select(pack => Pdf(pack.FileName, pack.Chapter.Alone(stamp))),
                Pdf("field-book.pdf", FieldBook.Bind(plan, [.. chapters[false].Select(named => named.Chapter)], stamp, options.Paper)),
            ];
        });
    }

    private static IEnumerable<NamedDrawing> Drawings(Plan plan, Workshop workshop, SheetOptions options) => CutDrawings.Of(plan, workshop)
        .Concat(plan.Frame is { } frame ? BuildDrawings.Of(plan, frame) : [])
        .Concat(UprightBlocks.Drawings(workshop.Uprights));

    private static PlanUnits UnitsOf(Plan plan, SheetOptions options) => new(options.Units, WrittenLengths.Of(plan.Written));

    private static Stamp StampOf(Plan plan, SheetOptions options) => new(plan.Kit.Name, plan.ContentHash, options.Date) { Corrected = plan.Corrections?.Date };

    private static SheetFile Pdf(string name, LaidDocument laid)
    {
        var missing = new MissingLetters();
        var content = PdfWriter.Write(laid.Document, missing);
        return new SheetFile(name, content, [.. laid.Problems, .. missing.Told])
        {
            Pages = laid.Document.Pages.Count,
            BothSides = laid.Document.Sides != PrintedSides.One,
        };
    }

    private static IReadOnlyList<SheetFile> Pages(NamedChapter named, Stamp stamp) =>
        [.. named.Chapter.Alone(stamp).Document.Pages.Select((page, i) => new SheetFile(FormattableString.Invariant($"{named.FileName}-{i + 1}.svg"), SvgWriter.Write(page), []))];

    // Drawings are pictures already.
    private static SheetGroup Svgs(string name, Func<IEnumerable<NamedDrawing>> drawings)
    {
        return new SheetGroup(name, SheetGroupKind.Drawings, Files, Files);

        IReadOnlyList<SheetFile> Files() => [.. drawings().Select(named => Svg(named.Name, named.Drawing))];
    }

    private static IReadOnlyList<SheetFile> Tables(Plan plan) =>
    [
        .. plan.Workshop is { } cut ? BuildTables.Of(cut) : [],
        new SheetFile("pack-list.csv", Encoding.UTF8.GetBytes(PackTable.Csv(plan.Pack)), []),
        .. plan.LightStands.Count > 0 ? [new SheetFile("light-places.csv", Encoding.UTF8.GetBytes(StandTable.Csv(plan.LightStands)), [])] : (SheetFile[])[],
    ];

    private static SheetFile Svg(string name, Drawing drawing) => new($"{name}.svg", SvgWriter.Write(drawing), []);
}
