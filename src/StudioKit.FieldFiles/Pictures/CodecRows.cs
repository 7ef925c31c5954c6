using SkiaSharp;

namespace StudioKit.FieldFiles.Pictures;

/// <summary>Rows of a JPEG.</summary>
internal sealed class CodecRows : IRowDecoder
{
    private readonly SKCodec _codec;
    private readonly SKImageInfo _info;
    private int _next;
    private readonly bool _isLarge;
    private bool? _isSound;
    private bool _hasTurn;

    /// <param name="codec">Decodes the picture.</param>
    /// <param name="isLarge">Whether the decoder holds so much of the picture that of such ones only one at a time is to be read.</param>
    public CodecRows(SKCodec codec, bool isLarge = false)
    {
        (_codec, _isLarge) = (codec, isLarge);
        // No colour space asked for: clipping is a property of the numbers in the file, so they must come through unconverted.
        _info = new SKImageInfo(codec.Info.Width, codec.Info.Height, SKColorType.Rgba8888, SKAlphaType.Opaque);
    }

    public int Width => _info.Width;

    public int Height => _info.Height;

    public unsafe int Read(byte[] rgba, int rows)
    {
        rows = Math.Min(rows, Height - _next);
        if (_isLarge && !_hasTurn)
        {
            RowsAtOnce.Large.Wait();
            _hasTurn = true;
        }

        _isSound ??= _codec.StartScanlineDecode(_info) == SKCodecResult.Success && _codec.ScanlineOrder == SKCodecScanlineOrder.TopDown;
        fixed (byte* target = rgba)
        {
            var done = _isSound.Value ? _codec.GetScanlines((nint)target, rows, _info.RowBytes) : 0;
            _next += done;
            return done;
        }
    }

    public void Dispose()
    {
        _codec.Dispose();
        if (_hasTurn)
        {
            _hasTurn = false;
            RowsAtOnce.Large.Release();
        }
    }
}
