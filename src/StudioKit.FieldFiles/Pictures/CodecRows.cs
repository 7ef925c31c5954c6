using SkiaSharp;

namespace StudioKit.FieldFiles.Pictures;

/// <summary>Rows of a JPEG.</summary>
internal sealed class CodecRows : IRowDecoder
{
    private readonly SKCodec _codec;
    private readonly SKImageInfo _info;
    private int _next;
    private bool? _isSound;

    public CodecRows(SKCodec codec)
    {
        _codec = codec;
        // No colour space asked for: clipping is a property of the numbers in the file, so they must come through unconverted.
        _info = new SKImageInfo(codec.Info.Width, codec.Info.Height, SKColorType.Rgba8888, SKAlphaType.Opaque);
    }

    public int Width => _info.Width;

    public int Height => _info.Height;

    public unsafe int Read(byte[] rgba, int rows)
    {
        rows = Math.Min(rows, Height - _next);
        _isSound ??= _codec.StartScanlineDecode(_info) == SKCodecResult.Success && _codec.ScanlineOrder == SKCodecScanlineOrder.TopDown;
        fixed (byte* target = rgba)
        {
            var done = _isSound.Value ? _codec.GetScanlines((nint)target, rows, _info.RowBytes) : 0;
            _next += done;
            return done;
        }
    }

    public void Dispose() => _codec.Dispose();
}
