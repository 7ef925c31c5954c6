using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;

namespace StudioKit.Web.Engine;

/// <summary>The picture that the worker's script has decoded for the question in hand.</summary>
[SupportedOSPlatform("browser")]
internal sealed partial class BrowserPicture : IDecodedPicture
{
    private const string Module = "engine";

    /// <inheritdoc/>
    public int Width => PixelsAcross();

    /// <inheritdoc/>
    public int Height => PixelsDown();

    /// <inheritdoc/>
    public byte[] Head => FirstBytes();

    /// <inheritdoc/>
    public void Copy(int first, Span<byte> rgba) => CopyRows(first, rgba);

    [JSImport("pixelsAcross", Module)]
    private static partial int PixelsAcross();

    [JSImport("pixelsDown", Module)]
    private static partial int PixelsDown();

    [JSImport("firstBytes", Module)]
    private static partial byte[] FirstBytes();

    [JSImport("copyRows", Module)]
    private static partial void CopyRows(int first, [JSMarshalAs<JSType.MemoryView>] Span<byte> rgba);
}
