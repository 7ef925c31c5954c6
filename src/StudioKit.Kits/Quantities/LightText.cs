using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Series;

namespace StudioKit.Kits.Quantities;

/// <summary>Values of exposure and magnification as they stand on cameras and flashes.</summary>
internal static class LightText
{
    // Incident-light constant C = 250 for a flat receptor (ISO 2720): E = 2.5·2^EV at ISO 100.
    private const double LuxAtZero = 2.5;

    // Two ways of writing one power are marks of one click, and marks are rounded: 1/1.3 for 1/1.26 [stops].
    private const double SamePower = 0.06;

    /// <summary>Stops as a kit writes them: whole numbers and odd fractions in decimals, thirds as thirds.</summary>
    public static string WriteStops(double stops)
    {
        var thirds = Math.Round(Math.Abs(stops) * 3);
        if (thirds % 3 == 0 || Math.Abs((Math.Abs(stops) * 3) - thirds) > 1e-9)
        {
            return NumberText.Write(stops);
        }

        var whole = Math.Floor(thirds / 3);
        return $"{(stops < 0 ? "-" : "")}{(whole > 0 ? NumberText.Write(whole) + " " : "")}{NumberText.Write(thirds % 3)}/3";
    }

    public static Reading<double> FNumber(string text) =>
        TypedFNumber(text).Then(number => Reading<double>.Good(ThirdStopSeries.FromMark(new FNumber(number)).Value));

    /// <summary>The number itself, even where it is a mark.</summary>
    public static Reading<double> TypedFNumber(string text)
    {
        var cursor = new TextCursor(text);
        cursor.SkipSpaces();
        if (!cursor.Take("f/", StringComparison.OrdinalIgnoreCase) && !cursor.Take("f", StringComparison.OrdinalIgnoreCase))
        {
            if (cursor.Take("1:") && NumberText.Bare(cursor.Rest, "", "") is { IsGood: true } behind)
            {
                return Reading<double>.Bad($"'{text}' is how lenses are engraved.", $"Write it as 'f/{NumberText.Write(behind.Value)}'.");
            }

            return NumberText.Bare(text, "an f-number", "f/16").Then(number => Reading<double>.Bad(
                $"'{text}' is a bare number; an f-number is needed.", $"Did you mean 'f/{NumberText.Write(number)}'?"));
        }

        return NumberText.Bare(cursor.Rest, "an f-number", "f/16").Then(number => number > 0
            ? Reading<double>.Good(number)
            : Reading<double>.Bad($"'{text}' is not an f-number: it must be above zero.", "Write for example 'f/16'."));
    }

    public static Reading<double> Shutter(string text) => Mark(text) is { } mark
        ? Reading<double>.Bad($"'{text}' has no unit; a shutter speed needs one.", $"Did you mean '1/{mark} s'?")
        : NumberText.Quantity(text, UnitDimension.Time).Then(seconds => seconds > 0
            ? Reading<double>.Good(ThirdStopSeries.FromMark(new ShutterSpeed(seconds)).Seconds)
            : Reading<double>.Bad($"'{text}' is not a shutter speed: it must be above zero.", "Write for example '1/125 s'."));

    // Cameras show 1/200 s as 200, and people write 1/200th.
    private static string? Mark(string text)
    {
        var written = text.Trim();
        var number = written.EndsWith("th", StringComparison.Ordinal) ? written[..^2] : written;
        var denominator = number.StartsWith("1/", StringComparison.Ordinal) ? number[2..] : number;
        var bare = NumberText.Bare(denominator, "", "");
        return bare is { IsGood: true, Value: > 1 } ? NumberText.Write(bare.Value) : null;
    }

    public static Reading<double> Iso(string text)
    {
        var cursor = new TextCursor(text);
        cursor.SkipSpaces();
        var number = cursor.Take("ISO", StringComparison.OrdinalIgnoreCase) ? cursor.Rest
            : text.TrimEnd().EndsWith("ISO", StringComparison.OrdinalIgnoreCase) ? text.TrimEnd()[..^3] : text;
        return NumberText.Bare(number, "an ISO speed", "400").Then(value => value > 0
            ? Reading<double>.Good(value)
            : Reading<double>.Bad($"'{text}' is not an ISO speed: it must be above zero.", "Write for example '400'."));
    }

    /// <summary>A fraction of full power, and stops more or less: <c>1/8 +1/3</c>; or both ways of writing it, as a card prints them.</summary>
    public static Reading<double> Power(string text) =>
        Power(text, fraction => fraction is > 0 and <= 1 ? ThirdStopSeries.FromMark(new FlashPower(fraction)).Fraction : fraction);

    /// <summary>The fraction itself, even where it is a mark.</summary>
    public static Reading<double> TypedPower(string text) => Power(text, fraction => fraction);

    private static Reading<double> Power(string text, Func<double, double> exact)
    {
        var open = text.IndexOf('(', StringComparison.Ordinal);
        return open > 0 && text.TrimEnd().EndsWith(')')
            ? OnePower(text[..open], exact).Then(first => OnePower(text.TrimEnd()[(open + 1)..^1], exact).Then(second => Math.Abs(Math.Log2(first / second)) < SamePower
                ? Reading<double>.Good(first)
                : Reading<double>.Bad($"'{text}' names two different powers.", "Write for example '1/6.4' or '1/8 +1/3'.")))
            : OnePower(text, exact);
    }

    private static Reading<double> OnePower(string text, Func<double, double> exact)
    {
        var cursor = new TextCursor(text);
        cursor.SkipSpaces();
        if (!cursor.TryNumber(out var fraction))
        {
            return NumberText.Bare(text, "a flash power", "1/8 +1/3").Then(_ => NoPower(text));
        }

        cursor.SkipSpaces();
        if (cursor.AtEnd)
        {
            return Share(text, exact(fraction), 0);
        }

        if (cursor.Current is not ('+' or '-' or '−'))
        {
            return NoPower(text);
        }

        return StopCount(cursor.Rest).Then(stops => Share(text, exact(fraction), stops));
    }

    /// <summary>A plain number of stops.</summary>
    public static Reading<double> StopCount(string text)
    {
        var number = text.TrimEnd();
        number = number.EndsWith("stops", StringComparison.Ordinal) ? number[..^5] : number.EndsWith("stop", StringComparison.Ordinal) ? number[..^4] : number;
        return NumberText.Bare(number, "a number of stops", "+1/3");
    }

    /// <summary>Brightness as an exposure value or as illuminance.</summary>
    public static Reading<double> ExposureValue(string text)
    {
        var trimmed = text.Trim();
        if (trimmed.StartsWith("EV", StringComparison.OrdinalIgnoreCase))
        {
            return NumberText.Bare(trimmed[2..], "an exposure value", "EV 12");
        }

        if (trimmed.EndsWith("EV", StringComparison.OrdinalIgnoreCase))
        {
            return NumberText.Bare(trimmed[..^2], "an exposure value", "EV 12");
        }

        if (NumberText.Bare(text, "", "").IsGood)
        {
            return Reading<double>.Bad($"'{text}' has no unit; ambient light needs one.", $"Did you mean 'EV {trimmed}' or '{trimmed} lx'?");
        }

        if (!text.Any(char.IsAsciiDigit))
        {
            return SceneText.Find(text) is { } scene ? Reading<double>.Good(scene.Typical.AtIso100)
                : Reading<double>.Bad($"'{text}' does not say how bright it is.", SceneText.Hint(text) ?? "Write for example 'EV 12', '10000 lx' or 'open shade'.");
        }

        return NumberText.Quantity(text, UnitDimension.Illuminance).Then(lux => lux > 0
            ? Reading<double>.Good(Math.Log2(lux / LuxAtZero))
            : Reading<double>.Bad($"'{text}' is not an illuminance above zero.", "Write for example '10000 lx' or 'EV 12'."));
    }

    /// <summary>Image to object, as <c>1:2</c> or as a number.</summary>
    public static Reading<double> Magnification(string text)
    {
        const string Noun = "a magnification";
        const string Example = "1:2";
        var colon = text.IndexOf(':', StringComparison.Ordinal);
        var ratio = colon < 0
            ? NumberText.Bare(WithoutTimes(text), Noun, Example)
            : NumberText.Bare(text[..colon], Noun, Example).Then(image =>
                NumberText.Bare(text[(colon + 1)..], Noun, Example).Then(subject => image / subject));
        return ratio.Then(value => double.IsFinite(value) && value > 0
            ? Reading<double>.Good(value)
            : Reading<double>.Bad($"'{text}' is not a magnification: it must be above zero.", "Write for example '1:2' or '0.5'."));
    }

    /// <summary>A factor such as a converter's, <c>1.4</c> or <c>1.4x</c>.</summary>
    public static Reading<double> Factor(string text) => NumberText.Bare(WithoutTimes(text), "a factor", "1.4x");

    /// <summary>A share of one, <c>0.5</c> or <c>50 %</c>.</summary>
    public static Reading<double> Ratio(string text) => text.TrimEnd().EndsWith('%')
        ? NumberText.Quantity(text, UnitDimension.Share)
        : NumberText.Bare(text, "a ratio", "0.5");

    private static Reading<double> Share(string text, double exact, double stops)
    {
        var share = exact > 0 ? Math.Pow(2, Math.Log2(exact) + Thirds(stops)) : 0;
        return share is > 0 and <= 1 + 1e-9
            ? Reading<double>.Good(Math.Min(share, 1))
            : Reading<double>.Bad($"'{text}' is not a flash power: it must be above 0 and at most 1/1.", "Write for example '1/8 +1/3'.");
    }

    // Displays show a third of a stop as 0.3 and two thirds as 0.7.
    private static double Thirds(double stops) =>
        Math.Abs(Math.Round(stops * 3) - (stops * 3)) <= 0.11 ? Math.Round(stops * 3) / 3 : stops;

    private static Reading<double> NoPower(string text) =>
        Reading<double>.Bad($"'{text}' is not a flash power.", "Write for example '1/6.4' or '1/8 +1/3'.");

    private static string WithoutTimes(string text) => text.TrimEnd() is { Length: > 0 } trimmed && trimmed[^1] is 'x' or '×' ? trimmed[..^1] : text;
}
