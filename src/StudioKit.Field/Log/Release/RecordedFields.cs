using System.Globalization;

namespace StudioKit.Field.Log.Release;

/// <summary>The fields of each kind of record, in the order of the archive's columns, each with how it can tell a place.</summary>
internal static class RecordedFields
{
    /// <summary>Terms of a measurement.</summary>
    public static readonly string[] MeasurementTerms = ["measurementType", "measurementValue", "measurementUnit", "measurementAccuracy", "measurementMethod"];

    public static IReadOnlyList<RecordedField> Of(FieldSession session, PlaceCell? cell) =>
    [
        new("eventID", session.Id, PlaceClue.Identifier, () => NeutralName.OfSession(session.Id)),
        new("eventDate", RecordText.EventDate(session), PlaceClue.Day, () => RecordText.EventDays(session)),
        new("fieldNumber", session.Name, PlaceClue.Words),
        new("habitat", session.Habitat, PlaceClue.Words),
        new("samplingProtocol", session.SamplingProtocol, PlaceClue.Words),
        new("eventRemarks", session.Remarks, PlaceClue.Words),
        new("countryCode", session.CountryCode),
        new("locality", session.Locality, PlaceClue.Place),
        new("minimumElevationInMeters", RecordText.Of(session.Elevation), PlaceClue.Place),
        new("maximumElevationInMeters", RecordText.Of(session.Elevation), PlaceClue.Place),
        new("decimalLatitude", RecordText.Of(session.Latitude), PlaceClue.Coordinate, () => cell is null ? "" : RecordText.Of(cell.Latitude)),
        new("decimalLongitude", RecordText.Of(session.Longitude), PlaceClue.Coordinate, () => cell is null ? "" : RecordText.Of(cell.Longitude)),
        new("geodeticDatum", session.Latitude is null ? "" : "EPSG:4326", PlaceClue.Coordinate, () => "EPSG:4326"),

        // A cell has a radius whether or not the place had an uncertainty.
        new(
            "coordinateUncertaintyInMeters",
            session.CoordinateUncertainty is null && cell is not null ? "unknown" : RecordText.Of(session.CoordinateUncertainty),
            PlaceClue.Coordinate, () => cell?.Radius.ToString(CultureInfo.InvariantCulture) ?? ""),
        new("recordedBy", RecordText.Of(session.RecordedBy), PlaceClue.Names),
    ];

    /// <summary>What a subject is called.</summary>
    public static RecordedField IdentifierOf(FieldSubject subject) => new("occurrenceID", subject.Id, PlaceClue.Identifier, () => NeutralName.Of(subject.Id, subject.SessionId));

    public static IReadOnlyList<RecordedField> Of(FieldSubject subject) =>
    [
        IdentifierOf(subject),
        new("basisOfRecord", subject.BasisOfRecord),
        new("occurrenceStatus", "detected"),
        new("scientificName", subject.ScientificName, PlaceClue.Taxon),
        new("identificationQualifier", subject.IdentificationQualifier, PlaceClue.Names),
        new("vernacularName", subject.VernacularName, PlaceClue.Names),
        new("taxonRank", subject.TaxonRank, PlaceClue.Names),
        new("identifiedBy", RecordText.Of(subject.IdentifiedBy), PlaceClue.Names),
        new("sex", subject.Sex, PlaceClue.Names),
        new("lifeStage", subject.LifeStage, PlaceClue.Names),
        new("individualCount", subject.IndividualCount?.ToString(CultureInfo.InvariantCulture) ?? ""),
        new("behavior", subject.Behaviour, PlaceClue.Words),
        new("occurrenceRemarks", subject.Remarks, PlaceClue.Words),
    ];

    /// <summary>What Darwin Core has no terms for and is exported as measurements.</summary>
    public static IReadOnlyList<RecordedField> FactsOf(FieldSubject subject) =>
    [
        new(SubjectFacts.HoldStart, RecordText.Of(subject.HoldStart), PlaceClue.Moment),
        new(SubjectFacts.HoldEnd, RecordText.Of(subject.HoldEnd), PlaceClue.Moment),
        new(SubjectFacts.HoldLimit, RecordText.Of(subject.HoldLimit?.TotalSeconds)),
        new(SubjectFacts.Released, subject.Released is { } released ? released ? "true" : "false" : ""),
        new(SubjectFacts.Sensitivity, subject.Sensitivity == PlaceSensitivity.Open ? "" : subject.Sensitivity.ToString()),
    ];

    public static IReadOnlyList<RecordedField> Of(FieldFrame frame, string folder, Func<string> publishedAddress) =>
    [
        new("identifier", folder + frame.FileName, PlaceClue.Identifier, publishedAddress),
        new("type", "StillImage"),
        new("format", MediaType(frame.FileName)),
        new("created", RecordText.Of(frame.Taken), PlaceClue.Moment),
        new("title", frame.Caption, PlaceClue.Words),
        new("creator", frame.Creator, PlaceClue.Names),
        new("license", frame.Licence, PlaceClue.Names),
    ];

    public static IReadOnlyList<RecordedField> FactsOf(FieldFrame frame) =>
    [
        new(FrameFacts.ExposureTime, RecordText.Of(frame.ExposureTime)),
        new(FrameFacts.FNumber, RecordText.Of(frame.FNumber)),
        new(FrameFacts.IsoSpeed, RecordText.Of(frame.Iso)),
        new(FrameFacts.FocalLength, RecordText.Of(frame.FocalLength)),
        new(FrameFacts.PixelSize, RecordText.Of(frame.MicrometresPerPixel)),
        new(FrameFacts.Lens, frame.Lens, PlaceClue.Names),
        new(FrameFacts.Framing, frame.Framing, PlaceClue.Words),
        new(FrameFacts.SetUp, frame.SetUp, PlaceClue.Words),
    ];

    public static IReadOnlyList<RecordedField> Of(FieldMeasurement measurement, string sessionId) =>
    [
        new("measurementID", measurement.Id, PlaceClue.Identifier, () => NeutralName.Of(measurement.Id, sessionId)),
        new("measurementType", measurement.Type, PlaceClue.Words),
        new("measurementValue", measurement.Value, PlaceClue.Words),
        new("measurementUnit", measurement.Unit, PlaceClue.Words),
        new("measurementAccuracy", measurement.Accuracy, PlaceClue.Words),
        new("measurementMethod", measurement.Method, PlaceClue.Words),
    ];

    private static string MediaType(string fileName) => Path.GetExtension(fileName).ToUpperInvariant() switch
    {
        ".JPG" or ".JPEG" => "image/jpeg",
        ".PNG" => "image/png",
        ".TIF" or ".TIFF" => "image/tiff",
        _ => "",
    };
}
