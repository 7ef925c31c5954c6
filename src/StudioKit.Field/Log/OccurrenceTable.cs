using System.Globalization;
using D = StudioKit.Field.Log.DarwinCoreTerms;

namespace StudioKit.Field.Log;

/// <summary>Subjects with their session as Darwin Core occurrences, and back.</summary>
internal static class OccurrenceTable
{
    private static readonly (string Term, Func<FieldSubject, FieldSession, CoarsePlace, string> Get)[] Columns =
    [
        ("occurrenceID", (subject, _, _) => subject.Id),
        ("basisOfRecord", (subject, _, _) => subject.BasisOfRecord),
        ("occurrenceStatus", (_, _, _) => "detected"),
        ("eventID", (_, session, _) => session.Id),
        ("eventDate", (_, session, _) => EventDate(session)),
        ("fieldNumber", (_, session, _) => session.Name),
        ("habitat", (_, session, _) => session.Habitat),
        ("samplingProtocol", (_, session, _) => session.SamplingProtocol),
        ("eventRemarks", (_, session, _) => session.Remarks),
        ("countryCode", (_, session, _) => session.CountryCode),
        ("locality", (_, session, place) => IsOpen(place) ? session.Locality : ""),
        ("minimumElevationInMeters", (_, session, place) => IsOpen(place) ? Text(session.Elevation) : ""),
        ("maximumElevationInMeters", (_, session, place) => IsOpen(place) ? Text(session.Elevation) : ""),
        ("decimalLatitude", (_, _, place) => Text(place.Latitude)),
        ("decimalLongitude", (_, _, place) => Text(place.Longitude)),
        ("geodeticDatum", (_, _, place) => place.Latitude is null ? "" : "EPSG:4326"),
        ("coordinateUncertaintyInMeters", (_, _, place) => Text(place.Uncertainty)),
        ("dataGeneralizations", (_, _, place) => place.DataGeneralizations),
        ("informationWithheld", (_, _, place) => place.InformationWithheld),
        ("scientificName", (subject, _, _) => subject.ScientificName),
        ("identificationQualifier", (subject, _, _) => subject.IdentificationQualifier),
        ("vernacularName", (subject, _, _) => subject.VernacularName),
        ("taxonRank", (subject, _, _) => subject.TaxonRank),
        ("identifiedBy", (subject, _, _) => string.Join(D.ListSeparator, subject.IdentifiedBy)),
        ("sex", (subject, _, _) => subject.Sex),
        ("lifeStage", (subject, _, _) => subject.LifeStage),
        ("individualCount", (subject, _, _) => subject.IndividualCount?.ToString(CultureInfo.InvariantCulture) ?? ""),
        ("behavior", (subject, _, _) => subject.Behaviour),
        ("recordedBy", (_, session, _) => string.Join(D.ListSeparator, session.RecordedBy)),
        ("occurrenceRemarks", (subject, _, _) => subject.Remarks),
    ];

    public static ArchiveTable Of(LogSnapshot log)
    {
        var sessions = log.Sessions.ToDictionary(session => session.Id, StringComparer.Ordinal);

        // One sensitive subject makes its whole session's place coarser: the others' rows bear the same event and would give it away.
        var places = log.Subjects.GroupBy(subject => subject.SessionId, StringComparer.Ordinal).ToDictionary(
            group => group.Key, group => CoarsePlace.Of(sessions[group.Key], group.Max(subject => subject.Sensitivity)), StringComparer.Ordinal);
        return new ArchiveTable(
            "occurrence.csv",
            D.Occurrence,
            [.. Columns.Select(column => D.DarwinCore + column.Term)],
            [.. log.Subjects.Select(subject => Row(subject, sessions[subject.SessionId], places[subject.SessionId]))]);
    }

    public static FieldSession Session(ArchiveRow row)
    {
        var dates = row["eventDate"].Split('/');
        return new FieldSession
        {
            Id = row["eventID"],
            Name = row["fieldNumber"],
            Start = ArchiveRow.Moment(dates[0]),
            End = dates.Length > 1 && dates[1] != ".." ? ArchiveRow.Moment(dates[1]) : null,
            Locality = row["locality"],
            CountryCode = row["countryCode"],
            Habitat = row["habitat"],
            Latitude = row.Number("decimalLatitude"),
            Longitude = row.Number("decimalLongitude"),
            CoordinateUncertainty = row.Number("coordinateUncertaintyInMeters"),
            Elevation = row.Number("minimumElevationInMeters"),
            RecordedBy = row.Names("recordedBy"),
            SamplingProtocol = row["samplingProtocol"],
            Remarks = row["eventRemarks"],
        };
    }

    public static FieldSubject Subject(ArchiveRow row) => new()
    {
        Id = row["occurrenceID"],
        SessionId = row["eventID"],
        ScientificName = row["scientificName"],
        IdentificationQualifier = row["identificationQualifier"],
        VernacularName = row["vernacularName"],
        TaxonRank = row["taxonRank"],
        IdentifiedBy = row.Names("identifiedBy"),
        Sex = row["sex"],
        LifeStage = row["lifeStage"],
        IndividualCount = row.Number("individualCount") is { } count ? (int)count : null,
        Behaviour = row["behavior"],
        BasisOfRecord = row["basisOfRecord"],
        Remarks = row["occurrenceRemarks"],
    };

    internal static string Text(double? number) => number?.ToString("R", CultureInfo.InvariantCulture) ?? "";

    internal static string Text(DateTimeOffset moment) => moment.ToString("yyyy-MM-ddTHH:mm:ss.FFFFFFFzzz", CultureInfo.InvariantCulture);

    private static bool IsOpen(CoarsePlace place) => place.InformationWithheld.Length == 0;

    private static List<string> Row(FieldSubject subject, FieldSession session, CoarsePlace place) =>
        [.. Columns.Select(column => column.Get(subject, session, place))];

    // An interval of ISO 8601-1; one moment while the session goes on.
    private static string EventDate(FieldSession session) =>
        session.End is { } end ? $"{Text(session.Start)}/{Text(end)}" : Text(session.Start);
}
