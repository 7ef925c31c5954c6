using StudioKit.Planning;
using StudioKit.Planning.Cautions;
using StudioKit.Sheets.Documents.BuildSections;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Documents;

/// <summary>Everything a builder takes to the shop and the bench: what to buy, cut, join and check.</summary>
internal static class BuildSheet
{
    public static SheetDocument Make(Plan plan, FramePlan frame, Stamp stamp, PageSetup page)
    {
        var workshop = frame.Workshop;
        return new SheetDocument(
            "Build sheet",
            stamp,
            page,
            [
                new Heading($"Build sheet: {plan.Kit.Name}"),
                new Paragraph(Summary(plan, frame)),
                .. FrameProblems.Of(frame),
                .. FailingChecks(plan),
                .. ShoppingSection.Of(workshop),
                .. HardwareSection.Of(workshop),
                .. TakeOffSection.Of(frame),
                .. CuttingSection.Pieces(frame),
                .. UprightBlocks.Pieces(workshop.Uprights),
                .. CuttingSection.Bars(plan, workshop),
                .. SheetGoodsSection.Of(workshop),
                .. ViewsSection.Of(plan, frame),
                .. FlashesBelowSection.Supports(frame),
                .. FlashesBelowSection.Places(plan),
                .. HoldersSection.Of(frame),
                .. AssemblySection.Of(plan, frame),
                .. UprightBlocks.Of(workshop.Uprights),
            ]);
    }

    /// <summary>The same of upright sheets where no frame is built.</summary>
    public static SheetDocument WithoutFrame(Plan plan, Workshop workshop, Stamp stamp, PageSetup page)
    {
        return new SheetDocument(
            "Build sheet",
            stamp,
            page,
            [
                new Heading($"Build sheet: {plan.Kit.Name}"),
                new Paragraph($"{workshop.PipeName}, {workshop.FittingsName}. Left, right, front and back are as the camera sees them.{Batch(workshop)}"),
                .. FailingChecks(plan),
                .. ShoppingSection.Of(workshop),
                .. HardwareSection.Of(workshop),
                .. UprightBlocks.Pieces(workshop.Uprights),
                .. CuttingSection.Bars(plan, workshop),
                .. SheetGoodsSection.Of(workshop),
                .. CautionBlocks.Of(plan, CautionSheet.Build),
                .. UprightBlocks.Of(workshop.Uprights),
            ]);
    }

    private static string Summary(Plan plan, FramePlan frame)
    {
        return $"{frame.PipeName}, {frame.FittingsName}. The panel's underside stands {CutFormat.CutLength(frame.Geometry.PanelHeight)} over level ground. "
            + $"Pipe and fittings weigh {MeasureFormat.Mass(frame.Mass)}, all that stands {MeasureFormat.Mass(frame.StandingMass)}."
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
}
