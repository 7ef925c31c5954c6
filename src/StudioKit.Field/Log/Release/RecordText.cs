using System.Globalization;

namespace StudioKit.Field.Log.Release;

/// <summary>Values as Darwin Core writes them.</summary>
internal static class RecordText
{
    /// <summary>Separates the entries of a list within one field.</summary>
    public const string ListSeparator = " | ";

    public static string Of(double? number) => number?.ToString("R", CultureInfo.InvariantCulture) ?? "";

    public static string Of(decimal number) => number.ToString("0.####", CultureInfo.InvariantCulture);

    public static string Of(DateTimeOffset moment) => moment.ToString("yyyy-MM-ddTHH:mm:ss.FFFFFFFzzz", CultureInfo.InvariantCulture);

    public static string Of(FieldDate? date) => date?.ToString() ?? "";

    public static string Of(DateTimeOffset? moment) => moment is { } known ? Of(known) : "";

    public static string Of(IReadOnlyList<string> names) => string.Join(ListSeparator, names);

    // An interval of ISO 8601-1; one moment or day while the session goes on.
    public static string EventDate(FieldSession session) =>
        session.End is { } end ? $"{Of(session.Start)}/{Of(end)}" : Of(session.Start);

    /// <summary>The day or days of a session, without a clock's offset.</summary>
    public static string EventDays(FieldSession session)
    {
        var (first, last) = (Day(session.Start), Day(session.End ?? session.Start));
        return first == last ? first : $"{first}/{last}";
    }

    private static string Day(FieldDate date) => date.Day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
