namespace StudioKit.FieldFiles.Pictures;

/// <summary>A part of a file as a stream of its own.</summary>
internal sealed class FileSection : Stream
{
    private readonly FileStream _file;
    private readonly long _start;

    public FileSection(string path, long start, long length) => (_file, _start, Length) = (File.OpenRead(path), start, length);

    public override bool CanRead => true;

    public override bool CanSeek => true;

    public override bool CanWrite => false;

    public override long Length { get; }

    public override long Position { get; set; }

    public override int Read(byte[] buffer, int offset, int count)
    {
        _file.Position = _start + Position;
        var read = _file.Read(buffer, offset, (int)Math.Clamp(Length - Position, 0, count));
        Position += read;
        return read;
    }

    public override long Seek(long offset, SeekOrigin origin) => Position = origin switch
    {
        SeekOrigin.Begin => offset,
        SeekOrigin.Current => Position + offset,
        _ => Length + offset,
    };

    public override void Flush()
    {
    }

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    protected override void Dispose(bool disposing)
    {
        if (disposing)
        {
            _file.Dispose();
        }

        base.Dispose(disposing);
    }
}
