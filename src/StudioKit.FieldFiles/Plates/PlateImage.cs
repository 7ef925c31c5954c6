using SkiaSharp;
using StudioKit.Field;
using StudioKit.Field.Log;
using StudioKit.Field.Pictures;
using StudioKit.Field.Plates;
using StudioKit.FieldFiles.Pictures;
using StudioKit.FieldFiles.Scale;

namespace StudioKit.FieldFiles.Plates;

/// <summary>A portrait made ready for print: turned as it is seen, no finer than paper shows, and without anything that the file says of itself.</summary>
public static class PlateImage
{
    // Finer than a reader sees at hand (common practice, no source).
    private const double PixelsPerMillimetre = 14;
    private const int Quality = 92;

    /// <summary>Finds a frame's file in a folder.</summary>
    /// <param name="folder">Folder with the pictures.</param>
    /// <param name="frame">The frame.</param>
    /// <returns>The file with what its sidecar says of its scale, or why there is none.</returns>
    public static (PlateFile? File, PlateOmissionReason Fault) Find(string folder, FieldFrame frame)
    {
        ArgumentNullException.ThrowIfNull(frame);
        var path = Path.Combine(folder, frame.FileName);
        if (!File.Exists(path))
        {
            return (null, PlateOmissionReason.NoFile);
        }

        using var picture = FramePicture.Open(path).Value;
        if (picture is null)
        {
            return (null, PlateOmissionReason.Unreadable);
        }

        var (seen, recorded) = (Seen(picture), ScaleSidecar.ReadBeside(path));
        var size = new PixelDimensions(seen.Width, seen.Height);
        return (new PlateFile(path, size, recorded is not null && recorded.HoldsFor(size) ? recorded : null), default);
    }

    /// <summary>Makes the picture ready.</summary>
    /// <param name="path">Picture file.</param>
    /// <param name="width">Width on paper, as seen [mm]; &gt; 0.</param>
    /// <param name="barScale">Size of a pixel at the subject [m], by which a bar is looked for in the picture; none where it is known whether there is one.</param>
    /// <returns>The picture for print, or why there is none.</returns>
    public static FieldResult<PlatePrint> Print(string path, double width, double? barScale = null)
    {
        return FramePicture.With(path, picture => Print(picture, width, barScale));
    }

    private static FieldResult<PlatePrint> Print(FramePicture picture, double width, double? barScale)
    {
        // Of a picture a few pixels high something has to stay.
        var step = Math.Clamp((int)(Seen(picture).Width / (width * PixelsPerMillimetre)), 1, Math.Min(picture.Width, picture.Height));
        var bars = barScale is { } scale ? BarSearch.In(Seen(picture), scale) : [];
        using var small = new SKBitmap(new SKImageInfo(picture.Width / step, picture.Height / step, SKColorType.Rgba8888, SKAlphaType.Opaque));
        if (Shrink(picture, small, step, bars) is { } broken)
        {
            return broken;
        }

        using var seen = Turned(small, picture.Settings.Orientation);
        using var data = seen.Encode(SKEncodedImageFormat.Jpeg, Quality);
        return new PlatePrint(data.ToArray(), bars.Any(bar => bar.IsFound));
    }

    private static SeenPicture Seen(FramePicture picture) => new(picture.Settings.Orientation, picture.Width, picture.Height);

    // Means of step × step pixels, as the picture streams by: the whole of it is never in memory.
    private static unsafe FieldDiagnostic? Shrink(FramePicture picture, SKBitmap small, int step, IReadOnlyList<BarSearch> bars)
    {
        var target = (byte*)small.GetPixels();
        var sums = new int[small.Width * 4];
        return picture.Read(band =>
        {
            foreach (var bar in bars)
            {
                bar.Visit(band);
            }

            for (var row = 0; row < band.Rows; row++)
            {
                var y = (band.FirstRow + row) / step;
                Gather(band.Row(row), sums, step);
                if ((band.FirstRow + row) % step == step - 1 && y < small.Height)
                {
                    for (var i = 0; i < sums.Length; i++)
                    {
                        target[((long)y * sums.Length) + i] = i % 4 == 3 ? (byte)255 : (byte)((sums[i] + (step * step / 2)) / (step * step));
                    }

                    Array.Clear(sums);
                }
            }
        });
    }

    private static void Gather(ReadOnlySpan<byte> pixels, int[] sums, int step)
    {
        for (var i = 0; i < sums.Length / 4 * step; i++)
        {
            var sum = i / step * 4;
            sums[sum] += pixels[4 * i];
            sums[sum + 1] += pixels[(4 * i) + 1];
            sums[sum + 2] += pixels[(4 * i) + 2];
        }
    }

    private static SKBitmap Turned(SKBitmap stored, PictureOrientation orientation)
    {
        var place = new SeenPicture(orientation, stored.Width, stored.Height);
        var seen = new SKBitmap(new SKImageInfo(place.Width, place.Height, SKColorType.Rgba8888, SKAlphaType.Opaque));
        using var canvas = new SKCanvas(seen);
        canvas.SetMatrix(StoredMatrix.Of(place).Invert());
        canvas.DrawBitmap(stored, 0, 0, new SKSamplingOptions(SKFilterMode.Nearest));
        return seen;
    }
}
