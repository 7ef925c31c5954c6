using System.Globalization;
using System.Text.RegularExpressions;

namespace StudioKit.Field.Log.Release;

/// <summary>Finds the coordinates of a session's place in a text, in decimals or in degrees and minutes.</summary>
internal sealed partial class PlaceFigures(FieldSession session)
{
    // As far as the widest of the usual cells, which may be told of a place.
    private const double Near = 0.1;
    private readonly double[] _angles = [.. new[] { session.Latitude, session.Longitude }.OfType<double>().Select(Math.Abs)];

    /// <summary>The first figure that is near one of the coordinates; none where there is none.</summary>
    public string? In(string text) => Figures().Matches(text).FirstOrDefault(IsNear)?.Value;

    private bool IsNear(Match figure)
    {
        var value = figure.Groups["minutes"].Success
            ? Number(figure.Groups["degrees"].Value) + (Number(figure.Groups["minutes"].Value) / 60)
            : Number(figure.Value.Replace(',', '.'));
        return Array.Exists(_angles, angle => Math.Abs(angle - value) <= Near);
    }

    private static double Number(string digits) => double.Parse(digits, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"(?<degrees>\d{1,3})\s*[°:d]\s*(?<minutes>\d{1,2})|\d{1,3}[.,]\d{2,15}", RegexOptions.ExplicitCapture | RegexOptions.ECMAScript, 1000)]
    private static partial Regex Figures();
}
