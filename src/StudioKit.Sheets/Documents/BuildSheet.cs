using System.Globalization;
using StudioKit.Planning;
using StudioKit.Planning.Cautions;
using StudioKit.Planning.Cutting;
using StudioKit.Planning.Studio;
using StudioKit.Sheets.Building;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Documents;

/// <summary>Everything a builder takes to the shop and the bench: what to buy, cut, join and check.</summary>
internal static class BuildSheet
{
    public static SheetDocument Make(Plan plan, FramePlan frame, Stamp stamp, PageSetup page, SheetUnits units)
    {
        var (measures, workshop) = (new Measures(units), frame.Workshop);
        return new SheetDocument(
            "Build sheet",
            stamp,
            page,
            [
                new Heading($"Build sheet: {plan.Kit.Name}"),
                new Paragraph(Summary(plan, frame, measures)),
                .. FrameProblems.Of(frame),
                .. FailingChecks(plan),
                .. Shopping(workshop),
                .. Pieces(frame, measures),
                .. UprightBlocks.Pieces(workshop.Uprights),
                .. Bars(workshop),
                .. Sheets(workshop, measures),
                .. Views(plan, frame, measures),
                .. FlashSupports(frame, measures),
                .. FlashPlaces(plan),
                .. Holders(frame, measures),
                .. Joints(frame, measures),
                .. Order(plan, frame),
                .. UprightBlocks.Of(workshop.Uprights, measures),
                .. CautionBlocks.Of(plan, CautionSheet.Build),
                .. Bearing(plan),
                .. Templates(plan, frame, measures, page),
            ]);
    }

    /// <summary>The same of upright sheets where no frame is built.</summary>
    public static SheetDocument WithoutFrame(Plan plan, Workshop workshop, Stamp stamp, PageSetup page, SheetUnits units)
    {
        var measures = new Measures(units);
        return new SheetDocument(
            "Build sheet",
            stamp,
            page,
            [
                new Heading($"Build sheet: {plan.Kit.Name}"),
                new Paragraph($"{workshop.PipeName}, {workshop.FittingsName}. Left, right, front and back are as the camera sees them.{Batch(workshop)}"),
                .. FailingChecks(plan),
                .. Shopping(workshop),
                .. UprightBlocks.Pieces(workshop.Uprights),
                new Caution(UsualCautions.SawingPipe),
                .. Bars(workshop),
                .. Sheets(workshop, measures),
                .. UprightBlocks.Of(workshop.Uprights, measures),
                .. CautionBlocks.Of(plan, CautionSheet.Build),
                .. Bearing(plan),
            ]);
    }

    private static string Summary(Plan plan, FramePlan frame, Measures measures)
    {
        return $"{frame.PipeName}, {frame.FittingsName}. The panel's underside stands {measures.Of(frame.Geometry.PanelHeight)} over level ground. "
            + $"Pipe and fittings weigh {PlanFormat.Mass(frame.Mass)}, all that stands {PlanFormat.Mass(frame.StandingMass)}."
            + (frame.Geometry.Members.Count > 0 ? " Left, right, front and back are as the camera sees them." : "") + Batch(frame.Workshop);
    }

    private static string Batch(Workshop workshop) =>
        workshop.Studios == 1 ? "" : FormattableString.Invariant($" Shopping list and cuts are for {workshop.Studios} studios, everything else for one.");

    private static IEnumerable<Block> FailingChecks(Plan plan)
    {
        var failing = plan.Checks.Where(check => !check.Passed).ToList();
        if (failing.Count > 0)
        {
            yield return new Caution(string.Join(' ', failing.Select(check => $"{CheckText.Name(check)}: {CheckText.Shortfall(check)}.")), "Checks that fail: mend them before you buy");
        }
    }

    // One flash is said by the order of assembly and the drawings.
    private static IEnumerable<Block> FlashSupports(FramePlan frame, Measures measures)
    {
        if (frame.LowerFlashes.Count < 2)
        {
            yield break;
        }

        yield return new Heading("What holds the flashes below", 2);
        yield return new Table(
            [
                new Column("Flash"), new Column("Set-ups"), new Column("Held by"), new Column("Below the panel", ColumnKind.Right),
                new Column("From the left", ColumnKind.Right), new Column("From the front", ColumnKind.Right),
            ],
            [.. frame.LowerFlashes.Select(flash => new TableRow(
            [
                flash.Flash, string.Join(", ", flash.SetUps), HeldBy(flash), measures.Of(flash.BelowPanel), measures.Of(flash.FromLeft), measures.Of(flash.FromFront),
            ]))]);
    }

    private static string HeldBy(FlashBelow flash) => flash.Support switch
    {
        FlashSupport.Cradle => $"its cradle, {flash.CradleJoint}",
        FlashSupport.SharedCradle => $"cradle {flash.CradleJoint}, the same place as another",
        FlashSupport.Ground => "the ground",
        _ => $"a stand of its own: {(flash.Fault is { } fault ? CradleText.Clause(fault) : "")}",
    };

    private static IEnumerable<Block> Holders(FramePlan frame, Measures measures)
    {
        if (frame.BuiltHolders.Count == 0)
        {
            yield break;
        }

        yield return new Heading("Holders of the lights", 2);
        foreach (var holder in frame.BuiltHolders)
        {
            yield return new KeepTogether(new Stack(
                [
                    new DrawingBlock(HolderDrawing.Of(holder, frame.PipeDiameter, measures), MaxHeight: 110, Caption: $"Holder: {holder.Holder}, cut from the frame's pipe; hatched: its flash"),
                    new ItemList(HolderText.Steps(holder), ItemMarker.Number),
                ],
                1));
        }
    }

    private static IEnumerable<Block> FlashPlaces(Plan plan) => plan.PanelLights
        .Where(light => light.Flashes.Count > 0)
        .SelectMany(light =>
        {
            var drawing = FlashPlaceDrawing.Of(light);
            return new Block[] { new Heading($"Flash below: {light.SetUp}", 2), new DrawingBlock(drawing, Caption: drawing.Title) };
        });

    private static IEnumerable<Block> Shopping(Workshop workshop)
    {
        yield return new Heading("Shopping list", 2);
        yield return new Table(
            [
                new Column(" ", ColumnKind.TickBox), new Column("Item"), new Column("Count", ColumnKind.Right),
                new Column($"Each, {workshop.Currency}", ColumnKind.Decimal), new Column($"Together, {workshop.Currency}", ColumnKind.Decimal),
            ],
            [
                .. workshop.Shopping.Select(line => new TableRow(["tick", line.Item, Text(line.Count), Money(line.PriceEach), Money(line.Total)])),
                new TableRow(workshop.TotalCost is { } total ? ["", "Sum", "", "", Money(total)] : ["", "No sum: some prices are missing.", "", "", ""], Total: true),
            ]);
        yield return new Paragraph("Tools: a fine saw or pipe cutter, a file for burrs, a steel rule, a pencil, a drill for the caps of the feet, a spirit level. Take one fitting of each kind home first and measure its take-off: makers differ.");
    }

    private static IEnumerable<Block> Pieces(FramePlan frame, Measures measures)
    {
        yield return new Heading("Pieces of pipe, for one studio", 2);
        var inches = measures.Units == SheetUnits.Both && frame.InchPieces.Count == frame.Pieces.Count;
        yield return new Table(
            [
                new Column("Letter"), new Column("Count", ColumnKind.Right), new Column("Cut to, mm", ColumnKind.Decimal),
                .. inches ? [new Column("or, with an inch tape"), new Column("each gap then changes by, mm", ColumnKind.Decimal)] : Array.Empty<Column>(),
                new Column("Labels to write on them"),
            ],
            [.. frame.Pieces.Select((piece, i) => new TableRow(
            [
                piece.Group, Text(piece.Count), Number(piece.Rounded.Millimeters),
                .. inches ? [Measures.Inches(frame.InchPieces[i].Rounded.Millimeters), Number(frame.InchPieces[i].TakenUpPerEnd.Millimeters, "0.00")] : Array.Empty<string>(),
                string.Join(", ", piece.Members),
            ]))]);
        yield return new Caution(UsualCautions.SawingPipe);
    }

    private static IEnumerable<Block> Bars(Workshop workshop)
    {
        yield return new Heading("Stock bars and where to cut them", 2);
        yield return new Paragraph($"Measures run from the squared end to the mark, in millimetres; the saw's kerf lies beyond it. {Proof(workshop.PipeCuts.Proof)}");
        foreach (var pattern in workshop.PipeCuts.Bars.Count == 0 ? [] : BarCutDrawing.EachPattern(workshop.PipeCuts))
        {
            yield return new DrawingBlock(pattern, Caption: "");
        }
    }

    private static IEnumerable<Block> Sheets(Workshop workshop, Measures measures)
    {
        if (workshop.SheetParts.Count == 0)
        {
            yield break;
        }

        yield return new Heading(workshop.SheetParts.Any(part => part.Kind == SheetPartKind.Panel) ? "Panel and sheet goods, for one studio" : "Sheet goods, for one studio", 2);
        yield return new Table(
            [new Column("Part"), new Column("From"), new Column("Size"), new Column("Count", ColumnKind.Right), new Column("Direction")],
            [.. workshop.SheetParts.Select(part => new TableRow(
                [part.Purpose, part.Material, $"{measures.Of(part.Width)} × {measures.Of(part.Height)}", Text(part.Count), part.KeepsDirection ? "as it lies" : "may turn"]))]);
        yield return new Paragraph($"Leave the film on until the sheet is clipped on, and keep the same side up. {Proof(workshop.SheetCuts.Proof)}");
        yield return new Caution(UsualCautions.CuttingAcrylic);
        foreach (var sheet in workshop.SheetCuts.Sheets)
        {
            yield return new DrawingBlock(SheetCutDrawing.Of(sheet), MaxHeight: 90);
        }
    }

    private static IEnumerable<Block> Views(Plan plan, FramePlan frame, Measures measures)
    {
        if (frame.Geometry.Members.Count == 0)
        {
            yield break;
        }

        yield return new PageBreak();
        yield return new Heading("Views", 2);
        yield return new Paragraph("Seen from above, grey strips on the rails are what the panel rests on, and dots are its clips.");
        foreach (var view in BuildDrawings.Views(plan, frame, measures))
        {
            yield return new DrawingBlock(view.Drawing, MaxHeight: 200, Caption: view.Drawing.Title);
        }

        yield return new PageBreak();
        yield return new Heading("Every part in its place", 2);
        yield return new Paragraph("Grey fittings are pinned. A letter stands for one length of pipe; J marks fittings.");
        yield return new DrawingBlock(ExplodedDrawing.Of(frame), MaxHeight: 240, Caption: "Exploded view, not to scale; labels are those of the lists");
    }

    private static IEnumerable<Block> Joints(FramePlan frame, Measures measures)
    {
        if (frame.Geometry.Members.Count == 0)
        {
            yield break;
        }

        yield return new PageBreak();
        yield return new Heading("Joints", 2);
        yield return new Paragraph("Draw a line round each pipe end at the insertion mark; push home until the fitting's edge meets it. All joints are dry: solvent cement is not needed, and would keep the frame from packing.");
        var joints = frame.Fittings.Select(fitting => (Fitting: fitting, Labels: string.Join(", ", frame.Geometry.Joints.Where(joint => joint.Kind == fitting.Kind).Select(joint => joint.Label)))).ToList();
        foreach (var pair in joints.Chunk(2))
        {
            yield return new SideBySide([.. pair.Select(joint => ((Block)new Stack(
            [
                new Paragraph($"{joint.Fitting.Name}: {joint.Labels}", 9),
                new DrawingBlock(JointDrawing.Of(frame, joint.Fitting, measures), MaxHeight: 90, Caption: joint.Fitting.Kind == Physics.Structure.Frames.FittingKind.Corner ? $"{joint.Fitting.Name}: the third pipe comes towards you" : $"{joint.Fitting.Name}, pipes pushed in"),
            ]), 1.0))]);
        }
    }

    private static IEnumerable<Block> Order(Plan plan, FramePlan frame)
    {
        if (frame.Assembly.Count == 0)
        {
            yield break;
        }

        yield return new PageBreak();
        yield return new Heading("Putting it up", 2);
        yield return new ItemList(frame.Assembly, ItemMarker.Number);
        yield return new Caution(
            $"This studio was checked for {(frame.Wind is { } wind ? LoadText.Of(wind) : "no wind")} at {plan.Kit.Site.Name}. Take it down when the wind rises above that or a storm is near; never stand under a swept sheet in wind. {UsualCautions.LocalRules}",
            "Wind");
        yield return new Caution(UsualCautions.Flash, "Flash");
        yield return new Heading("Packing down", 2);
        yield return new ItemList(frame.PackingDown, ItemMarker.Number);
    }

    private static IEnumerable<Block> Bearing(Plan plan)
    {
        var checks = plan.Checks.Where(check => check.Loads.Count > 0).ToList();
        if (checks.Count == 0)
        {
            yield break;
        }

        yield return new Heading("What it bears, and what was assumed", 2);
        yield return new Table(
            [
                new Column("Check"), new Column("Taken for given"), new Column("Asked", ColumnKind.Right), new Column("Borne", ColumnKind.Right),
                new Column("Ratio", ColumnKind.Decimal), new Column("Result"),
            ],
            [.. checks.Select(check => new TableRow(
            [
                CheckText.Name(check), LoadText.Of(check.Loads), CheckText.Demand(check), CheckText.Capacity(check),
                check.Ratio is { } ratio ? Number(ratio, "0.00") : "", check.Passed ? "holds" : "FAILS",
            ]))],
            TypeScale.Small);
        if ((plan.Frame?.Wind ?? (plan.Workshop is { Uprights: [var first, ..] } ? first.Wind : null)) is { } wind)
        {
            yield return new Paragraph($"Wind: {LoadText.Of(wind)}. Heavier elbows, boxes, sun or wind than these go into the kit, and the plan is made again.");
        }
    }

    private static IEnumerable<Block> Templates(Plan plan, FramePlan frame, Measures measures, PageSetup page)
    {
        if (frame.Geometry.Members.Count == 0)
        {
            yield break;
        }

        yield return new PageBreak();
        yield return new Heading("Templates at full size", 2);
        yield return new DrawingBlock(Building.Templates.CheckSquare, TrueScale: true, MaxHeight: 120);
        foreach (var template in BuildDrawings.SmallTemplates(plan, frame))
        {
            yield return new DrawingBlock(template.Drawing, TrueScale: true, MaxHeight: 240);
        }

        foreach (var template in BuildDrawings.LargeTemplates(plan, frame, measures))
        {
            foreach (var tile in TemplateTiles.Of(template.Drawing, page.Body))
            {
                yield return new PageBreak();
                yield return new Heading(template.Drawing.Title, 3);
                yield return tile;
            }
        }

        yield return new Paragraph("Lay neighbouring parts on each other so that their ringed crosses meet, and tape them. Bend acrylic cold only, over the full width, slowly, with goggles on: a sheet that is forced below its least radius shatters.");
    }

    private static string Proof(CutProof proof) => proof switch
    {
        { ProvenOptimal: true } => $"Planned by {proof.Method}: no plan can be better.",
        { Gap: { } gap } => $"Planned by {proof.Method}: at most {PlanFormat.Percent((double)gap)} above the best plan.",
        _ => $"Planned by {proof.Method}: not every piece can be cut.",
    };

    private static string Text(int count) => count.ToString(CultureInfo.InvariantCulture);

    private static string Number(double value, string format = "0.#") => value.ToString(format, CultureInfo.InvariantCulture);

    private static string Money(decimal? price) => price?.ToString("0.00", CultureInfo.InvariantCulture) ?? "?";
}
