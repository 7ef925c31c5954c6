using System.Collections;
using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Layout;

/// <summary>Marks that are made whenever they are asked for, and not kept: those of a large kit's cards take far more memory than what they are made of.</summary>
/// <param name="draw">Makes the marks, the same each time.</param>
internal sealed class DrawnAnew(Func<IReadOnlyList<Primitive>> draw) : IUnmadeMarks
{
    public int Count => draw().Count;

    public Primitive this[int index] => draw()[index];

    public IReadOnlyList<Primitive> Make() => draw();

    public IEnumerator<Primitive> GetEnumerator() => draw().GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
