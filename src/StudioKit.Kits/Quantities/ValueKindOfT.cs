namespace StudioKit.Kits.Quantities;

/// <summary>One kind of value with how it is read and written.</summary>
/// <param name="Noun">With its article, for messages and documentation.</param>
/// <param name="Example">A value as people write it.</param>
/// <param name="Read">Reads the text without any uncertainty.</param>
/// <param name="Write">Writes a value so that <paramref name="Read"/> reads it again.</param>
/// <typeparam name="T">
/// What the text is read into: a number in the unit table's own unit, a word, or a type of this assembly; the quantity is made of it at the key. Code that is
/// generic over another assembly's value types cannot be compiled ahead, so a kind of lengths or f-numbers would triple the time that it takes to start.
/// </typeparam>
internal sealed record ValueKind<T>(string Noun, string Example, Func<string, Reading<T>> Read, Func<T, string> Write) : ValueKind(Noun, Example)
{
    /// <summary>Smallest and largest number in the value, in the unit table's units; none where bounds make no sense.</summary>
    public Func<T, Extent>? Measure { get; init; }
}
