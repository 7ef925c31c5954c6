namespace StudioKit.Web.Results;

/// <summary>Everything that can be asked of the worker.</summary>
public static class EngineQuestions
{
    /// <summary>Reads a kit and plans it.</summary>
    public static EngineQuestion<PlanRequest, PlanAnswer> Plan { get; } = new("plan", ResultsJson.Default.PlanRequest, ResultsJson.Default.PlanAnswer, "plan");

    /// <summary>What can be printed of a kit.</summary>
    public static EngineQuestion<SheetsRequest, SheetOffers> Offers { get; } = new("offers", ResultsJson.Default.SheetsRequest, ResultsJson.Default.SheetOffers, "offers");

    /// <summary>Makes one group of sheets; each file is then taken by its name.</summary>
    public static EngineQuestion<SheetsRequest, MadeFiles> MakeSheets { get; } = new("sheets", ResultsJson.Default.SheetsRequest, ResultsJson.Default.MadeFiles);

    /// <summary>Binds what was made of a kit into one zip file.</summary>
    public static EngineQuestion<SheetsRequest, MadeFiles> ZipSheets { get; } = new("zip", ResultsJson.Default.SheetsRequest, ResultsJson.Default.MadeFiles);

    /// <summary>The pages of one group, to look at.</summary>
    public static EngineQuestion<SheetsRequest, SheetPages> Pages { get; } = new("pages", ResultsJson.Default.SheetsRequest, ResultsJson.Default.SheetPages, "pages");
}
