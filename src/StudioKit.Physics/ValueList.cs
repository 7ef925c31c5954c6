namespace StudioKit.Physics;

/// <summary>Makes lists that are equal where their elements are.</summary>
public static class ValueList
{
    /// <summary>A list of elements in the order given; collection expressions call this.</summary>
    /// <param name="elements">The elements, which are copied.</param>
    public static ValueList<T> Create<T>(ReadOnlySpan<T> elements) => elements.IsEmpty ? ValueList<T>.Empty : new(elements.ToArray());
}
