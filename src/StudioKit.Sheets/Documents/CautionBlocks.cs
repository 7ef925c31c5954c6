using StudioKit.Planning;
using StudioKit.Planning.Cautions;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Documents;

/// <summary>The cautions of a plan that a sheet says, each once.</summary>
internal static class CautionBlocks
{
    /// <summary>Title and text of each, the protection of the species first.</summary>
    public static IEnumerable<(string Title, string Text)> Listed(Plan plan, params CautionSheet[] sheets) => plan.Cautions
        .Where(caution => sheets.Any(caution.Sheets.Contains))
        .OrderBy(caution => caution.Kind != CautionKind.ProtectedHere)
        .Select(caution => (CautionText.Title(caution), CautionText.Of(caution)));

    /// <summary>A frame with a sign for each.</summary>
    public static IEnumerable<Block> Of(Plan plan, CautionSheet sheet, Func<CautionKind, bool>? among = null) => plan.Cautions
        .Where(caution => caution.Sheets.Contains(sheet) && (among is null || among(caution.Kind)))
        .Select(Block (caution) => new Caution(CautionText.Of(caution), CautionText.Title(caution)));
}
