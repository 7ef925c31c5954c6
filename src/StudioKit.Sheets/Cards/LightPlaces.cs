using StudioKit.Planning;
using StudioKit.Sheets.Documents;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Cards;

/// <summary>Where to hold the lights of a card: both views, and a line for each light beside them, or under them where the card is narrow.</summary>
/// <param name="Exposure">The exposure.</param>
/// <param name="Stands">Its lights about the subject; at least one.</param>
/// <param name="SizePt">Size of type [pt].</param>
internal sealed record LightPlaces(ExposurePlan Exposure, IReadOnlyList<LightStandPlan> Stands, double SizePt) : Block
{
    private const double Gap = 2;
    private const double ViewsBeside = 52;
    private const double LeastBeside = 84;
    private const double HeightBeside = 24;
    private const double HeightOver = 21;

    public override Fit Fit(double width, double height)
    {
        var isBeside = width >= LeastBeside;
        var room = isBeside ? width - ViewsBeside - Gap : width;
        var lines = Stands.SelectMany(stand => TextWrap.Lines(Line(stand), room, SizePt, Fonts.TextWeight.Regular)).ToList();
        var text = lines.Count * TypeScale.LineHeight(SizePt);
        var views = LightPlaceDrawing.Of(Stands, Exposure.CameraPitches, Exposure.OnPanel, isBeside ? ViewsBeside : width, isBeside ? HeightBeside : HeightOver);
        var needed = isBeside ? Math.Max(HeightBeside, text) : HeightOver + 0.6 + text;
        return Layout.Fit.WholeOrNothing(this, "Where the lights stand", needed, height, () =>
        [
            .. ClearedLabels.Of(views, isBeside ? ViewsBeside : width, beyond: 0).AsFigure(),
            .. TypeScale.Set(lines, isBeside ? ViewsBeside + Gap : 0, SizePt, Fonts.TextWeight.Regular, top: isBeside ? 0 : HeightOver + 0.6),
        ]);
    }

    private static string Line(LightStandPlan stand) => $"{RoleText.Title(stand.Role)}: {StandText.Where(stand)}; {StandText.Held(stand)}. {Sentence.Begin(StandText.Soft(stand))}.";
}
