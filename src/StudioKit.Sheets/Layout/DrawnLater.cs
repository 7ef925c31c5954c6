using System.Collections;
using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Layout;

/// <summary>Marks that are made when somebody looks at them: where several sizes are tried, only those of the size that is taken.</summary>
/// <param name="draw">Makes the marks; asked once at most.</param>
internal sealed class DrawnLater(Func<IReadOnlyList<Primitive>> draw) : IUnmadeMarks
{
    private readonly Lazy<IReadOnlyList<Primitive>> _marks = new(draw);

    public int Count => _marks.Value.Count;

    public Primitive this[int index] => _marks.Value[index];

    public IReadOnlyList<Primitive> Make() => _marks.Value;

    public IEnumerator<Primitive> GetEnumerator() => _marks.Value.GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
