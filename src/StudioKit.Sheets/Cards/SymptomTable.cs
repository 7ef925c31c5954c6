using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Cards;

/// <summary>If this is seen, turn that: what is seen in bold, what to turn beside it.</summary>
internal sealed record SymptomTable(IReadOnlyList<(string Seen, string Turn)> Symptoms, double SizePt) : Block
{
    private const double SeenShare = 0.4;
    private const double Gap = 2;

    public override Fit Fit(double width, double height) =>
        new KeepTogether(new Stack([.. Symptoms.Select(symptom => new Row(symptom.Seen, symptom.Turn, SizePt))], 0.9)).Fit(width, height);

    private sealed record Row(string Seen, string Turn, double SizePt) : Block
    {
        public override Fit Fit(double width, double height)
        {
            var turnAt = width * SeenShare;
            var seen = TextWrap.Lines(Seen, turnAt - Gap, SizePt, TextWeight.Bold);
            var turn = TextWrap.Lines(Turn, width - turnAt, SizePt, TextWeight.Regular);
            var needed = Math.Max(seen.Count, turn.Count) * TypeScale.LineHeight(SizePt);
            return Layout.Fit.WholeOrNothing(this, "A symptom", needed, height, () =>
            [
                .. TypeScale.Set(seen, 0, SizePt, TextWeight.Bold),
                .. TypeScale.Set(turn, turnAt, SizePt, TextWeight.Regular),
            ]);
        }
    }
}
