namespace StudioKit.Physics.Light.Lobes;

/// <summary>Carries the first fault of a photometric file's text up to the door, where it becomes a value.</summary>
internal sealed class IesFormatException(int line, int column, string message) : Exception(message)
{
    public int Line { get; } = line;

    public int Column { get; } = column;
}
