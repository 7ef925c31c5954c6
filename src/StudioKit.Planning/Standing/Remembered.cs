using System.Collections;

namespace StudioKit.Planning.Standing;

/// <summary>A sequence that is worked out as far as anybody has asked, and no part of it twice.</summary>
/// <param name="source">What it is worked out from; gone through once.</param>
internal sealed class Remembered<T>(IEnumerable<T> source) : IEnumerable<T>
{
    private readonly List<T> _known = [];
    private readonly IEnumerator<T> _rest = source.GetEnumerator();

    public IEnumerator<T> GetEnumerator()
    {
        for (var i = 0; ; i++)
        {
            if (i == _known.Count)
            {
                if (!_rest.MoveNext())
                {
                    yield break;
                }

                _known.Add(_rest.Current);
            }

            yield return _known[i];
        }
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
