using StudioKit.Planning;
using StudioKit.Planning.Advising;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Cards;

/// <summary>Distances that one flash can take, each with its power under it; the planned one is bold.</summary>
internal sealed record DistancePowerTable(LightDistances Distances, double SizePt) : Block
{
    private const double Gap = 1.6;

    public override Fit Fit(double width, double height)
    {
        var lineHeight = TypeScale.LineHeight(SizePt);
        var cell = Cells().SelectMany(pair => new[] { pair.Distance, pair.Power }).Max(text => TextMeter.Width(text, SizePt, TextWeight.Bold)) + Gap;
        var name = Math.Max(TextMeter.Width(Role, SizePt, TextWeight.Bold), TextMeter.Width("power", SizePt, TextWeight.Regular)) + Gap;
        var perRow = Math.Max(1, (int)((width - name) / cell));
        var rows = Cells().Chunk(perRow).ToList();
        return Layout.Fit.WholeOrNothing(this, "The table of distances", ((2 * rows.Count) + 1) * lineHeight, height, () =>
        [
            .. TypeScale.Set([$"{Role}: power at other distances"], 0, SizePt, TextWeight.Bold),
            .. rows.SelectMany((row, i) => Row(row, ((2 * i) + 1) * lineHeight, name, cell)),
        ]);
    }

    private string Role => RoleText.Title(Distances.Light.Role);

    private IEnumerable<Primitive> Row((string Distance, string Power, bool IsPlanned)[] row, double top, double name, double cell)
    {
        var lines = TypeScale.Set([PlanFormat.CentimetreUnit, "power"], 0, SizePt, TextWeight.Regular, top: top);
        return lines.Concat(row.SelectMany((pair, i) => TypeScale.Set(
            [pair.Distance, pair.Power], name + ((i + 1) * cell) - Gap, SizePt, pair.IsPlanned ? TextWeight.Bold : TextWeight.Regular, TextAnchor.End, top)));
    }

    private IEnumerable<(string Distance, string Power, bool IsPlanned)> Cells() => Distances.Steps.Select(pair => (
        PlanFormat.CentimetreFigure(pair.Distance),
        pair.Power.AsOneFraction,
        pair.IsPlanned));
}
