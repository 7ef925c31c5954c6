using StudioKit.Kits.Subjects;
using StudioKit.Planning;
using StudioKit.Planning.Cautions;
using StudioKit.Planning.Studio.Assembling;
using StudioKit.Planning.Studio.Uprights;
using StudioKit.Sheets.Cards;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Documents.Outdoors;

/// <summary>Everything that is needed outdoors on paper, beside the ring of cards: two sheets, printed on both sides.</summary>
internal static class FieldPack
{
    private const string Title = "Field pack";

    // Two sheets have four sides, and the last of them is the paper log.
    private const int MostPages = 3;

    // Where two sheets are too small even for the smallest type, first the frame's steps are said by their names alone, then the rounds stay with the session plan.
    private static readonly (bool FrameInWords, bool WithRounds)[] Grades = [(true, true), (false, true), (true, false), (false, false)];

    // Of what is read once, and of what is read with a camera in the hand.
    private static readonly (double Small, double Large)[] Sizes = [(9, 10), (8.5, 9.5), (8, 9), (7.5, 8.5), (7, 8), (TypeScale.Smallest, 7.5), (TypeScale.Smallest, TypeScale.Smallest)];

    public static Chapter Lay(Plan plan, Paper paper, Stamp stamp)
    {
        var setup = new PageSetup(paper);
        var tried = Grades.SelectMany(grade => Sizes.Select(size => (grade, size)))
            .Select(of => Paginator.Chapter(new SheetDocument(Title, stamp, setup, [.. Blocks(plan, of.size, of.grade)])));
        var flowing = tried.FirstOrDefault(Fits) ?? Paginator.Chapter(new SheetDocument(Title, stamp, setup, [.. Blocks(plan, Sizes[^1], Grades[^1])]));
        if (plan.Exposures.Count == 0)
        {
            return flowing;
        }

        var log = PaperLogSheet.Sides(plan, paper, stamp, flowing.PageCount < MostPages ? 2 : 1);
        return new Chapter(
            Title, flowing.PageCount + log.PageCount, run => [.. flowing.Finish(run), .. log.Finish(run with { First = run.First + flowing.PageCount })], flowing.Problems);
    }

    private static bool Fits(Chapter chapter) => chapter.PageCount <= MostPages;

    private static IEnumerable<Block> Blocks(Plan plan, (double Small, double Large) size, (bool FrameInWords, bool WithRounds) grade) =>
    [
        new Heading($"{Title}: {plan.Kit.Name}"),
        new Paragraph(PlanReport.Verdict(plan), size.Large, TextWeight.Bold),
        .. Light(plan, size.Small),
        new CautionList([.. Cautions(plan)], size.Small),
        new InColumns(new Stack([.. StopSigns(plan, size.Small)], 1)),
        .. WindTable.Of(plan, size.Small),
        .. Index(plan, size.Large),
        .. Steps(plan, size.Small, grade.FrameInWords),
        .. grade.WithRounds ? Rounds(plan, size) : RoundsElsewhere(plan, size.Large),
    ];

    private static IEnumerable<(string Title, string Text)> Cautions(Plan plan) =>
    [
        .. CautionBlocks.Listed(plan, CautionSheet.Session, CautionSheet.FieldBook),
        ("Animals", UsualCautions.Animals),
        ("Flashes", UsualCautions.Flash),
    ];

    // What each set-up's cards are made for; in other light their tables say what to set.
    private static IEnumerable<Block> Light(Plan plan, double size)
    {
        if (plan.Exposures.Count > 0)
        {
            yield return new Paragraph(
                $"Cards are made for this light: {string.Join("; ", plan.Exposures.DistinctBy(exposure => exposure.SetUp).Select(exposure => $"{exposure.SetUp}, {AmbientText.Of(exposure)}"))}. In other light their tables say what to set.", size);
        }
    }

    private static IEnumerable<Block> StopSigns(Plan plan, double size)
    {
        foreach (var card in plan.Handling)
        {
            var signs = card.Lines.Where(line => line.Topic == HandlingTopic.StopSigns).Select(DisinfectantText.Of).ToList();
            var limits = card.Subjects.Where(subject => subject.HoldLimit is not null).Select(subject => $"{subject.Name}: held at most {MeasureFormat.Minutes(subject.HoldLimit!.Value)}.").ToList();
            if (signs.Count + limits.Count > 0)
            {
                yield return new KeepTogether(new Stack([new Paragraph($"Stop at once, {card.Name}:", size, TextWeight.Bold), new ItemList([.. limits, .. signs], ItemMarker.Dot, size)], 0.5));
            }
        }
    }

    private static IEnumerable<Block> Index(Plan plan, double size) => plan.AnimalLadder.Count == 0
        ? []
        : [new Heading("Which card for which animal", 3), RingIndex.Of(plan, size)];

    private static IEnumerable<Block> Steps(Plan plan, double size, bool inWords)
    {
        if (plan.Frame is { Assembly.Count: > 0 } frame)
        {
            yield return new Heading("Setting up", 2);
            yield return new InColumns(new Stack(
                [new ItemList([.. frame.Assembly.Where(IsOutdoors).Select(step => inWords ? AssemblyText.Of(step, frame.Geometry) : $"{AssemblyText.Title(step)}: build sheet.")], ItemMarker.TickBox, size)]));
        }

        foreach (var upright in plan.Workshop?.Uprights ?? [])
        {
            yield return new Heading($"Setting up: {upright.Name}", 2);
            yield return new InColumns(new Stack(
                [new ItemList([.. upright.Assembly.Where(step => step != UprightStep.MarkClips).Select(step => UprightStepText.Of(step, upright))], ItemMarker.TickBox, size)]));
        }

        if (plan.Frame is { PackingDown.Count: > 0 } packed)
        {
            yield return new Heading("Packing down", 2);
            yield return new InColumns(new Stack([new ItemList([.. packed.PackingDown.Select(AssemblyText.Of)], ItemMarker.TickBox, size)]));
        }
    }

    // What is marked, glued and folded once is done at home.
    private static bool IsOutdoors(AssemblyStep step) => step is not (AssemblyStep.MarkPieces or AssemblyStep.LayStrips or AssemblyStep.FoldSoftbox);

    private static IEnumerable<Block> Rounds(Plan plan, (double Small, double Large) size)
    {
        var first = 1;
        foreach (var (block, place) in plan.Session?.Blocks.Select((block, place) => (block, place)) ?? [])
        {
            yield return new Heading(FormattableString.Invariant($"Rounds {place + 1}: {SessionText.Title(block)}"), 2);
            yield return new Paragraph(SessionText.When(block), size.Small);
            yield return RoundsTable.Steps(plan, block, first, size.Large);
            yield return RoundsTable.Lines(block, size.Large);
            first += RoundsTable.Count(block);
        }
    }

    private static IEnumerable<Block> RoundsElsewhere(Plan plan, double size) => plan.Session is null
        ? []
        : [new Heading("Rounds", 2), new Paragraph("This day has more rounds and steps than two sheets hold: take the session plan along, whose boxes and lines are theirs.", size)];
}
