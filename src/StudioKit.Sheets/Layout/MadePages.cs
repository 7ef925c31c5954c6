using System.Collections;

namespace StudioKit.Sheets.Layout;

/// <summary>Pages that are made whenever they are asked for, and not kept: those of a large kit's cards would be all its cards once more.</summary>
/// <param name="count">How many there are.</param>
/// <param name="make">Makes one, the same each time.</param>
internal sealed class MadePages(int count, Func<int, Page> make) : IReadOnlyList<Page>
{
    public int Count => count;

    public Page this[int index] => index >= 0 && index < count ? make(index) : throw new ArgumentOutOfRangeException(nameof(index), index, "There is no such page.");

    public IEnumerator<Page> GetEnumerator() => Enumerable.Range(0, count).Select(make).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
