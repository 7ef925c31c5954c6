using SkiaSharp;
using StudioKit.Field.Pictures;

namespace StudioKit.FieldFiles.Pictures;

/// <summary>Rows of a JPEG or PNG. Interlaced PNGs cannot be read row by row, so those are decoded whole.</summary>
internal sealed class CodecRows : IRowDecoder
{
    private readonly SKCodec _codec;
    private readonly SKImageInfo _info;
    private SKBitmap? _whole;
    private int _next;
    private bool _started;

    public CodecRows(SKCodec codec)
    {
        _codec = codec;
        var alpha = codec.Info.AlphaType == SKAlphaType.Opaque ? SKAlphaType.Opaque : SKAlphaType.Unpremul;
        // No colour space asked for: clipping is a property of the numbers in the file, so they must come through unconverted.
        _info = new SKImageInfo(codec.Info.Width, codec.Info.Height, SKColorType.Rgba8888, alpha);
    }

    public int Width => _info.Width;

    public int Height => _info.Height;

    public PictureOrientation Orientation => (PictureOrientation)_codec.EncodedOrigin;

    public unsafe int Read(byte[] rgba, int rows)
    {
        rows = Math.Min(rows, Height - _next);
        Start();
        fixed (byte* target = rgba)
        {
            var done = _whole is null
                ? _codec.GetScanlines((nint)target, rows, _info.RowBytes)
                : CopyWhole(rgba, rows);
            _next += done;
            return done;
        }
    }

    public void Dispose()
    {
        _whole?.Dispose();
        _codec.Dispose();
    }

    private void Start()
    {
        if (_started)
        {
            return;
        }

        _started = true;
        if (_codec.StartScanlineDecode(_info) == SKCodecResult.Success && _codec.ScanlineOrder == SKCodecScanlineOrder.TopDown)
        {
            return;
        }

        _whole = new SKBitmap(_info);
        if (_codec.GetPixels(_info, _whole.GetPixels()) != SKCodecResult.Success)
        {
            _next = Height;
        }
    }

    private int CopyWhole(byte[] rgba, int rows)
    {
        rows = Math.Min(rows, Height - _next);
        _whole!.GetPixelSpan().Slice(_next * _info.RowBytes, rows * _info.RowBytes).CopyTo(rgba);
        return rows;
    }
}
