namespace StudioKit.Kits.Quantities;

/// <summary>Reads a value that a person wrote, or says what is wrong with it.</summary>
/// <typeparam name="T">What is read.</typeparam>
/// <param name="text">What was written.</param>
/// <param name="value">The value, where the text was read.</param>
/// <param name="problem">Otherwise a sentence that says what is wrong and what would be accepted; empty where all is well.</param>
/// <returns>Whether the text was read.</returns>
public delegate bool TryRead<T>(string text, out T value, out string problem);
