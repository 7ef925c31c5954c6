using System.Globalization;
using StudioKit.Field.Log;
using StudioKit.Field.Log.Matching;
using StudioKit.Sheets.Json;

namespace StudioKit.Cli.Records;

/// <summary>Matches as a JSON document.</summary>
internal static class FrameMatchJson
{
    public static string Of(IReadOnlyList<FrameMatch> matches, LogIndex index, IReadOnlyList<FieldFrame> known) => JsonReport.Document(json => json.List("pictures", [.. matches.Select(match => (Match: match, Frame: match.ToFrame(known)))], entry => Picture(json, entry.Match, entry.Frame, index)));

    private static void Picture(JsonReport json, FrameMatch match, FieldFrame? frame, LogIndex index) => json
        .Text("file", match.Picture.FileName).Text("taken", (frame is null ? match.Subject.Taken : frame.Taken?.Moment)?.ToString("O", CultureInfo.InvariantCulture) ?? frame?.Taken?.ToString())
        .Text("subject", match.Subject.Subject is { } subject ? index.ShortId(subject.Id) : null).Text("subjectBy", Key(match.Subject.Kind))
        .Number("pixelSizeUm", match.Picture.ValidScale?.MicrometresPerPixel)
        .Text("framing", frame?.Framing ?? match.Framing.Framing).Text("setUp", frame?.SetUp ?? match.Framing.SetUp).Text("framingBy", Key(match.Framing.Kind));

    private static string Key<T>(T kind)
        where T : struct, Enum
    {
        var name = kind.ToString();
        return char.ToLowerInvariant(name[0]) + name[1..];
    }
}
