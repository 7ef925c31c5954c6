using System.Globalization;

namespace StudioKit.Kits.Quantities;

/// <summary>Hours of a day, from a time to a time.</summary>
internal static class ClockText
{
    private const string Example = "09:00 to 17:00";
    private const string Time = @"([01]?\d|2[0-3]):[0-5]\d";

    public static readonly ValueKind<ClockRange> Hours = new("a range, a time to a time", Example, Read, Write) { Pattern = () => Time + Patterns.To + Time };

    private static Reading<ClockRange> Read(string text)
    {
        var middle = text.IndexOf(" to ", StringComparison.Ordinal);
        if (middle < 0 || Minutes(text[..middle].Trim()) is not { } from || Minutes(text[(middle + 4)..].Trim()) is not { } to)
        {
            return Reading<ClockRange>.Bad($"'{text}' is not a time of the day to a time of the day.", $"Write for example '{Example}'.");
        }

        return from == to
            ? Reading<ClockRange>.Bad($"'{text}' is no time at all.", $"Write for example '{Example}', or leave it out for the whole day.")
            : Reading<ClockRange>.Good(new ClockRange(from, to));
    }

    private static int? Minutes(string time)
    {
        var colon = time.IndexOf(':', StringComparison.Ordinal);
        return colon is 1 or 2 && time.Length == colon + 3 && Number(time[..colon]) is < 24 and var hours && Number(time[(colon + 1)..]) is < 60 and var minutes
            ? (hours * 60) + minutes
            : null;
    }

    private static int? Number(string digits) => int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;

    private static string Write(ClockRange hours) => FormattableString.Invariant(
        $"{hours.From / 60:00}:{hours.From % 60:00} to {hours.To / 60:00}:{hours.To % 60:00}");
}
