using StudioKit.Kits.Cards;
using StudioKit.Planning;
using StudioKit.Sheets.Documents.Outdoors;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Documents;

/// <summary>Every printed document of a plan, in the order in which a field book binds them.</summary>
internal static class SheetChapters
{
    /// <summary>Name of the file that is printed first.</summary>
    public const string FieldPackFile = "field-pack.pdf";

    /// <summary>Name of the file with further sheets of the log.</summary>
    public const string PaperLogFile = "paper-log.pdf";

    public static IReadOnlyList<NamedChapter> Of(Plan plan, SheetOptions options, Stamp stamp)
    {
        var page = new PageSetup(options.Paper);
        return
        [
            .. plan.Checks.All(check => check.Passed) ? (NamedChapter[])[] : [Flowing("mend-first", () => MendFirstSheet.Make(plan, stamp, page))],
            new NamedChapter(FieldPackFile, SheetGroupKind.Document, () => FieldPack.Lay(plan, options.Paper, stamp)),
            Flowing("plan-report", () => PlanReport.Make(plan, stamp, page)),
            .. plan.SheetLights.Any() ? (NamedChapter[])[Flowing("light", () => LightSheet.Make(plan, stamp, page))] : [],
            .. plan.Frame is { } frame ? (NamedChapter[])[Flowing("build-sheet", () => BuildSheet.Make(plan, frame, stamp, page))]
                : plan.Workshop is { } workshop ? (NamedChapter[])[Flowing("build-sheet", () => BuildSheet.WithoutFrame(plan, workshop, stamp, page))]
                : [],
            .. plan.Frame is { Geometry.Members.Count: > 0 } built ? (NamedChapter[])[Flowing("templates", () => TemplatesSheet.Make(plan, built, stamp, page))] : [],
            .. Cards(plan, options, stamp),
            .. plan.Handling.Count == 0 ? (NamedChapter[])[] : [new NamedChapter("handling-cards.pdf", SheetGroupKind.Cards, () => HandlingCards.Lay(plan, CardTemplates.Of(CardSize.A6.Name), options.Paper, stamp)) { StartsRight = true }],
            .. plan.Session is { } session ? (NamedChapter[])[Flowing("session-plan", () => SessionSheet.Make(plan, session, stamp, page))] : [],
            .. plan.Day is { } day ? (NamedChapter[])[Flowing("day-plan", () => DaySheet.Make(plan, day, stamp, page))] : [],
            Flowing("pack-list", () => PackListSheet.Make(plan, stamp, page)),
            .. plan.Exposures.Count == 0 ? (NamedChapter[])[] : [new NamedChapter(PaperLogFile, SheetGroupKind.Document, () => PaperLogSheet.Lay(plan, options.Paper, stamp))],
            Flowing("appendix", () => AppendixSheet.Make(plan, stamp, page)),
        ];
    }

    private static NamedChapter Flowing(string name, Func<SheetDocument> document) => new($"{name}.pdf", SheetGroupKind.Document, () => Paginator.Chapter(document()));

    private static IEnumerable<NamedChapter> Cards(Plan plan, SheetOptions options, Stamp stamp) => plan.Ring.Count == 0 && (plan.OffRing.Count == 0 || !options.EvenIfFailing)
        ? []
        : options.Cards.Select(template => new NamedChapter($"cards-{FileName(template.Name)}.pdf", SheetGroupKind.Cards, () => ExposureCards.Lay(plan, template, options.Paper, stamp, options.EvenIfFailing)) { StartsRight = true });

    // A template's name is free text; a file's is not.
    private static string FileName(string name) => string.Concat(name.Select(letter => char.IsLetterOrDigit(letter) || letter is '-' or '.' ? letter : '-')).Trim('.');
}
