using System.Globalization;
using StudioKit.Field.Log;
using StudioKit.Field.Log.Matching;

namespace StudioKit.Cli.Records;

/// <summary>How pictures were matched, in words.</summary>
internal static class FrameMatchWords
{
    public static string Why(SubjectMatch match, LogIndex index) => match.Kind switch
    {
        SubjectMatchKind.Named => "named",
        SubjectMatchKind.LoggedBefore => "logged before",
        SubjectMatchKind.InHand => "in hand",
        SubjectMatchKind.LastOfSeveral => $"taken up last; {string.Join(", ", match.Others.Select(other => index.ShortId(other.Id)))} in hand, too",
        SubjectMatchKind.NoTime => "the file has no time",
        _ when match.Nearest is { } nearest => $"nobody in hand; {Time(match.Gap.Duration())} {(match.Gap < TimeSpan.Zero ? "before" : "after")} {index.ShortId(nearest.Id)}",
        _ => "nobody was ever in hand; 'log hold' notes it",
    };

    public static string Why(FrameMatch match, FieldFrame? frame)
    {
        var why = Why(match.Picture, match.Framing);
        var others = new[] { Other(frame?.Framing, match.Framing.Framing), Other(frame?.SetUp, match.Framing.SetUp) }.Where(other => other.Length > 0).ToList();
        return others.Count == 0 ? why : $"as logged before, though {why} {string.Join(", ", others)}";
    }

    private static string Other(string? kept, string found) => kept is { Length: > 0 } && found.Length > 0 && kept != found ? found : "";

    private static string Why(LoggedPicture picture, FramingMatch match) => match.Kind switch
    {
        FramingMatchKind.NotAsked => "",
        FramingMatchKind.Sidecar => "by its sidecar",
        FramingMatchKind.Lens => "by its lens",
        FramingMatchKind.Scale => "by its scale",
        FramingMatchKind.Settings => "by its settings",
        FramingMatchKind.Several => "one of " + string.Join(", ", match.Candidates),
        _ => $"no framing of the kit: {(picture.Settings.FocalLength is { } focal ? string.Create(CultureInfo.InvariantCulture, $"{focal.Millimeters:0.#} mm") : "lens not named")}",
    };

    public static string Scale(LoggedPicture picture) => (picture.Scale, picture.ValidScale) switch
    {
        (null, _) => "no sidecar",
        (_, { } scale) => string.Create(CultureInfo.InvariantCulture, $"{scale.MicrometresPerPixel:0.###} µm"),
        ({ } other, null) => $"sidecar is for {other.Pixels}",
    };

    private static string Time(TimeSpan gap) => gap switch
    {
        { TotalMinutes: < 1 } => string.Create(CultureInfo.InvariantCulture, $"{gap.TotalSeconds:0} s"),
        { TotalHours: < 2 } => string.Create(CultureInfo.InvariantCulture, $"{gap.TotalMinutes:0} min"),
        { TotalDays: < 2 } => string.Create(CultureInfo.InvariantCulture, $"{gap.TotalHours:0} h"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{gap.TotalDays:0} days"),
    };
}
