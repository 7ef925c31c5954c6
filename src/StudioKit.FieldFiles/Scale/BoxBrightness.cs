using StudioKit.Field.Pictures;
using StudioKit.FieldFiles.Pictures;

namespace StudioKit.FieldFiles.Scale;

/// <summary>Mean brightness of a box, gathered while the picture streams by.</summary>
internal sealed class BoxBrightness(StoredBox box)
{
    // Green counts as much as red and blue together, as it does to the eye.
    private const int Weights = 4;
    private long _sum;

    /// <summary>Mean code [1], 0 to 255.</summary>
    public double Mean => _sum / (double)Weights / ((long)box.Width * box.Height);

    public void Visit(PictureBand band)
    {
        for (var row = Math.Max(box.Top - band.FirstRow, 0); row < Math.Min(band.Rows, box.Bottom - band.FirstRow); row++)
        {
            var pixels = band.Row(row);
            for (var x = box.Left; x < box.Right; x++)
            {
                _sum += pixels[4 * x] + (2 * pixels[(4 * x) + 1]) + pixels[(4 * x) + 2];
            }
        }
    }
}
