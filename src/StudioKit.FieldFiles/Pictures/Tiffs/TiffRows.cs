using BitMiracle.LibTiff.Classic;

namespace StudioKit.FieldFiles.Pictures.Tiffs;

/// <summary>Rows of a plain TIFF as eight bits each of red, green and blue.</summary>
internal sealed class TiffRows : IRowDecoder
{
    private readonly TiffKind _kind;
    private readonly TiffSamples _samples;
    private readonly byte[] _row;
    private readonly byte[][] _palette;
    private int _next;
    private bool _isBroken;

    private TiffRows(TiffKind kind, TiffSamples samples, byte[][] palette)
    {
        (_kind, _samples, _palette) = (kind, samples, palette);
        _row = new byte[samples.RowBytes];
    }

    public int Width => _kind.Width;

    public int Height => _kind.Height;

    /// <summary>Opens a TIFF.</summary>
    /// <exception cref="InvalidDataException">It is damaged.</exception>
    /// <exception cref="NotSupportedException">It is of a kind that cannot be read, or takes too much memory.</exception>
    public static IRowDecoder Open(string path)
    {
        var tiff = TiffKind.OpenFile(path);
        try
        {
            var kind = TiffKind.Of(tiff);
            PictureBounds.Check(kind.Width, kind.Height);
            return kind.IsPlain
                ? new TiffRows(kind, TiffSamples.Open(path, tiff, kind), Palette(tiff, kind))
                : Damage.Told(() => TiffRgbaRows.Open(tiff, kind));
        }
        catch
        {
            tiff.Dispose();
            throw;
        }
    }

    public int Read(byte[] rgba, int rows)
    {
        var done = 0;
        try
        {
            for (; done < rows && _next < Height && !_isBroken; done++, _next++)
            {
                _samples.Read(_row);
                Convert(rgba.AsSpan(done * Width * 4, Width * 4));
            }
        }
        catch (InvalidDataException)
        {
            _isBroken = true;
        }

        return done;
    }

    public void Dispose() => _samples.Dispose();

    // Three columns of two bytes each, of which the high one is worth most; some files have the low one alone.
    private static byte[][] Palette(Tiff tiff, TiffKind kind)
    {
        if (kind.Colour != Photometric.PALETTE)
        {
            return [];
        }

        var map = tiff.GetField(TiffTag.COLORMAP) is { Length: >= 3 } field ? field.Take(3).Select(part => part.ToShortArray() ?? []).ToArray() : [];
        if (map.Length < 3 || Array.Exists(map, part => part.Length <= kind.Most))
        {
            throw new InvalidDataException("The picture has no palette.");
        }

        var shift = Array.TrueForAll(map, part => Array.TrueForAll(part, value => (ushort)value < 256)) ? 0 : 8;
        return [.. Enumerable.Range(0, kind.Most + 1).Select(i => new[] { (byte)((ushort)map[0][i] >> shift), (byte)((ushort)map[1][i] >> shift), (byte)((ushort)map[2][i] >> shift) })];
    }

    private void Convert(Span<byte> rgba)
    {
        if (_kind is { Colour: Photometric.RGB, Depth: 8 or 16 })
        {
            ConvertColours(rgba);
            return;
        }

        Span<byte> pixel = stackalloc byte[8];
        for (var x = 0; x < Width; x++)
        {
            for (var k = 0; k < _kind.Samples; k++)
            {
                pixel[k] = Eight((x * _kind.Samples) + k);
            }

            var target = rgba.Slice(4 * x, 4);
            Colour(pixel, x, target);
            target[3] = 255;
        }
    }

    // Nearly all photographs are of this kind. Of two bytes the second is worth most.
    private void ConvertColours(Span<byte> rgba)
    {
        var (size, step) = (_kind.Depth / 8, _kind.Samples * _kind.Depth / 8);
        for (var (x, from) = (0, size - 1); x < rgba.Length; x += 4, from += step)
        {
            (rgba[x], rgba[x + 1], rgba[x + 2], rgba[x + 3]) = (_row[from], _row[from + size], _row[from + (2 * size)], 255);
        }
    }

    private void Colour(ReadOnlySpan<byte> pixel, int x, Span<byte> target)
    {
        switch (_kind.Colour)
        {
            case Photometric.RGB:
                pixel[..3].CopyTo(target);
                break;
            case Photometric.PALETTE:
                _palette[TiffSample.Get(_row, x * _kind.Samples, _kind.Depth)].CopyTo(target);
                break;
            case Photometric.SEPARATED:
                for (var k = 0; k < 3; k++)
                {
                    target[k] = (byte)((255 - pixel[k]) * (255 - pixel[3]) / 255);
                }

                break;
            case Photometric.MINISWHITE:
                target[..3].Fill((byte)(255 - pixel[0]));
                break;
            default:
                target[..3].Fill(pixel[0]);
                break;
        }
    }

    private byte Eight(int place) => _kind.Depth switch
    {
        16 => _row[(2 * place) + 1],
        8 => _row[place],
        _ => (byte)(TiffSample.Get(_row, place, _kind.Depth) * 255 / _kind.Most),
    };
}
