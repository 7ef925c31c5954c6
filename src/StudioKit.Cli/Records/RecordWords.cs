using System.Globalization;
using StudioKit.Field.Log;

namespace StudioKit.Cli.Records;

/// <summary>Records in words.</summary>
internal static class RecordWords
{
    public static string Of(LogEntry entry) => $"{Kind(entry.Kind)} {entry}";

    public static string Kind(LogRecordKind kind) => kind.ToString().ToLowerInvariant();

    public static string Count(LogRecordKind kind, int count) => string.Create(CultureInfo.InvariantCulture, $"{count} {Kind(kind)}{(count == 1 ? "" : "s")}");
}
