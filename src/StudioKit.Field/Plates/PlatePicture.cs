namespace StudioKit.Field.Plates;

/// <summary>One portrait for a plate.</summary>
/// <param name="Path">Picture file.</param>
/// <param name="PixelsWide">Pixels across, as seen [1]; ≥ 1.</param>
/// <param name="PixelsHigh">Pixels down, as seen [1]; ≥ 1.</param>
/// <param name="MetresPerPixel">Size of a pixel at the subject [m]; &gt; 0.</param>
/// <param name="Name">Name of the subject.</param>
/// <param name="Caption">Lines under the name: sex and stage, place and date, who.</param>
public sealed record PlatePicture(
    string Path, int PixelsWide, int PixelsHigh, double MetresPerPixel, string Name, IReadOnlyList<string> Caption)
{
    /// <summary>Its file, under the name that leaves the log.</summary>
    public string FileName { get; init; } = "";

    /// <summary>Whether a scale bar is drawn into the picture itself, so that it is given no second one.</summary>
    public bool HasBar { get; init; }

    /// <summary>Whether the name is that of a genus or of anything below it, which is set in italics.</summary>
    public bool IsScientific { get; init; }
}
