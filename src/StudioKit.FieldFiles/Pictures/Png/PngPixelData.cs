using System.IO.Compression;

namespace StudioKit.FieldFiles.Pictures.Png;

/// <summary>The compressed pixels of a PNG: the data of its pixel chunks as one stream.</summary>
internal sealed class PngPixelData : Stream
{
    private readonly Stream _file;
    private readonly IEnumerator<PngChunk> _chunks;
    private long _at;
    private int _left;

    private PngPixelData(Stream file, IReadOnlyList<PngChunk> chunks) => (_file, _chunks) = (file, chunks.GetEnumerator());

    /// <summary>Unpacked rows, each behind the byte that names its filter.</summary>
    public static Stream Unpacked(Stream file, IReadOnlyList<PngChunk> chunks) =>
        new BufferedStream(new ZLibStream(new PngPixelData(file, chunks), CompressionMode.Decompress), 1 << 16);

    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => false;

    public override long Length => throw new NotSupportedException();

    public override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    public override int Read(byte[] buffer, int offset, int count)
    {
        while (_left == 0)
        {
            if (!_chunks.MoveNext())
            {
                return 0;
            }

            (_at, _left) = (_chunks.Current.Start, _chunks.Current.Length);
        }

        _file.Position = _at;
        var read = _file.Read(buffer, offset, Math.Min(count, _left));
        _at += read;
        _left = read == 0 ? 0 : _left - read;
        return read;
    }

    public override void Flush()
    {
    }

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    protected override void Dispose(bool disposing)
    {
        if (disposing)
        {
            _chunks.Dispose();
            _file.Dispose();
        }

        base.Dispose(disposing);
    }
}
