using StudioKit.Field.Scale;

namespace StudioKit.FieldFiles.Scale;

/// <summary>A copy with its scale bar on.</summary>
/// <param name="Path">The copy.</param>
/// <param name="Sidecar">Its XMP sidecar.</param>
/// <param name="Bar">The bar drawn.</param>
/// <param name="IsWhite">Whether it was drawn white, on a dark corner.</param>
public sealed record ScaledPicture(string Path, string Sidecar, ScaleBar Bar, bool IsWhite)
{
    /// <summary>What besides the pixels under the bar is another than in the original, one sentence each; mostly nothing.</summary>
    public IReadOnlyList<string> Changes { get; init; } = [];
}
