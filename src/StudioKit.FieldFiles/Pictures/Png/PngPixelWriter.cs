namespace StudioKit.FieldFiles.Pictures.Png;

/// <summary>Cuts packed pixels into chunks.</summary>
internal sealed class PngPixelWriter(Stream target) : Stream
{
    private readonly byte[] _chunk = new byte[1 << 16];
    private int _filled;

    public override bool CanRead => false;

    public override bool CanSeek => false;

    public override bool CanWrite => true;

    public override long Length => throw new NotSupportedException();

    public override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    public override void Write(byte[] buffer, int offset, int count)
    {
        while (count > 0)
        {
            var part = Math.Min(count, _chunk.Length - _filled);
            Array.Copy(buffer, offset, _chunk, _filled, part);
            (_filled, offset, count) = (_filled + part, offset + part, count - part);
            if (_filled == _chunk.Length)
            {
                WriteChunk();
            }
        }
    }

    public override void Flush()
    {
    }

    public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    protected override void Dispose(bool disposing)
    {
        if (disposing && _filled > 0)
        {
            WriteChunk();
        }

        base.Dispose(disposing);
    }

    private void WriteChunk()
    {
        PngChunk.Write(target, PngChunk.Pixels, _chunk.AsSpan(0, _filled));
        _filled = 0;
    }
}
