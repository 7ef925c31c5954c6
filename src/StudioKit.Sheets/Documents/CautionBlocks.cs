using StudioKit.Planning;
using StudioKit.Planning.Cautions;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Documents;

/// <summary>The cautions of a plan that a sheet says, each once.</summary>
internal static class CautionBlocks
{
    /// <summary>A frame with a sign for each.</summary>
    public static IEnumerable<Block> Of(Plan plan, CautionSheet sheet, Func<CautionKind, bool>? among = null, double sizePt = TypeScale.Body) => plan.Cautions
        .Where(caution => caution.Sheets.Contains(sheet) && (among is null || among(caution.Kind)))
        .Select(Block (caution) => new Caution(CautionText.Of(caution), CautionText.Title(caution), sizePt));
}
