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
        [
            .. from session in release.Sessions
               from subject in session.Subjects
               select Columns.Select(term => session.Record.Fields.Any(field => field.Term == term) ? session.Record[term] : subject.Record[term]).ToList(),
        ]);

    public static FieldSession Session(ArchiveRow row)
    {
        var dates = row["eventDate"].Split('/');
        return new FieldSession
        {
            Id = row["eventID"],
            Name = row["fieldNumber"],
            Start = ArchiveRow.Date(dates[0]),
            End = dates.Length > 1 && dates[1] != ".." ? ArchiveRow.Date(dates[1]) : null,
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
}
