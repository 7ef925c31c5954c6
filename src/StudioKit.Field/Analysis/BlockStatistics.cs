namespace StudioKit.Field.Analysis;

/// <summary>Sums over the pixels of one block.</summary>
internal struct BlockStatistics
{
    /// <summary>What one clipped pixel counts, so that fractions of pixels can be summed as whole numbers.</summary>
    public const int ClippedUnits = 1000;

    public int Pixels;
    public long Red;
    public long Green;
    public long Blue;

    public long ClippedRed;
    public long ClippedGreen;
    public long ClippedBlue;

    public long SquaredSteps;

    private const double Saturation = 65535;

    /// <summary>Mean light in red, green and blue as shares of saturation [1].</summary>
    public readonly (double Red, double Green, double Blue) Mean =>
        (Red / Saturation / Pixels, Green / Saturation / Pixels, Blue / Saturation / Pixels);

    /// <summary>Mean light of the darkest channel, which clips last [1].</summary>
    public readonly double Darkest => Math.Min(Red, Math.Min(Green, Blue)) / Saturation / Pixels;

    /// <summary>Share of the block that is white: clipped in the channel that clips last [1].</summary>
    /// <remarks>
    /// Counting channel by channel keeps independent noise in three channels from eating into the edge of the white.
    /// Slightly negative just outside that edge, which evens out over a larger area.
    /// </remarks>
    public readonly double White => Math.Min(ClippedRed, Math.Min(ClippedGreen, ClippedBlue)) / (double)ClippedUnits / Pixels;

    /// <summary>Mean square of the step between neighbouring pixels in green, in code values [1].</summary>
    public readonly double Detail => (double)SquaredSteps / Pixels;

    public void Add(in BlockStatistics other)
    {
        Pixels += other.Pixels;
        Red += other.Red;
        Green += other.Green;
        Blue += other.Blue;
        ClippedRed += other.ClippedRed;
        ClippedGreen += other.ClippedGreen;
        ClippedBlue += other.ClippedBlue;
        SquaredSteps += other.SquaredSteps;
    }
}
