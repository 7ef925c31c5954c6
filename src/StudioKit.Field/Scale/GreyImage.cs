using StudioKit.Field.Pictures;

namespace StudioKit.Field.Scale;

/// <summary>Brightness of a picture, made smaller by averaging whole pixels.</summary>
internal sealed class GreyImage
{
    // Wide enough that a millimetre is still several points across at a tenth of life size.
    private const int LargestSide = 2400;
    private readonly float[] _sums;

    private GreyImage(int width, int height)
    {
        Factor = Math.Max(1, (Math.Max(width, height) + LargestSide - 1) / LargestSide);
        Width = width / Factor;
        Height = height / Factor;
        _sums = new float[Width * Height];
    }

    /// <summary>Pixels of the file along one point of this image.</summary>
    public int Factor { get; }

    public int Width { get; }

    public int Height { get; }

    public static FieldResult<GreyImage> Read(IRowSource picture)
    {
        var image = new GreyImage(picture.Width, picture.Height);
        return picture.Read(image.Add) is { } broken ? broken : image;
    }

    /// <summary>The same with every two by two points made one, for looking around quickly.</summary>
    public GreyImage Halved()
    {
        var half = new GreyImage(Width / 2, Height / 2);
        for (var y = 0; y < half.Height; y++)
        {
            for (var x = 0; x < half.Width; x++)
            {
                var i = (2 * y * Width) + (2 * x);
                half._sums[(y * half.Width) + x] = _sums[i] + _sums[i + 1] + _sums[i + Width] + _sums[i + Width + 1];
            }
        }

        return half;
    }

    /// <summary>Brightness between the points, by bilinear interpolation.</summary>
    public float At(double x, double y)
    {
        var (i, j) = ((int)x, (int)y);
        var (u, v) = ((float)(x - i), (float)(y - j));
        var top = Lerp(_sums[(j * Width) + i], _sums[(j * Width) + Math.Min(i + 1, Width - 1)], u);
        j = Math.Min(j + 1, Height - 1);
        return Lerp(top, Lerp(_sums[(j * Width) + i], _sums[(j * Width) + Math.Min(i + 1, Width - 1)], u), v);
    }

    public bool Contains(double x, double y) => x >= 0 && y >= 0 && x <= Width - 1 && y <= Height - 1;

    private static float Lerp(float a, float b, float share) => a + ((b - a) * share);

    private void Add(PictureBand band)
    {
        for (var row = 0; row < band.Rows; row++)
        {
            var y = (band.FirstRow + row) / Factor;
            if (y >= Height)
            {
                return;
            }

            var pixels = band.Row(row);
            for (var x = 0; x < Width * Factor; x++)
            {
                _sums[(y * Width) + (x / Factor)] += Brightness.Of(pixels[(4 * x)..]);
            }
        }
    }
}
