namespace StudioKit.FieldFiles.Scale;

/// <summary>A picture ready to be copied with a bar on it, everything outside the bar as it is.</summary>
internal interface IBarredCopy : IDisposable
{
    /// <summary>Mean brightness under the bar as the file codes it [1], 0 to 255.</summary>
    public double Brightness { get; }

    /// <summary>What besides the pixels under the bar is another in the copy, one sentence each; mostly nothing.</summary>
    public IReadOnlyList<string> Changes { get; }

    /// <summary>Writes the copy.</summary>
    /// <param name="stamp">The bar.</param>
    /// <param name="target">Where it goes: empty, and one that can be sought in.</param>
    /// <exception cref="InvalidDataException">The picture is damaged.</exception>
    /// <exception cref="IOException">A file cannot be read or written.</exception>
    public void Write(BarStamp stamp, Stream target);
}
