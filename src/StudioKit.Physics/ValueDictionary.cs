using System.Collections;
using System.Diagnostics.CodeAnalysis;

namespace StudioKit.Physics;

/// <summary>Values by name that never change and are equal to another dictionary's where every name has an equal value, in whatever order they were put in.</summary>
/// <typeparam name="T">What stands under a name; must never change either, and compare by value.</typeparam>
public sealed class ValueDictionary<T> : IReadOnlyDictionary<string, T>, IEquatable<ValueDictionary<T>>
{
    private readonly Dictionary<string, T> _values;

    /// <summary>Copies values by name.</summary>
    /// <param name="values">The values; names are told apart letter by letter.</param>
    public ValueDictionary(IEnumerable<KeyValuePair<string, T>> values) => _values = new(values, StringComparer.Ordinal);

    /// <summary>A dictionary without any name.</summary>
    public ValueDictionary() => _values = [];

    /// <inheritdoc/>
    public int Count => _values.Count;

    /// <inheritdoc/>
    public IEnumerable<string> Keys => _values.Keys;

    /// <inheritdoc/>
    public IEnumerable<T> Values => _values.Values;

    /// <inheritdoc/>
    public T this[string key] => _values[key];

    /// <summary>Whether two dictionaries hold equal values under the same names, or neither is there.</summary>
    public static bool operator ==(ValueDictionary<T>? left, ValueDictionary<T>? right) => left is null ? right is null : left.Equals(right);

    /// <summary>Whether two dictionaries differ.</summary>
    public static bool operator !=(ValueDictionary<T>? left, ValueDictionary<T>? right) => !(left == right);

    /// <inheritdoc/>
    public bool ContainsKey(string key) => _values.ContainsKey(key);

    /// <inheritdoc/>
    public bool TryGetValue(string key, [MaybeNullWhen(false)] out T value) => _values.TryGetValue(key, out value);

    /// <inheritdoc/>
    public IEnumerator<KeyValuePair<string, T>> GetEnumerator() => _values.GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => _values.GetEnumerator();

    /// <inheritdoc/>
    public bool Equals(ValueDictionary<T>? other) => ReferenceEquals(this, other) || (other is not null && Count == other.Count && _values.All(other.Holds));

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as ValueDictionary<T>);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        // A sum, as it does not depend on the order.
        var sum = 0;
        foreach (var (name, value) in _values)
        {
            sum = unchecked(sum + HashCode.Combine(name, value));
        }

        return sum;
    }

    private bool Holds(KeyValuePair<string, T> pair) => TryGetValue(pair.Key, out var own) && EqualityComparer<T>.Default.Equals(own, pair.Value);
}
