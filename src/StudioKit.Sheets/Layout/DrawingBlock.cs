using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Layout;

/// <summary>A drawing with its title and scale under it.</summary>
/// <param name="Drawing">The drawing, at full size.</param>
/// <param name="TrueScale">True where it is a template and must come out at full size.</param>
/// <param name="MaxHeight">Most height it may take [mm].</param>
/// <param name="Caption">What stands under it; its title and scale where nothing is given, nothing, and the drawing to the left, where it is empty.</param>
internal sealed record DrawingBlock(Drawing Drawing, bool TrueScale = false, double MaxHeight = 120, string? Caption = null) : Block
{
    // The reductions of ISO 5455, with full size before them.
    private static readonly double[] Reductions = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];

    public override Fit Fit(double width, double height)
    {
        var caption = Caption is { Length: 0 } ? 0 : TypeScale.LineHeight(TypeScale.Small) + 1;
        foreach (var reduction in TrueScale ? Reductions[..1] : Reductions)
        {
            var scaled = Drawing.Scaled(1 / reduction);
            var bounds = scaled.Bounds;
            if (bounds.Width <= width && (TrueScale || bounds.Height + caption <= MaxHeight))
            {
                return Layout.Fit.WholeOrNothing(
                    this, $"The drawing {Drawing.Title}", bounds.Height + caption, height, () => Marks(scaled, bounds, width, reduction));
            }
        }

        return Layout.Fit.Nothing(
            this, FormattableString.Invariant($"The drawing {Drawing.Title} is {Drawing.Bounds.Width:0} mm wide; the page holds {width:0} mm."));
    }

    private List<Primitive> Marks(Drawing scaled, Bounds bounds, double width, double reduction)
    {
        var left = Caption is { Length: 0 } ? 0 : (width - bounds.Width) / 2;
        var caption = Caption ?? FormattableString.Invariant($"{Drawing.Title}, scale 1:{reduction:0}");
        var marks = new List<Primitive>(scaled.Shifted(left - bounds.Left, -bounds.Top).Marks);
        if (caption.Length > 0)
        {
            var baseline = bounds.Height + 1 + TypeScale.Baseline(TypeScale.Small);
            marks.Add(new Label(new Point(width / 2, baseline), caption, TypeScale.Small, TextAnchor.Middle));
        }

        return marks;
    }
}
