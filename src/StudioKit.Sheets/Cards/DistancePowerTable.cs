using StudioKit.Planning;
using StudioKit.Planning.Advising;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Cards;

/// <summary>Distances that one flash can take, in all units that are told, each with its power under it; the planned one is bold.</summary>
internal sealed record DistancePowerTable(LightDistances Distances, double SizePt) : Block
{
    private const double Gap = 1.6;

    public override Fit Fit(double width, double height)
    {
        var lineHeight = TypeScale.LineHeight(SizePt);
        var (heads, cells) = (Heads(), Distances.Steps.Select(Cell).ToList());
        var cell = cells.SelectMany(column => column.Lines).Max(text => TextMeter.Width(text, SizePt, TextWeight.Bold)) + Gap;
        var name = Math.Max(TextMeter.Width(Role, SizePt, TextWeight.Bold), heads.Max(head => TextMeter.Width(head, SizePt, TextWeight.Regular))) + Gap;
        var perRow = Math.Max(1, (int)((width - name) / cell));
        var rows = cells.Chunk(perRow).ToList();
        return Layout.Fit.WholeOrNothing(this, "The table of distances", ((heads.Count * rows.Count) + 1) * lineHeight, height, () =>
        [
            .. TypeScale.Set([$"{Role}: power at other distances"], 0, SizePt, TextWeight.Bold),
            .. rows.SelectMany((row, i) => Row(row, heads, ((heads.Count * i) + 1) * lineHeight, name, cell)),
        ]);
    }

    private string Role => RoleText.Title(Distances.Light.Role);

    private IEnumerable<Primitive> Row((IReadOnlyList<string> Lines, bool IsPlanned)[] row, IReadOnlyList<string> heads, double top, double name, double cell) =>
        TypeScale.Set(heads, 0, SizePt, TextWeight.Regular, top: top).Concat(row.SelectMany((column, i) => TypeScale.Set(
            column.Lines, name + ((i + 1) * cell) - Gap, SizePt, column.IsPlanned ? TextWeight.Bold : TextWeight.Regular, TextAnchor.End, top)));

    private List<string> Heads() => [DistanceFormat.CentimetreUnit, .. DistanceFormat.UnderCentimetres(Distances.Steps[0].Distance) is null ? (string[])[] : ["in"], "power"];

    private static (IReadOnlyList<string> Lines, bool IsPlanned) Cell(DistanceStep step) => (
        [DistanceFormat.CentimetreFigure(step.Distance), .. DistanceFormat.UnderCentimetres(step.Distance) is { } inches ? (string[])[inches] : [], step.Power.AsOneFraction],
        step.IsPlanned);
}
