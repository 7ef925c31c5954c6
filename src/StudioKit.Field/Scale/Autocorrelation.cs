using System.Numerics;
using MathNet.Numerics.IntegralTransforms;

namespace StudioKit.Field.Scale;

/// <summary>Autocorrelation of a line of brightness, by Fourier transform.</summary>
internal static class Autocorrelation
{
    /// <summary>Likeness of a line to itself, shifted by each lag up to three quarters of its length; 1 at lag 0.</summary>
    /// <remarks>Each lag is divided by how many pairs it has, so that likeness does not fade with the lag.</remarks>
    public static double[] Of(ReadOnlySpan<double> line)
    {
        var size = (int)BitOperations.RoundUpToPowerOf2((uint)(2 * line.Length));
        var spectrum = new Complex[size];
        Flatten(line, spectrum);
        Fourier.Forward(spectrum, FourierOptions.NoScaling);
        for (var i = 0; i < size; i++)
        {
            spectrum[i] = spectrum[i].Real * spectrum[i].Real + (spectrum[i].Imaginary * spectrum[i].Imaginary);
        }

        Fourier.Inverse(spectrum, FourierOptions.NoScaling);
        var correlation = new double[3 * line.Length / 4];
        var power = spectrum[0].Real / line.Length;
        for (var lag = 0; lag < correlation.Length; lag++)
        {
            correlation[lag] = power <= 0 ? 0 : spectrum[lag].Real / (line.Length - lag) / power;
        }

        return correlation;
    }

    /// <summary>Smallest lag at which a line is about as like itself as it ever gets again; none where it never does.</summary>
    public static (double Lag, double Likeness)? Period(double[] correlation, int shortest)
    {
        var start = Array.FindIndex(correlation, value => value < 0);
        if (start < 0)
        {
            return null;
        }

        // The far lags rest on few pairs; a rule must show a handful of ticks to be measured at all.
        var end = 2 * correlation.Length / 3;
        start = Math.Max(start, shortest);
        var best = 0.0;
        for (var lag = start; lag < end; lag++)
        {
            best = Math.Max(best, correlation[lag]);
        }

        for (var lag = Math.Max(start, 1); lag < end - 1; lag++)
        {
            // Longer ticks at 5 and 10 mm make those lags a little more alike than 1 mm; hence the smallest good one.
            if (correlation[lag] >= 0.7 * best && correlation[lag] >= correlation[lag - 1] && correlation[lag] >= correlation[lag + 1])
            {
                return (Peak(correlation, lag), correlation[lag]);
            }
        }

        return null;
    }

    /// <summary>Follows the period out to the farthest lag that still repeats, where a shift by a fraction of a point weighs least.</summary>
    public static double Refine(double[] correlation, double period)
    {
        for (var count = 2; count * period < (0.9 * correlation.Length) - period; count++)
        {
            var (centre, reach) = ((int)Math.Round(count * period), Math.Max(1, (int)(0.3 * period)));
            var best = centre;
            for (var lag = Math.Max(1, centre - reach); lag <= Math.Min(centre + reach, correlation.Length - 2); lag++)
            {
                best = correlation[lag] > correlation[best] ? lag : best;
            }

            if (correlation[best] < 0.2)
            {
                break;
            }

            period = Peak(correlation, best) / count;
        }

        return period;
    }

    // Vertex of the parabola through the highest value and its neighbours.
    private static double Peak(double[] values, int i)
    {
        var (left, middle, right) = (values[i - 1], values[i], values[i + 1]);
        var bend = left - (2 * middle) + right;
        return bend >= 0 ? i : i + Math.Clamp((left - right) / (2 * bend), -0.5, 0.5);
    }

    // Takes off the mean and the slope, which would look alike at every lag.
    private static void Flatten(ReadOnlySpan<double> line, Complex[] into)
    {
        var (n, mean, slope) = (line.Length, 0.0, 0.0);
        for (var i = 0; i < n; i++)
        {
            mean += line[i] / n;
            slope += line[i] * (i - ((n - 1) / 2.0));
        }

        slope /= n * ((double)n * n - 1) / 12;
        for (var i = 0; i < n; i++)
        {
            into[i] = line[i] - mean - (slope * (i - ((n - 1) / 2.0)));
        }
    }
}
