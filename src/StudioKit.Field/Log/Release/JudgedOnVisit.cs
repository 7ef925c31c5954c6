using System.Collections;

namespace StudioKit.Field.Log.Release;

/// <summary>A list whose items are made anew at each visit: what leaves of a log is far larger than the log, and is only ever needed a piece at a time.</summary>
/// <param name="sources">What they are made of.</param>
/// <param name="judge">Makes one; the same source always gives the same.</param>
internal sealed class JudgedOnVisit<TSource, T>(IReadOnlyList<TSource> sources, Func<TSource, T> judge) : IReadOnlyList<T>
{
    public int Count => sources.Count;

    public T this[int index] => judge(sources[index]);

    public IEnumerator<T> GetEnumerator() => sources.Select(judge).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
