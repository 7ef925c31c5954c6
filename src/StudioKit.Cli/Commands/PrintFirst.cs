using System.Globalization;
using StudioKit.Sheets;

namespace StudioKit.Cli.Commands;

/// <summary>What to print first of a set of sheets, and how, in a few lines.</summary>
internal static class PrintFirst
{
    /// <summary>The lines.</summary>
    /// <param name="files">The files that were written.</param>
    public static IEnumerable<string> Of(IReadOnlyList<SheetFile> files)
    {
        var printed = files.Where(file => file.Pages > 0).ToList();
        if (Named(printed, "mend-first").FirstOrDefault() is { } mend)
        {
            yield return $"The plan fails: read {mend.Name} before you print anything else.";
        }

        foreach (var (purpose, beginnings) in Purposes)
        {
            var some = beginnings.SelectMany(beginning => Named(printed, beginning)).ToList();
            if (some.Count > 0)
            {
                yield return $"{purpose}: {string.Join(", ", some.Select(How))}.";
            }
        }

        if (printed.Count > 0)
        {
            yield return "All at 100 %, not fitted to the page; both sides are turned over the long edge, sheets that lie across over the short one.";
        }
    }

    private static readonly (string Purpose, string[] Beginnings)[] Purposes =
    [
        ("Print first, to take outdoors", ["field-pack", "cards-", "handling-cards"]),
        ("For the shop and the bench", ["build-sheet", "templates"]),
        ("All else is for the desk", ["plan-report", "light", "session-plan", "day-plan", "pack-list", "paper-log", "appendix", "field-book"]),
    ];

    // Of several sizes of card one is enough.
    private static IEnumerable<SheetFile> Named(IReadOnlyList<SheetFile> files, string beginning) =>
        files.Where(file => file.Name.StartsWith(beginning, StringComparison.Ordinal)).Take(1);

    private static string How(SheetFile file) => string.Create(
        CultureInfo.InvariantCulture, $"{file.Name} ({file.PaperSheets} {(file.PaperSheets == 1 ? "sheet" : "sheets")}, {(file.BothSides ? "both sides" : "one side")})");
}
