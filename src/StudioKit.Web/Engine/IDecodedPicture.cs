namespace StudioKit.Web.Engine;

/// <summary>The picture that somebody else decoded for the question in hand: the browser on the page, a test outside it.</summary>
internal interface IDecodedPicture
{
    /// <summary>Pixels across, as seen; 0 where it cannot be decoded.</summary>
    public int Width { get; }

    /// <summary>Pixels down, as seen; 0 where it cannot be decoded.</summary>
    public int Height { get; }

    /// <summary>First bytes of its file.</summary>
    public byte[] Head { get; }

    /// <summary>Copies rows, four bytes a pixel.</summary>
    /// <param name="first">First row, from 0.</param>
    /// <param name="rgba">Filled with as many whole rows as it holds.</param>
    public void Copy(int first, Span<byte> rgba);
}
