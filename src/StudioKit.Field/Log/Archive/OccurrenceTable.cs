using StudioKit.Field.Log.Release;
using D = StudioKit.Field.Log.Archive.DarwinCoreTerms;

namespace StudioKit.Field.Log.Archive;

/// <summary>Subjects with their session as Darwin Core occurrences, and back.</summary>
internal static class OccurrenceTable
{
    /// <summary>Short names of the columns.</summary>
    public static readonly string[] Columns =
    [
        "occurrenceID", "basisOfRecord", "occurrenceStatus", "eventID", "eventDate", "fieldNumber", "habitat", "samplingProtocol", "eventRemarks",
        "countryCode", "locality", "minimumElevationInMeters", "maximumElevationInMeters", "decimalLatitude", "decimalLongitude", "geodeticDatum",
        "coordinateUncertaintyInMeters", "dataGeneralizations", "informationWithheld", "scientificName", "identificationQualifier",
        "vernacularName", "taxonRank", "identifiedBy", "sex", "lifeStage", "individualCount", "behavior", "recordedBy", "occurrenceRemarks",
    ];

    public static ArchiveTable Of(LogRelease release) => new(
        "occurrence.csv",
        D.Occurrence,
        [.. Columns.Select(term => D.DarwinCore + term)],
        from session in release.Sessions
        let shared = Array.ConvertAll(Columns, term => session.Record.Of(term)?.Published)
        from subject in session.Subjects
        select (IReadOnlyList<string>)[.. Columns.Select((term, place) => shared[place] ?? subject.Record[term])]);

    /// <summary>Short names of the columns that tell of the session.</summary>
    public static IEnumerable<string> SessionColumns => Columns.Skip(3).Take(14).Append("recordedBy");

    public static FieldSession Session(ArchiveRow row)
    {
        RefuseUnkept(row);
        var dates = row.Needed("eventDate").Split('/');
        return new FieldSession
        {
            Id = row.Needed("eventID"),
            Name = row["fieldNumber"],
            Start = row.Date("eventDate", dates[0]),
            End = dates.Length > 1 && dates[1] != ".." ? row.Date("eventDate", dates[1]) : null,
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
        Id = row.Id,
        SessionId = row["eventID"],
        ScientificName = row["scientificName"],
        IdentificationQualifier = row["identificationQualifier"],
        VernacularName = row["vernacularName"],
        TaxonRank = row["taxonRank"],
        IdentifiedBy = row.Names("identifiedBy"),
        Sex = row["sex"],
        LifeStage = row["lifeStage"],
        IndividualCount = row.Count("individualCount"),
        Behaviour = row["behavior"],
        BasisOfRecord = row.Needed("basisOfRecord"),
        Remarks = row["occurrenceRemarks"],
    };

    // What the log has no place for must not be taken for what it has: an animal looked for in vain, a place on another datum, a range of heights.
    private static void RefuseUnkept(ArchiveRow row)
    {
        row.Only("occurrenceID", row.Id);
        row.Only("occurrenceStatus", "detected", "present");
        row.Only("geodeticDatum", "EPSG:4326", "WGS84");
        row.Only("maximumElevationInMeters", row["minimumElevationInMeters"]);
        if (row["eventDate"].Split('/').Length > 2)
        {
            throw row.Wrong("eventDate", "date or pair of dates", "2026-05-09/2026-05-10");
        }
    }
}
