using BitMiracle.LibTiff.Classic;

namespace StudioKit.FieldFiles.Pictures.Tiffs;

/// <summary>The end of a stream, from a place on, for the library to write to as if it were a file of its own.</summary>
internal sealed class TiffPart(Stream stream) : TiffStream
{
    private readonly long _start = stream.Length;

    /// <summary>Where in the stream the part begins.</summary>
    public long Start => _start;

    public override int Read(object clientData, byte[] buffer, int offset, int count) => stream.CanRead ? stream.Read(buffer, offset, count) : 0;

    public override void Write(object clientData, byte[] buffer, int offset, int count) => stream.Write(buffer, offset, count);

    public override long Seek(object clientData, long offset, SeekOrigin origin) =>
        stream.Seek(origin == SeekOrigin.Begin ? _start + offset : offset, origin) - _start;

    public override void Close(object clientData)
    {
    }

    public override long Size(object clientData) => stream.Length - _start;
}
