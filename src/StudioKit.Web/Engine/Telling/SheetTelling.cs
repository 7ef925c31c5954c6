using StudioKit.Planning;
using StudioKit.Sheets;
using StudioKit.Web.Results;

namespace StudioKit.Web.Engine.Telling;

/// <summary>What can be printed, in words.</summary>
internal static class SheetTelling
{
    /// <summary>Cards come first: they are what goes to the field.</summary>
    public static int Rank(SheetGroup group) => (int)group.Kind;

    public static SheetOffer Of(SheetGroup group) => new(group.Name, Title(group), group.Kind != SheetGroupKind.Tables);

    /// <summary>What to know of cut plans that were made without the solver.</summary>
    public static string CutNote(Plan plan) => plan.Workshop is not { PipeCuts: var cuts }
        ? ""
        : cuts.Proof.ProvenOptimal
            ? "Pipes are shared out first-fit on this page; no way of sharing them out needs less stock."
            : "Pipes are shared out first-fit on this page; the command line may find a way that saves a length of stock.";

    private static string Title(SheetGroup group) => group.Name switch
    {
        "plan-report.pdf" => "Report: the whole plan with its sources",
        "light.pdf" => "Light on the panel",
        "build-sheet.pdf" => "Build sheet: what to buy, cut and put together",
        "day-plan.pdf" => "Sun and light of the day",
        "session-plan.pdf" => "The day in the field",
        "pack-list.pdf" => "Pack list",
        "paper-log.pdf" => "Paper log",
        "handling-cards.pdf" => "Handling cards: care of the animals",
        "build-drawings" => "Drawings of frame and cuts",
        "light-drawings" => "Drawings of the light",
        "plots" => "Plots",
        "tables" => "Tables for a spreadsheet",
        var cards => $"Exposure cards, {cards["cards-".Length..^".pdf".Length]}",
    };
}
