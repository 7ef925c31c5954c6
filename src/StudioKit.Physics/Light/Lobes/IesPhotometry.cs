using System.Globalization;
using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Light.Lobes;

/// <summary>Reads beams from the text of photometric files as IES LM-63 lays them down.</summary>
/// <remarks>
/// Taken: 1986 to 2019 editions, type C photometry (vertical angle from the axis, horizontal angle round it), tilt NONE or INCLUDE.
/// The axis of the file, straight down for a lamp in a ceiling, is the emitter's axis here.
/// </remarks>
public static class IesPhotometry
{
    private const int MostAngles = 2000;
    private const int MostCharacters = 4_000_000;

    /// <summary>Reads a beam.</summary>
    /// <param name="text">The file's whole text.</param>
    /// <returns>The beam, or the first thing that is wrong, by line.</returns>
    [Source("IesLm63", "layout of keywords, tilt, lamp line, angles and candela values")]
    public static IesReading Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        try
        {
            return text.Length > MostCharacters
                ? throw new IesFormatException(1, 1, "The text is longer than 4 million characters.")
                : Read(new IesTokens(text));
        }
        catch (IesFormatException error)
        {
            return new IesReading(null, 0, false, new IesProblem(error.Line, error.Column, error.Message));
        }
    }

    private static IesReading Read(IesTokens tokens)
    {
        SkipTilt(tokens);
        tokens.Next("number of lamps");
        var lumens = tokens.Next("lumens per lamp");
        var multiplier = tokens.Next("candela multiplier");
        var vertical = tokens.Count("number of vertical angles", MostAngles);
        var horizontal = tokens.Count("number of horizontal angles", MostAngles);
        tokens.Expect(1, "photometric type", "only type C (1) is read");
        foreach (var skipped in new[] { "units", "width", "length", "height", "ballast factor", "future use", "input watts" })
        {
            tokens.Next(skipped);
        }

        var polar = Angles(tokens, vertical, "vertical angle", 180);
        var azimuths = Angles(tokens, horizontal, "horizontal angle", 360);
        RequireFullTurn(tokens, azimuths);
        return Beam(tokens, multiplier, polar, azimuths) with { IsAbsolute = lumens < 0 };
    }

    private static IesReading Beam(IesTokens tokens, double multiplier, Angle[] polar, Angle[] azimuths)
    {
        var values = new double[polar.Length * azimuths.Length];
        for (var i = 0; i < values.Length; i++)
        {
            values[i] = tokens.Next("candela value");
            tokens.Require(values[i] >= 0, "A candela value is negative.");
        }

        tokens.Require(values[0] > 0, "The candela value on the axis is zero, so the beam cannot be scaled to a flash.");
        tokens.Require(multiplier > 0, "The candela multiplier must be above zero.");
        return new IesReading(new TabulatedLobe(polar, azimuths, values), values[0] * multiplier, false, null);
    }

    // TILT=INCLUDE is followed by the lamp's geometry, a count, and two rows of so many numbers; none of it shapes the beam.
    private static void SkipTilt(IesTokens tokens)
    {
        var tilt = tokens.FindTilt();
        if (string.Equals(tilt, "INCLUDE", StringComparison.OrdinalIgnoreCase))
        {
            tokens.Next("lamp to luminaire geometry");
            var pairs = tokens.Count("number of tilt angles", MostAngles);
            for (var i = 0; i < 2 * pairs; i++)
            {
                tokens.Next("tilt value");
            }
        }
        else
        {
            tokens.Require(string.Equals(tilt, "NONE", StringComparison.OrdinalIgnoreCase), "Tilt must be NONE or INCLUDE; a separate tilt file is not read.");
        }
    }

    private static Angle[] Angles(IesTokens tokens, int count, string name, double most)
    {
        var angles = new double[count];
        for (var i = 0; i < count; i++)
        {
            angles[i] = tokens.Next(name);
            var isFirst = i == 0;
            tokens.Require(
                isFirst ? angles[i] == 0 : angles[i] > angles[i - 1] && angles[i] <= most,
                string.Create(CultureInfo.InvariantCulture, $"A {name} of {angles[i]}° is out of order: they start at 0° and rise to at most {most}°."));
        }

        return [.. angles.Select(degrees => Angle.FromDegrees(degrees))];
    }

    private static void RequireFullTurn(IesTokens tokens, Angle[] azimuths) => tokens.Require(
        Math.Round(azimuths[^1].Degrees) is 0 or 90 or 180 or 360,
        "Horizontal angles must end at 0°, 90°, 180° or 360°.");
}
