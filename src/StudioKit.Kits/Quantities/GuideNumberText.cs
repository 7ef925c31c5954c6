namespace StudioKit.Kits.Quantities;

/// <summary>Guide numbers as kits and data sheets write them: <c>38 m @ ISO 100, 35 mm</c>, <c>60 (ISO 100, m, 200 mm)</c>, <c>GN 197 ft at ISO 100</c>.</summary>
/// <remarks>Feet become metres, and any speed ISO 100 by the square root. GN and a number alone are metres at ISO 100, as ISO 1230 has them.</remarks>
internal static class GuideNumberText
{
    private const double FeetPerMetre = 1 / 0.3048;

    // The same number in metres and in feet, each rounded to a whole one.
    private const double SameRounded = 0.04;

    // No battery flash has more in metres (common practice, no source): a larger number without a unit may well be feet.
    private const double LargestWithoutUnit = 80;

    // As wide and as narrow as heads are marked, on a 36 mm x 24 mm sensor [mm]; the key 'zoom' has the same bounds.
    private const double ShortestZoom = 4;
    private const double LongestZoom = 1000;

    private const string Example = "Write for example '38 m @ ISO 100, 35 mm'.";

    private static readonly string[] Openings = ["@", "(", " at "];

    /// <summary>Reads one.</summary>
    public static Reading<GuideNumberMark> Read(string text)
    {
        var head = WithoutPrefix(text.Trim(), out var isNamed);
        var split = SplitAt(head, out var length);
        var number = (split < 0 ? head : head[..split]).Trim();
        var rest = split < 0 ? "" : head[(split + length)..].Trim();
        if (split >= 0 && head[split] == '(')
        {
            if (!rest.EndsWith(')'))
            {
                return Bad($"'{text}' opens a bracket and does not close it.");
            }

            rest = rest[..^1];
        }

        var conditions = new Conditions();
        foreach (var condition in split < 0 ? [] : Parts(rest))
        {
            if (conditions.Take(condition) is { } fault)
            {
                return Reading<GuideNumberMark>.Bad(fault.Problem!, fault.Hint);
            }
        }

        return Metres(text, number, conditions.Unit, isNamed).Then(metres => metres > 0
            ? Reading<GuideNumberMark>.Good(new GuideNumberMark(metres / Math.Sqrt(conditions.Iso / 100), conditions.Zoom))
            : Bad($"'{text}' is not a guide number: it must be above zero."));
    }

    private static string WithoutPrefix(string text, out bool isNamed)
    {
        isNamed = text.StartsWith("GN", StringComparison.OrdinalIgnoreCase);
        return isNamed ? text[2..].TrimStart(' ', ':', '=') : text;
    }

    // What a number holds for stands behind an @, the word 'at', or in brackets.
    private static int SplitAt(string text, out int length)
    {
        (string Mark, int At)[] found = [.. Openings.Select(mark => (mark, text.IndexOf(mark, StringComparison.OrdinalIgnoreCase))).Where(pair => pair.Item2 >= 0)];
        var first = found.Length == 0 ? ("", -1) : found.MinBy(pair => pair.At);
        length = first.Item1.Length;
        return first.Item2;
    }

    private static IEnumerable<string> Parts(string conditions) => conditions
        .Replace(" and ", ",", StringComparison.OrdinalIgnoreCase)
        .Replace(" at ", ",", StringComparison.OrdinalIgnoreCase)
        .Replace(" ISO", ",ISO", StringComparison.OrdinalIgnoreCase)
        .Split(',', ';')
        .Select(part => part.Trim())
        .Where(part => part.Length > 0);

    private static Reading<double> Metres(string text, string number, string? unit, bool isNamed)
    {
        var slash = number.IndexOf('/', StringComparison.Ordinal);
        if (slash > 0)
        {
            var units = (unit ?? "").Split('/');
            return One(text, number[..slash].Trim(), units[0], isNamed: false).Then(first => One(text, number[(slash + 1)..].Trim(), units[^1], isNamed: false).Then(second =>
                Math.Abs((first / second) - 1) < SameRounded
                    ? Reading<double>.Good(Math.Min(first, second))
                    : Reading<double>.Bad($"'{text}' gives two guide numbers that differ.", Example)));
        }

        return One(text, number, unit, isNamed);
    }

    private static Reading<double> One(string text, string number, string? unit, bool isNamed)
    {
        if (!NumberText.Bare(number, "", "").IsGood)
        {
            return NumberText.Quantity(number, UnitDimension.Length).Then(millimetres => Reading<double>.Good(millimetres / 1000));
        }

        return NumberText.Bare(number, "a guide number", "38 m").Then(value => unit switch
        {
            "m" => Reading<double>.Good(value),
            "ft" => Reading<double>.Good(value / FeetPerMetre),
            _ when isNamed && value <= LargestWithoutUnit => Reading<double>.Good(value),
            _ when isNamed => Reading<double>.Bad($"'{text}' has no unit, and so large a guide number may be in feet.", $"Did you mean '{number} ft @ ISO 100'?"),
            _ => Reading<double>.Bad($"'{text}' has no unit; a guide number is a length.", $"Did you mean '{number} m{Behind(text, number)}'?"),
        });
    }

    private static string Behind(string text, string number)
    {
        var rest = text[(text.IndexOf(number, StringComparison.Ordinal) + number.Length)..].TrimStart();
        return rest.Length == 0 ? " @ ISO 100" : " " + rest;
    }

    private static Reading<GuideNumberMark> Bad(string problem) => Reading<GuideNumberMark>.Bad(problem, Example);

    /// <summary>What a number is said to hold for.</summary>
    private sealed class Conditions
    {
        public double Iso { get; private set; } = 100;

        public double? Zoom { get; private set; }

        public string? Unit { get; private set; }

        /// <summary>Takes one in; what is wrong with it, or none.</summary>
        public Reading<double>? Take(string text)
        {
            if (text.StartsWith("ISO", StringComparison.OrdinalIgnoreCase))
            {
                return TakeSpeed(text);
            }

            if (UnitOf(text) is { } unit)
            {
                Unit = unit;
                return null;
            }

            return string.Equals(text, "full power", StringComparison.OrdinalIgnoreCase) ? null : TakeZoom(text);
        }

        // "ISO 100/21°" gives the speed both ways.
        private Reading<double>? TakeSpeed(string text)
        {
            var speed = LightText.Iso(text.Split('/')[0]);
            Iso = speed.IsGood ? speed.Value : Iso;
            return speed.IsGood ? null : speed;
        }

        private Reading<double>? TakeZoom(string text)
        {
            var written = text.Replace("zoom", "", StringComparison.OrdinalIgnoreCase).Trim();
            var length = NumberText.Quantity(written, UnitDimension.Length);
            if (length.IsGood && (length.Value <= 0 || Zoom is not null))
            {
                return Reading<double>.Bad(
                    Zoom is null ? $"'{text}' is not a zoom setting: it must be above zero." : $"'{text}' is a second zoom setting; a guide number holds for one.",
                    Zoom is null ? Example : "Write the others under 'zooms:', each with its own number.");
            }

            if (length.IsGood && length.Value is < ShortestZoom or > LongestZoom)
            {
                return Reading<double>.Bad($"'{text}' is no zoom setting of a flash.", Likely(length.Value));
            }

            Zoom = length.IsGood ? length.Value : Zoom;
            return length.IsGood ? null : length;
        }

        // Metres for millimetres, or the other way about, is the usual slip.
        private static string Likely(double millimetres) =>
            millimetres / 1000 is >= ShortestZoom and <= LongestZoom ? $"Did you mean '{NumberText.Write(millimetres / 1000)} mm'?"
            : millimetres * 1000 is >= ShortestZoom and <= LongestZoom ? $"Did you mean '{NumberText.Write(millimetres * 1000)} mm'?"
            : "Write the zoom as a focal length from 4 mm to 1000 mm, for example '35 mm'.";

        private static string? UnitOf(string text) => text.ToUpperInvariant() switch
        {
            "M" or "METRES" or "METERS" or "IN METRES" or "IN METERS" => "m",
            "FT" or "FEET" or "IN FEET" => "ft",
            "M/FT" => "m/ft",
            "FT/M" => "ft/m",
            _ => null,
        };
    }
}
