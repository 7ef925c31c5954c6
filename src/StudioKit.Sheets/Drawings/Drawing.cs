using StudioKit.Sheets.Tagging;

namespace StudioKit.Sheets.Drawings;

/// <summary>A drawing as data: marks in millimetres, which one writer turns into PDF and another into SVG.</summary>
/// <param name="Title">What it shows, in a few words.</param>
/// <param name="Description">The same for someone who cannot see it.</param>
/// <param name="Marks">The marks, later ones on top.</param>
public sealed record Drawing(string Title, string Description, IReadOnlyList<Primitive> Marks)
{
    /// <summary>The rectangle that all marks cover, line widths left out; a single point where there are none [mm].</summary>
    public Bounds Bounds => Marks.Count == 0
        ? default
        : Marks.Select(mark => mark.Bounds).Aggregate((a, b) => a.With(b));

    /// <summary>The drawing at another scale; text and line widths keep their size on paper.</summary>
    /// <param name="scale">Paper length over drawn length [1]; &gt; 0.</param>
    /// <returns>The scaled drawing.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The scale is not finite or not above zero.</exception>
    public Drawing Scaled(double scale) => Under(new Similarity(Physics.Guard.Positive(scale), 0, 0, 0));

    /// <summary>The drawing at another place.</summary>
    /// <param name="dx">Shift to the right [mm].</param>
    /// <param name="dy">Shift down [mm].</param>
    /// <returns>The shifted drawing.</returns>
    public Drawing Shifted(double dx, double dy) => Under(Similarity.Shift(dx, dy));

    /// <summary>The drawing after scaling, turning and shifting.</summary>
    /// <param name="change">What to do to it.</param>
    /// <returns>The changed drawing.</returns>
    public Drawing Under(Similarity change) => this with { Marks = Marks.Under(change) };

    /// <summary>The marks with dimensions and hatching resolved into plain lines, shapes and text.</summary>
    internal IEnumerable<Primitive> PlainMarks()
    {
        foreach (var mark in MarkLists.Made(Marks))
        {
            if (IsPlain(mark))
            {
                yield return mark;
                continue;
            }

            foreach (var part in Plain(mark))
            {
                yield return part;
            }
        }
    }

    /// <summary>The marks as one figure, with title and description as its words.</summary>
    internal IReadOnlyList<Primitive> AsFigure() => As(new Tag(TagKind.Figure) { Says = Words });

    /// <summary>The marks under one tag.</summary>
    internal IReadOnlyList<Primitive> As(Tag tag) => Marks.As(tag);

    /// <summary>Title and description in one sentence or two.</summary>
    internal string Words => string.Join(". ", new[] { Title, Description }.Where(text => text.Length > 0).Distinct());

    private static bool IsPlain(Primitive mark) => mark is not (Dimension or Polygon { Fill: Fill.Hatch } or Circle { Fill: Fill.Hatch });

    // What a mark is made of is part of what the mark is part of.
    private static IEnumerable<Primitive> Plain(Primitive mark) => mark.Tag is { } tag ? Parts(mark).Select(part => part with { Tag = tag }) : Parts(mark);

    private static IEnumerable<Primitive> Parts(Primitive mark) => mark switch
    {
        Dimension dimension => dimension.Marks(),
        Polygon { Fill: Fill.Hatch } polygon =>
            Hatching.Of(polygon.Points).Append<Primitive>(polygon with { Fill = Fill.None }),
        Circle { Fill: Fill.Hatch } circle =>
            Hatching.Of(Hatching.Corners(circle)).Append<Primitive>(circle with { Fill = Fill.None }),
        _ => [mark],
    };
}
