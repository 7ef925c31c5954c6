namespace StudioKit.FieldFiles.Pictures;

/// <summary>Whole pixels of a picture as stored.</summary>
/// <param name="Left">First column.</param>
/// <param name="Top">First row.</param>
/// <param name="Right">Column after the last.</param>
/// <param name="Bottom">Row after the last.</param>
internal readonly record struct StoredBox(int Left, int Top, int Right, int Bottom)
{
    public int Width => Right - Left;

    public int Height => Bottom - Top;
}
