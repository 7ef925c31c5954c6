namespace StudioKit.Web.Results;

/// <summary>Everything that can be asked of the worker.</summary>
public static class EngineQuestions
{
    /// <summary>Reads a kit and plans it.</summary>
    public static EngineQuestion<PlanRequest, PlanAnswer> Plan { get; } = new("plan", () => ResultsJson.Default.PlanRequest, () => ResultsJson.Default.PlanAnswer, "plan");

    /// <summary>What can be printed of a kit.</summary>
    public static EngineQuestion<SheetsRequest, SheetOffers> Offers { get; } = new("offers", () => ResultsJson.Default.SheetsRequest, () => ResultsJson.Default.SheetOffers, "offers");

    /// <summary>Makes one group of sheets; each file is then taken by its name.</summary>
    public static EngineQuestion<SheetsRequest, MadeFiles> MakeSheets { get; } = new("sheets", () => ResultsJson.Default.SheetsRequest, () => ResultsJson.Default.MadeFiles);

    /// <summary>Binds what was made of a kit into one zip file.</summary>
    public static EngineQuestion<SheetsRequest, MadeFiles> ZipSheets { get; } = new("zip", () => ResultsJson.Default.SheetsRequest, () => ResultsJson.Default.MadeFiles);

    /// <summary>The pages of one group, to look at.</summary>
    public static EngineQuestion<SheetsRequest, SheetPages> Pages { get; } = new("pages", () => ResultsJson.Default.SheetsRequest, () => ResultsJson.Default.SheetPages, "pages");

    /// <summary>How a framing would look with something of the studio moved.</summary>
    public static EngineQuestion<PreviewRequest, PreviewAnswer> Preview { get; } = new("preview", () => ResultsJson.Default.PreviewRequest, () => ResultsJson.Default.PreviewAnswer, "preview");

    /// <summary>What a framing sees of the lit panel, place by place.</summary>
    public static EngineQuestion<MapRequest, MapAnswer> Map { get; } = new("map", () => ResultsJson.Default.MapRequest, () => ResultsJson.Default.MapAnswer, "map");

    /// <summary>Writes values into a kit's text; comments, order and line ends stay.</summary>
    public static EngineQuestion<EditRequest, EditAnswer> Edit { get; } = new("edit", () => ResultsJson.Default.EditRequest, () => ResultsJson.Default.EditAnswer);

    /// <summary>Reads kits with these parts beside them from now on.</summary>
    public static EngineQuestion<PartTexts, PartTexts> Beside { get; } = new("beside", () => ResultsJson.Default.PartTexts, () => ResultsJson.Default.PartTexts);

    /// <summary>Which parts a kit names.</summary>
    public static EngineQuestion<PartNamesRequest, PartNames> PartNames { get; } = new("part-names", () => ResultsJson.Default.PartNamesRequest, () => ResultsJson.Default.PartNames);

    /// <summary>What a correction file holds.</summary>
    public static EngineQuestion<CorrectionRequest, CorrectionAnswer> ReadCorrection { get; } = new("read-correction", () => ResultsJson.Default.CorrectionRequest, () => ResultsJson.Default.CorrectionAnswer);

    /// <summary>A change that mends a check, step by step.</summary>
    public static EngineQuestion<MendRequest, MendAnswer> Mend { get; } = new("mend", () => ResultsJson.Default.MendRequest, () => ResultsJson.Default.MendAnswer);

    /// <summary>What is known of a place of the panel.</summary>
    public static EngineQuestion<PointRequest, PointAnswer> Point { get; } = new("point", () => ResultsJson.Default.PointRequest, () => ResultsJson.Default.PointAnswer, "point");

    /// <summary>What to set when the light of the place changes.</summary>
    public static EngineQuestion<CardRequest, SceneLightAnswer> SceneLight { get; } = new("scene-light", () => ResultsJson.Default.CardRequest, () => ResultsJson.Default.SceneLightAnswer, "scene-light");

    /// <summary>Where the lights of a card stand, and how the day goes.</summary>
    public static EngineQuestion<CardRequest, OutdoorsAnswer> Outdoors { get; } = new("outdoors", () => ResultsJson.Default.CardRequest, () => ResultsJson.Default.OutdoorsAnswer, "outdoors");

    /// <summary>A planned studio in space.</summary>
    public static EngineQuestion<SolidRequest, SolidAnswer> Solid { get; } = new("solid", () => ResultsJson.Default.SolidRequest, () => ResultsJson.Default.SolidAnswer, "solid");

    /// <summary>Reads the pixels of a test frame that was handed to the worker.</summary>
    public static EngineQuestion<PictureRequest, ReadPicture> Read { get; } = new("read-frame", () => ResultsJson.Default.PictureRequest, () => ResultsJson.Default.ReadPicture);

    /// <summary>What a test frame that was read comes to, and what to turn.</summary>
    public static EngineQuestion<FrameRequest, FrameAnswer> Frame { get; } = new("frame", () => ResultsJson.Default.FrameRequest, () => ResultsJson.Default.FrameAnswer);

    /// <summary>What the frames of a power ladder measure.</summary>
    public static EngineQuestion<LadderRequest, LadderAnswer> Ladder { get; } = new("ladder", () => ResultsJson.Default.LadderRequest, () => ResultsJson.Default.LadderAnswer, "ladder");

    /// <summary>Plans with these corrections from now on.</summary>
    public static EngineQuestion<CorrectionTexts, KeptCorrections> Correct { get; } = new("correct", () => ResultsJson.Default.CorrectionTexts, () => ResultsJson.Default.KeptCorrections);

    /// <summary>Takes a file for a kit.</summary>
    public static EngineQuestion<OpenRequest, OpenAnswer> Open { get; } = new("open", () => ResultsJson.Default.OpenRequest, () => ResultsJson.Default.OpenAnswer);

    /// <summary>Gives the commented kit to begin with.</summary>
    public static EngineQuestion<StarterRequest, OpenAnswer> Starter { get; } = new("starter", () => ResultsJson.Default.StarterRequest, () => ResultsJson.Default.OpenAnswer);

    /// <summary>One half of a kit as a form.</summary>
    public static EngineQuestion<FormRequest, FormAnswer> Form { get; } = new("form", () => ResultsJson.Default.FormRequest, () => ResultsJson.Default.FormAnswer, "form");

    /// <summary>Changes a kit's text as a form does.</summary>
    public static EngineQuestion<FormEditRequest, FormEditAnswer> FormEdit { get; } = new("form-edit", () => ResultsJson.Default.FormEditRequest, () => ResultsJson.Default.FormEditAnswer);

    /// <summary>What something typed into a field would mean.</summary>
    public static EngineQuestion<FieldCheckRequest, FieldCheckAnswer> FieldCheck { get; } = new("field-check", () => ResultsJson.Default.FieldCheckRequest, () => ResultsJson.Default.FieldCheckAnswer);

    /// <summary>Parts of the library.</summary>
    public static EngineQuestion<PartsRequest, PartsAnswer> Parts { get; } = new("parts", () => ResultsJson.Default.PartsRequest, () => ResultsJson.Default.PartsAnswer, "parts");

    /// <summary>Two states of a kit side by side.</summary>
    public static EngineQuestion<CompareRequest, CompareAnswer> Compare { get; } = new("compare", () => ResultsJson.Default.CompareRequest, () => ResultsJson.Default.CompareAnswer, "compare");

    /// <summary>What could stand at a place of a text.</summary>
    public static EngineQuestion<CompleteRequest, CompleteAnswer> Complete { get; } = new("complete", () => ResultsJson.Default.CompleteRequest, () => ResultsJson.Default.CompleteAnswer, "complete");

    /// <summary>What a kit leaves open, step by step.</summary>
    public static EngineQuestion<DesignsRequest, OpenDesigns> Designs { get; } = new("designs", () => ResultsJson.Default.DesignsRequest, () => ResultsJson.Default.OpenDesigns);

    /// <summary>Designs that no other beats, step by step.</summary>
    public static EngineQuestion<SearchRequest, SearchAnswer> Search { get; } = new("search", () => ResultsJson.Default.SearchRequest, () => ResultsJson.Default.SearchAnswer);

    /// <summary>The kit of a design of the last search.</summary>
    public static EngineQuestion<DesignRequest, DesignKit> Design { get; } = new("design", () => ResultsJson.Default.DesignRequest, () => ResultsJson.Default.DesignKit);
}
