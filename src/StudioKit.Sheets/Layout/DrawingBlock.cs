using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Tagging;

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

    private const double AboveCaption = 1;

    public override Fit Fit(double width, double height) => Reduced(width, height, MaxHeight);

    /// <summary>On a page that is too low for it, a drawing that is no template is reduced further.</summary>
    public override Fit Force(double width, double height) => Reduced(width, height, Math.Min(MaxHeight, height));

    private Fit Reduced(double width, double height, double tallest)
    {
        foreach (var reduction in TrueScale ? Reductions[..1] : Reductions)
        {
            var scaled = ClearedLabels.Of(Drawing.Scaled(1 / reduction), width);
            var bounds = scaled.Bounds;
            var caption = Lines(reduction, width);
            var under = caption.Count == 0 ? 0 : (caption.Count * TypeScale.LineHeight(TypeScale.Small)) + AboveCaption;
            if (bounds.Width <= width && (TrueScale || bounds.Height + under <= tallest))
            {
                return Layout.Fit.WholeOrNothing(
                    this, $"The drawing {Drawing.Title}", bounds.Height + under, height, () => Marks(scaled, bounds, width, caption));
            }
        }

        return Layout.Fit.Nothing(
            this, FormattableString.Invariant($"The drawing {Drawing.Title} is {Drawing.Bounds.Width:0} mm wide; the page holds {width:0} mm."));
    }

    private IReadOnlyList<string> Lines(double reduction, double width)
    {
        var caption = Caption ?? FormattableString.Invariant($"{Drawing.Title}, scale 1:{reduction:0}");
        return caption.Length == 0 ? [] : TextWrap.Lines(caption, width, TypeScale.Small, Fonts.TextWeight.Regular);
    }

    private List<Primitive> Marks(Drawing scaled, Bounds bounds, double width, IReadOnlyList<string> caption)
    {
        var left = caption.Count == 0 ? 0 : (width - bounds.Width) / 2;
        var figure = new Tag(TagKind.Figure) { Says = Drawing.Words };
        var marks = new List<Primitive>(scaled.Shifted(left - bounds.Left, -bounds.Top).As(figure));
        marks.AddRange(TypeScale.Set(caption, width / 2, TypeScale.Small, Fonts.TextWeight.Regular, TextAnchor.Middle, bounds.Height + AboveCaption, new Tag(TagKind.Caption, figure)));
        return marks;
    }
}
