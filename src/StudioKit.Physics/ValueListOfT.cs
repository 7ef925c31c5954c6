using System.Collections;
using System.Runtime.CompilerServices;

namespace StudioKit.Physics;

/// <summary>A list that never changes and is equal to another where every element is, so that a record that holds it compares by value throughout.</summary>
/// <remarks>Write it as a collection expression, e.g. <c>with { Lights = [.. lights, another] }</c>. The hash is worked out once, when it is asked for.</remarks>
/// <typeparam name="T">What it holds; must never change either, and compare by value.</typeparam>
[CollectionBuilder(typeof(ValueList), nameof(ValueList.Create))]
public sealed class ValueList<T> : IReadOnlyList<T>, IEquatable<ValueList<T>>
{
    private readonly T[] _elements;
    private int _hash;

    internal ValueList(T[] elements) => _elements = elements;

    /// <inheritdoc/>
    public int Count => _elements.Length;

    /// <inheritdoc/>
    public T this[int index] => _elements[index];

    /// <summary>Whether two lists hold equal elements in the same order, or neither is there.</summary>
    public static bool operator ==(ValueList<T>? left, ValueList<T>? right) => left is null ? right is null : left.Equals(right);

    /// <summary>Whether two lists differ.</summary>
    public static bool operator !=(ValueList<T>? left, ValueList<T>? right) => !(left == right);

    /// <inheritdoc/>
    public IEnumerator<T> GetEnumerator() => ((IEnumerable<T>)_elements).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => _elements.GetEnumerator();

    /// <inheritdoc/>
    public bool Equals(ValueList<T>? other) =>
        ReferenceEquals(this, other) || (other is not null && Count == other.Count && GetHashCode() == other.GetHashCode() && _elements.AsSpan().SequenceEqual(other._elements));

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as ValueList<T>);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        // Nought stands for "not worked out yet"; a list whose hash is nought pays again each time, which is rare.
        if (_hash == 0)
        {
            var hash = new HashCode();
            hash.Add(_elements.Length);
            foreach (var element in _elements)
            {
                hash.Add(element);
            }

            _hash = hash.ToHashCode();
        }

        return _hash;
    }

    /// <summary>The elements between brackets.</summary>
    public override string ToString() => $"[{string.Join(", ", _elements)}]";
}
