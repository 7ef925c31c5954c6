namespace StudioKit.Physics;

/// <summary>Makes lists that are equal where their elements are.</summary>
/// <remarks>Plain loops: the library's own, over another assembly's values, would be compiled anew at every start.</remarks>
public static class ValueList
{
    /// <summary>A list of elements in the order given; collection expressions call this.</summary>
    /// <param name="elements">The elements, which are copied.</param>
    public static ValueList<T> Create<T>(ReadOnlySpan<T> elements)
    {
        var copy = new T[elements.Length];
        for (var i = 0; i < copy.Length; i++)
        {
            copy[i] = elements[i];
        }

        return new ValueList<T>(copy);
    }

    /// <summary>A list with an element made of each source, in the same order.</summary>
    /// <param name="sources">The sources.</param>
    /// <param name="make">Makes an element.</param>
    public static ValueList<T> From<TSource, T>(TSource[] sources, Func<TSource, T> make)
    {
        ArgumentNullException.ThrowIfNull(sources);
        ArgumentNullException.ThrowIfNull(make);

        var made = new T[sources.Length];
        for (var i = 0; i < made.Length; i++)
        {
            made[i] = make(sources[i]);
        }

        return new ValueList<T>(made);
    }
}
