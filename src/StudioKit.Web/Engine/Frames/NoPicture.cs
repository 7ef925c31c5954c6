namespace StudioKit.Web.Engine.Frames;

/// <summary>Where nobody hands in pictures.</summary>
internal sealed class NoPicture : IDecodedPicture
{
    /// <inheritdoc/>
    public int Width => 0;

    /// <inheritdoc/>
    public int Height => 0;

    /// <inheritdoc/>
    public byte[] Head => [];

    /// <inheritdoc/>
    public void Copy(int first, Span<byte> rgba) => throw new InvalidOperationException("No picture was handed in.");
}
