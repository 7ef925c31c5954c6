namespace StudioKit.FieldFiles.Pictures;

/// <summary>Decodes a picture from top to bottom.</summary>
internal interface IRowDecoder : IDisposable
{
    public int Width { get; }

    public int Height { get; }

    /// <summary>Decodes the next rows; fewer than asked for means that the file ended early or is damaged.</summary>
    public int Read(byte[] rgba, int rows);
}
