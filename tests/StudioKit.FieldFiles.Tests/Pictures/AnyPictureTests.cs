using StudioKit.Field.Scale;
using StudioKit.FieldFiles.Frames;
using StudioKit.FieldFiles.Pictures;
using StudioKit.FieldFiles.Scale;
using StudioKit.FieldFiles.Tests.Scale;

namespace StudioKit.FieldFiles.Tests.Pictures;

/// <summary>What holds for any file called a picture, however it is spoilt.</summary>
public sealed class AnyPictureTests : IDisposable
{
    private readonly ScratchFolder _scratch = new();
    private int _count;

    public void Dispose() => _scratch.Dispose();

    /// <summary>A file is read or refused in words: any exception would fail the test.</summary>
    [Fact]
    public void Any_picture_is_analysed_or_refused_in_words() => AnyPicture.Any.Sample(
        picture =>
        {
            var path = Write(picture);

            var analysed = TestFrameFile.AnalyseBarePanel(path);

            return (analysed.IsSound || analysed.Diagnostics.All(fault => fault.Message.Length > 10)) && File.ReadAllBytes(path).AsSpan().SequenceEqual(picture.Bytes);
        },
        iter: RandomFiles.Count);

    /// <summary>
    /// Both files are decoded the same way and compared outside the bar's box with a border of two groups of blocks, over which a decoder may smooth
    /// colours; PNGs and TIFFs have no such border. A whole picture that has room for a bar is never refused.
    /// </summary>
    [Fact]
    public void Any_picture_is_copied_with_its_pixels_away_from_the_bar_as_they_were_or_refused_in_words() => AnyPicture.Any.Sample(
        picture =>
        {
            var path = Write(picture);
            var copy = path + ".copy" + picture.Extension;

            var made = Scaled.Make(new ScaleJob(path, copy, new PictureScale(1e-5, new ScaleBasis.Given())));

            if (!File.ReadAllBytes(path).AsSpan().SequenceEqual(picture.Bytes))
            {
                return false;
            }

            return made.IsSound
                ? IsSameAwayFromTheBar(path, copy, picture.Extension is ".jpg" or ".raw")
                : !File.Exists(copy) && !(picture.IsWhole && made.Diagnostics[0].Code != "FLD314") && made.Diagnostics[0].Message.Length > 10;
        },
        iter: RandomFiles.Count);

    private static bool IsSameAwayFromTheBar(string original, string copy, bool isLossy)
    {
        var (before, wide, high) = Pixels(original);
        var (after, wideAfter, highAfter) = Pixels(copy);
        var border = isLossy ? 32 : 0;

        // The bar takes a quarter of the width at most, or its letters do; with letters of 12 pixels at least and their border that is 60 pixels by 28.
        var (left, top) = (wide - Math.Max(wide * 0.32, 60) - border, high - Math.Max(Math.Min(wide, high) * 0.12, 28) - border);
        return (wide, high) == (wideAfter, highAfter) && Enumerable.Range(0, wide * high)
            .Where(i => i % wide < left || i / wide < top)
            .All(i => before.AsSpan(4 * i, 3).SequenceEqual(after.AsSpan(4 * i, 3)));
    }

    private static (byte[] Rgba, int Wide, int High) Pixels(string path)
    {
        using var picture = FramePicture.Open(path).Value!;
        var rgba = new byte[4 * picture.Width * picture.Height];
        picture.Read(band => band.Rgba.AsSpan(0, 4 * band.Width * band.Rows).CopyTo(rgba.AsSpan(4 * band.Width * band.FirstRow)));
        return (rgba, picture.Width, picture.Height);
    }

    private string Write(AnyPicture picture)
    {
        // Samples run side by side.
        var path = _scratch.File($"{Interlocked.Increment(ref _count)}{picture.Extension}");
        File.WriteAllBytes(path, picture.Bytes);
        return path;
    }
}
