namespace StudioKit.Field.Pictures;

/// <summary>A picture as rows of pixels from top to bottom: a file being decoded, or pixels that a page holds.</summary>
public interface IRowSource
{
    /// <summary>How it is called in reports, mostly its file.</summary>
    public string Name { get; }

    /// <summary>Pixels in a stored row [1].</summary>
    public int Width { get; }

    /// <summary>Stored rows [1].</summary>
    public int Height { get; }

    /// <summary>What is said of how it was taken.</summary>
    public FrameSettings Settings { get; }

    /// <summary>Codes of 255 that lossy compression makes one of [1]; 0 where nothing was lost.</summary>
    public double BrightnessStep { get; }

    /// <summary>Hands all rows to a visitor, a band at a time from top to bottom; once only.</summary>
    /// <param name="visit">Called for one band at a time.</param>
    /// <returns>None, or where and why the picture breaks off.</returns>
    public FieldDiagnostic? Read(Action<PictureBand> visit);
}
