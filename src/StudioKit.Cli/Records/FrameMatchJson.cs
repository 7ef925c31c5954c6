using System.Globalization;
using StudioKit.Field.Log;
using StudioKit.Field.Log.Matching;
using StudioKit.Sheets.Json;

namespace StudioKit.Cli.Records;

/// <summary>Matches as a JSON document.</summary>
internal static class FrameMatchJson
{
    public static string Of(IReadOnlyList<FrameMatch> matches, LogIndex index) => JsonReport.Document(json => json.List("pictures", matches, match => json
        .Text("file", match.Picture.FileName).Text("taken", match.Subject.Taken?.ToString("O", CultureInfo.InvariantCulture))
        .Text("subject", match.Subject.Subject is { } subject ? index.ShortId(subject.Id) : null).Text("subjectBy", Key(match.Subject.Kind))
        .Number("pixelSizeUm", match.Picture.ValidScale?.MicrometresPerPixel)
        .Text("framing", match.Framing.Framing).Text("setUp", match.Framing.SetUp).Text("framingBy", Key(match.Framing.Kind))));

    private static string Key<T>(T kind)
        where T : struct, Enum
    {
        var name = kind.ToString();
        return char.ToLowerInvariant(name[0]) + name[1..];
    }
}
