using System.Globalization;

namespace StudioKit.Kits.Quantities;

/// <summary>Dates, places on the globe, and when something is about.</summary>
internal static class DayText
{
    private const string DateExample = "2026-06-14";

    /// <summary>A date as the number of its day from 1 January of the year 1.</summary>
    public static readonly ValueKind<int> Date = new("a date", DateExample, ReadDate, WriteDate)
    {
        Pattern = () => @"\d{4}-\d{2}-\d{2}",
        Measure = day => new Extent(day, day),
        ReadMeasure = text => ReadDate(text).Then(day => (double)day),
    };

    public static readonly ValueKind<double> Latitude = Bearing("a latitude", "52.3° N", 'N', 'S');

    public static readonly ValueKind<double> Longitude = Bearing("a longitude", "5.1° E", 'E', 'W');

    /// <summary>How far a clock is ahead of Universal Time, in seconds.</summary>
    public static readonly ValueKind<double> ClockOffset = Kinds.Duration with
    {
        Noun = "a clock's offset from UTC",
        Example = "+2 h",
        Write = seconds => $"{(seconds < 0 ? "" : "+")}{NumberText.Write(seconds / 3600)} h",
        TakesUncertainty = false,
    };

    private static readonly string[] Parts = Array.ConvertAll(Enum.GetNames<DayPart>(), MemberText.Hyphenated);

    public static readonly ValueKind<ActiveTime> Active = new("hours or a part of the day", "21:30 to 02:00", ReadActive, WriteActive)
    {
        Pattern = () => $"({string.Join('|', Parts)}|{ClockText.Hours.Pattern!()})",
        AlsoWords = Parts,
    };

    private static ValueKind<double> Bearing(string noun, string example, char positive, char negative) => Kinds.Angle with
    {
        Noun = noun,
        Example = example,
        Read = text => ReadBearing(text, example, positive, negative),
        Write = degrees => $"{NumberText.Write(Math.Abs(degrees))}° {(degrees < 0 ? negative : positive)}",
        Pattern = () => $"{Patterns.Quantity(UnitDimension.Angle)}\\s*[{positive}{char.ToLowerInvariant(positive)}{negative}{char.ToLowerInvariant(negative)}]?",
        ReadMeasure = text => ReadBearing(text, example, positive, negative),
        TakesUncertainty = false,
    };

    private static Reading<double> ReadBearing(string text, string example, char positive, char negative)
    {
        var trimmed = text.Trim();
        var letter = trimmed.Length > 0 ? char.ToUpperInvariant(trimmed[^1]) : ' ';
        if (letter != positive && letter != negative)
        {
            return NumberText.Quantity(text, UnitDimension.Angle);
        }

        return NumberText.Quantity(trimmed[..^1].TrimEnd(), UnitDimension.Angle).Then(degrees => degrees < 0
            ? Reading<double>.Bad($"'{text}' has a sign and a letter.", $"Write one of them, for example '{example}'.")
            : Reading<double>.Good(letter == negative ? -degrees : degrees));
    }

    private static Reading<int> ReadDate(string text)
    {
        var trimmed = text.Trim();
        return trimmed.Length == 10 && trimmed[4] == '-' && trimmed[7] == '-'
            && Number(trimmed[..4]) is { } year and > 0 && Number(trimmed[5..7]) is { } month and >= 1 and <= 12 && Number(trimmed[8..]) is { } day and >= 1
            ? day <= DateTime.DaysInMonth(year, month)
                ? Reading<int>.Good(new DateOnly(year, month, day).DayNumber)
                : Reading<int>.Bad($"'{text}' is no day of the calendar: that month has {DateTime.DaysInMonth(year, month)} days.", $"Write for example '{DateExample}'.")
            : Reading<int>.Bad($"'{text}' is not a date.", $"Write year, month and day, for example '{DateExample}'.");
    }

    private static int? Number(string digits) => int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;

    private static string WriteDate(int day) => DateOnly.FromDayNumber(day) is var date
        ? FormattableString.Invariant($"{date.Year:0000}-{date.Month:00}-{date.Day:00}")
        : "";

    private static Reading<ActiveTime> ReadActive(string text)
    {
        var part = Array.IndexOf(Parts, text.Trim());
        if (part >= 0)
        {
            return Reading<ActiveTime>.Good(new(null, (DayPart)part));
        }

        var hours = ClockText.Hours.Read(text);
        return hours.IsGood || text.Any(char.IsAsciiDigit)
            ? hours.Then(range => new ActiveTime(range, null))
            : Reading<ActiveTime>.Bad($"'{text}' is no part of the day.", $"Choose one of: {string.Join(", ", Parts)}; or write hours, for example '21:30 to 02:00'.");
    }

    private static string WriteActive(ActiveTime time) => time.Part is { } part ? Parts[(int)part] : ClockText.Hours.Write(time.Hours!);
}
