using System.Runtime.CompilerServices;
using StudioKit.Field.Pictures;

namespace StudioKit.Field.Analysis;

/// <summary>Gathers block statistics while a picture streams by.</summary>
internal sealed class BlockAccumulator
{
    // About this many blocks along the longer side resolve a subject's outline and still average out noise.
    private const int BlocksAlong = 400;
    private const int Saturated = 255;
    private const int CodesBelow = 10;
    private readonly BlockGrid _grid;
    private readonly long[] _worth;

    public BlockAccumulator(int width, int height, double brightnessStep, ToneCurve curve)
    {
        _worth = Worth(brightnessStep, curve);
        var size = Math.Max(4, (Math.Max(width, height) + BlocksAlong - 1) / BlocksAlong);
        _grid = new BlockGrid((width + size - 1) / size, (height + size - 1) / size, size);
    }

    public BlockGrid Grid => _grid;

    public void Visit(PictureBand band)
    {
        var above = ReadOnlySpan<byte>.Empty;
        for (var row = 0; row < band.Rows; row++)
        {
            var pixels = band.Row(row);
            VisitRow(pixels, above, (band.FirstRow + row) / _grid.BlockSize);
            above = pixels;
        }
    }

    private void VisitRow(ReadOnlySpan<byte> pixels, ReadOnlySpan<byte> above, int blockRow)
    {
        var step = _grid.BlockSize * 4;
        for (var column = 0; column < _grid.Columns; column++)
        {
            var start = column * step;
            var length = Math.Min(step, pixels.Length - start);
            var run = pixels.Slice(start, length);
            ref var block = ref _grid[column, blockRow];
            if (run.IndexOfAnyExcept((byte)255) < 0)
            {
                AddWhite(ref block, length / 4);
            }
            else
            {
                AddPixels(ref block, run, above.IsEmpty ? run : above.Slice(start, length));
            }
        }
    }

    // How much of a clipped pixel each code stands for. What comes out as 255 begins a little below saturation, and of light that falls off
    // evenly the ten codes under it hold as many pixels as lie within their span in stops. So a share of those, as large as the one span
    // against the other, is white by rounding only, and taken off again.
    private static int[] ClippedWeights(double brightnessStep, ToneCurve curve)
    {
        var excess = Stops(LowestCodeMadeWhite(brightnessStep), curve);
        var share = excess / (Stops(Saturated - 0.5 - CodesBelow, curve) - Stops(Saturated - 0.5, curve));
        return [.. Enumerable.Range(0, 256).Select(code => code == Saturated
            ? BlockStatistics.ClippedUnits
            : code >= Saturated - CodesBelow ? -(int)Math.Round(share * BlockStatistics.ClippedUnits) : 0)];
    }

    // Half a code below 255; but coarse compression knows only steps of a block's brightness, counted from the middle code 128, and what is
    // nearer to a step that rounds to 255 than to the one below becomes white.
    private static double LowestCodeMadeWhite(double step)
    {
        const double Rounding = Saturated - 0.5;
        return step < 1 ? Rounding : Math.Min(Saturated, 128 + (step * (Math.Ceiling((Rounding - 128) / step) - 0.5)));
    }

    private static double Stops(double code, ToneCurve curve) => -Math.Log2(curve.Linear(code / 255));

    private static void AddWhite(ref BlockStatistics block, int count)
    {
        block.Pixels += count;
        block.Red += 65535L * count;
        block.Green += 65535L * count;
        block.Blue += 65535L * count;
        block.ClippedRed += BlockStatistics.ClippedUnits * count;
        block.ClippedGreen += BlockStatistics.ClippedUnits * count;
        block.ClippedBlue += BlockStatistics.ClippedUnits * count;
    }

    // Nearly all time goes here, and a single frame is over before the runtime would compile it for speed of its own accord.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private unsafe void AddPixels(ref BlockStatistics block, ReadOnlySpan<byte> run, ReadOnlySpan<byte> above)
    {
        long red = 0, green = 0, blue = 0, steps = 0;
        fixed (long* worth = _worth)
        fixed (byte* pixels = run, higher = above)
        {
            var left = (int)pixels[1];
            for (var i = 0; i + 3 < run.Length; i += 4)
            {
                int g = pixels[i + 1];
                red += worth[pixels[i]];
                green += worth[g];
                blue += worth[pixels[i + 2]];
                var (across, down) = (g - left, g - higher[i + 1]);
                steps += (across * across) + (down * down);
                left = g;
            }
        }

        block.Add(new BlockStatistics
        {
            Pixels = run.Length / 4,
            Red = (uint)red,
            Green = (uint)green,
            Blue = (uint)blue,
            ClippedRed = (red - (uint)red) >> 32,
            ClippedGreen = (green - (uint)green) >> 32,
            ClippedBlue = (blue - (uint)blue) >> 32,
            SquaredSteps = steps,
        });
    }

    // Light in the lower half and clipped units in the upper, so that one look-up and one sum serve both; a run is far too short to overflow.
    private static long[] Worth(double brightnessStep, ToneCurve curve)
    {
        var light = curve.Codes.ToArray();
        return [.. ClippedWeights(brightnessStep, curve).Select((clipped, code) => ((long)clipped << 32) + light[code])];
    }
}
