namespace StudioKit.Cli;

/// <summary>Reads a value that a person wrote, or says what is wrong with it.</summary>
internal delegate bool TryRead<T>(string text, out T value, out string problem);
