using StudioKit.Field.Pictures;

namespace StudioKit.Field.Scale;

/// <summary>Finds a millimetre rule in a picture and measures the distance between its ticks.</summary>
/// <remarks>
/// Lines of brightness are taken across the picture at many angles and places. Over a rule such a line repeats itself every millimetre, which its
/// autocorrelation shows; the line that does so most clearly tells where the rule lies. Around it the direction is sought at which a band of
/// lines keeps the most contrast when averaged, which is square to the ticks. The lag of many millimetres then gives one to a fraction of a pixel.
/// </remarks>
public sealed class PhotographedRule
{
    private const double CoarseDegrees = 4;
    private const double FineDegrees = 0.5;
    private const double FineReach = 4;
    private const int LinesAcross = 36;
    private const int RowsOfBand = 12;
    private const int LargestQuickSide = 1000;
    private const int ShortestPeriod = 4;
    private const int FewestTicks = 8;
    private const double LeastLikeness = 0.35;

    // Printed ticks differ far more; the blocks of a JPEG, which repeat just as well, differ far less.
    private const double LeastContrast = 0.04;
    private readonly GreyImage _image;

    private PhotographedRule(GreyImage image) => _image = image;

    /// <summary>Measures the scale of a picture that shows a millimetre rule.</summary>
    /// <param name="picture">The picture.</param>
    /// <returns>The scale, or why there is none.</returns>
    public static FieldResult<RuleMeasurement> Measure(IRowSource picture)
    {
        ArgumentNullException.ThrowIfNull(picture);
        var read = GreyImage.Read(picture);
        if (!read.IsSound)
        {
            return FieldResult<RuleMeasurement>.Refused(read.Diagnostics);
        }

        var rule = new PhotographedRule(read.Value);
        return rule.Find() is { } line && rule.Measure(rule.Straighten(line)) is { } measurement
            ? measurement
            : new FieldDiagnostic(
                "FLD301", picture.Name, "No millimetre rule was found.", $"At least {FewestTicks} ticks must show, sharp and on one straight line.");
    }

    // Looking around in a smaller image takes a quarter of the time; only where it shows no rule may the ticks be too fine for it.
    private Line? Find() => Math.Max(_image.Width, _image.Height) > LargestQuickSide && new PhotographedRule(_image.Halved()).FindLine() is { } line
        ? line with { Offset = 2 * line.Offset, Period = 2 * line.Period }
        : FindLine();

    private Line? FindLine()
    {
        var candidates =
            from step in Enumerable.Range(0, (int)(180 / CoarseDegrees))
            from place in Enumerable.Range(0, LinesAcross)
            select new Line(step * CoarseDegrees, (((place + 0.5) / LinesAcross) - 0.5) * Diagonal, 0);
        return Each(candidates, Judge).Where(line => line is not null).MaxBy(line => line!.Score);
    }

    // Spread over the processors; one after another in a browser, which has one.
    private static IEnumerable<TResult> Each<T, TResult>(IEnumerable<T> all, Func<T, TResult> work) =>
        OperatingSystem.IsBrowser() ? all.Select(work) : all.AsParallel().AsOrdered().Select(work);

    private double Diagonal => Math.Sqrt(((double)_image.Width * _image.Width) + ((double)_image.Height * _image.Height));

    private Line? Judge(Line line)
    {
        var samples = Sample(line, 0);
        if (samples.Length < FewestTicks * ShortestPeriod || Autocorrelation.Period(Autocorrelation.Of(samples), ShortestPeriod) is not { } period)
        {
            return null;
        }

        var ticks = samples.Length / period.Lag;
        return ticks < FewestTicks || period.Likeness < LeastLikeness || Contrast(samples, period.Lag) < LeastContrast
            ? null
            : line with { Period = period.Lag, Score = period.Likeness * Math.Min(1, ticks / 20) };
    }

    // Root mean square difference between places half a period apart, against the mean.
    private static double Contrast(double[] samples, double period)
    {
        var half = (int)Math.Round(period / 2);
        var differences = samples.Skip(half).Zip(samples, (a, b) => (a - b) * (a - b));
        return Math.Sqrt(differences.Average()) / Math.Max(samples.Average(), 1);
    }

    // Away from the right direction the ticks smear in the average over a band; across it nothing does.
    private Line Straighten(Line line)
    {
        var turned =
            from step in Enumerable.Range(0, (int)(2 * FineReach / FineDegrees) + 1)
            from shift in new[] { -1.5, 0, 1.5 }
            select line with { Degrees = line.Degrees - FineReach + (step * FineDegrees), Offset = line.Offset + (shift * line.Period) };
        return Each(turned, candidate => candidate with { Score = Clearness(candidate) })
            .MaxBy(candidate => candidate.Score)!;
    }

    private double Clearness(Line line)
    {
        var samples = Sample(line, 1.5 * line.Period);
        if (samples.Length < FewestTicks * line.Period)
        {
            return 0;
        }

        var correlation = Autocorrelation.Of(samples);
        var lag = (int)Math.Round(line.Period);
        var mean = samples.Average();
        return samples.Average(value => (value - mean) * (value - mean)) * Math.Max(0, correlation[lag]);
    }

    private RuleMeasurement? Measure(Line line)
    {
        var samples = Sample(line, line.Period);
        if (PeriodOf(samples, line.Period) is not { } period)
        {
            return null;
        }

        var (left, right) = (PeriodOf(samples[..(samples.Length / 2)], period), PeriodOf(samples[(samples.Length / 2)..], period));
        var spread = left is { } a && right is { } b ? Math.Abs(a - b) / (2 * period) : 0.01;
        var pixels = period * _image.Factor;
        string[] caveats = spread > 0.004 ? ["The ticks stand closer on one side: the rule was not square to the line of sight."] : [];
        return new RuleMeasurement(1000 / pixels, pixels, ((line.Degrees % 180) + 180) % 180, Math.Max(spread, 0.0005), caveats);
    }

    private static double? PeriodOf(double[] samples, double near)
    {
        if (samples.Length < 3 * near)
        {
            return null;
        }

        var correlation = Autocorrelation.Of(samples);
        var first = (int)Math.Round(near);
        for (var lag = Math.Max(1, (int)(0.9 * near)); lag <= Math.Min(1.1 * near, correlation.Length - 2); lag++)
        {
            first = correlation[lag] > correlation[first] ? lag : first;
        }

        return correlation[first] < LeastLikeness / 2 ? null : Autocorrelation.Refine(correlation, first);
    }

    /// <summary>Brightness along a line through the picture, averaged over a band of a given width.</summary>
    private double[] Sample(Line line, double band)
    {
        var (sin, cos) = Math.SinCos(line.Degrees * Math.PI / 180);
        var half = (int)(Diagonal / 2);
        var rows = Math.Clamp((int)Math.Round(band), 1, RowsOfBand);
        var between = rows == 1 ? 0 : band / (rows - 1);
        var samples = new List<double>(2 * half);
        for (var along = -half; along <= half; along++)
        {
            var (sum, count) = (0.0, 0);
            for (var row = 0; row < rows; row++)
            {
                var across = line.Offset + ((row - ((rows - 1) / 2.0)) * between);
                var (x, y) = ((_image.Width / 2.0) + (along * cos) + (across * sin), (_image.Height / 2.0) - (along * sin) + (across * cos));
                if (_image.Contains(x, y))
                {
                    sum += _image.At(x, y);
                    count++;
                }
            }

            if (count > rows / 2)
            {
                samples.Add(sum / count);
            }
        }

        return [.. samples];
    }

    /// <summary>A line across the picture: its direction, how far it passes from the middle, and what was found along it.</summary>
    private sealed record Line(double Degrees, double Offset, double Period, double Score = 0);
}
