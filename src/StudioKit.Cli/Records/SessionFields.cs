using StudioKit.Field.Log;

namespace StudioKit.Cli.Records;

/// <summary>The fields of a session as options.</summary>
internal static class SessionFields
{
    public static RecordFields<FieldSession> Create(CommandHost host) => new RecordFields<FieldSession>(host)
        .Date("--start", "When it began, e.g. 2026-05-09T14:00, 2026-05-09T14:00+01:00, or 2026-05-09 where no more is known; left out, a new session begins now.", (session, value) => session with { Start = value }, null)
        .Date("--end", "When it ended, e.g. 2026-05-09T17:30.", (session, value) => session with { End = value }, session => session with { End = null })
        .Words("--name", "Name in your notes, e.g. \"Wisplow Fen, evening\".", (session, value) => session with { Name = value })
        .Words("--locality", "The place in words, e.g. \"boardwalk, north end\".", (session, value) => session with { Locality = value })
        .Words("--habitat", "Habitat in words, e.g. \"alkaline fen\".", (session, value) => session with { Habitat = value })
        .Words("--country", "Country, two letters of ISO 3166-1, e.g. ZZ.", (session, value) => session with { CountryCode = value })
        .Words("--protocol", "How subjects were found and portrayed, e.g. \"white-background portrait\".", (session, value) => session with { SamplingProtocol = value })
        .Words("--remarks", "Anything else, e.g. \"light rain\".", (session, value) => session with { Remarks = value })
        .Number("--latitude", "Latitude on WGS 84, degrees, e.g. 52.612.", (session, value) => session with { Latitude = value })
        .Number("--longitude", "Longitude on WGS 84, degrees, e.g. -21.543.", (session, value) => session with { Longitude = value })
        .Number("--uncertainty-m", "Radius that holds the place, m, e.g. 30.", (session, value) => session with { CoordinateUncertainty = value })
        .Number("--elevation-m", "Height above sea level, m, e.g. 12.", (session, value) => session with { Elevation = value })
        .Names("--recorded-by", "Who was there, once for each, e.g. \"A. Sedge\".", (session, value) => session with { RecordedBy = value });
}
