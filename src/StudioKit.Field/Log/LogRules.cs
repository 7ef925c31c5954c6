using System.Text.RegularExpressions;

namespace StudioKit.Field.Log;

/// <summary>What a record must keep to, each fault named after the Darwin Core term that it breaks.</summary>
public static partial class LogRules
{
    // A camera's clock and the computer's differ by minutes, never by more in anything that should be believed.
    private static readonly TimeSpan ClockSlack = TimeSpan.FromMinutes(10);

    /// <summary>Checks a session.</summary>
    /// <param name="session">The session.</param>
    /// <param name="now">Present moment.</param>
    public static IReadOnlyList<FieldDiagnostic> Check(FieldSession session, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(session);
        return
        [
            .. Unless(session.Latitude is null or (>= -90 and <= 90), "FLD401", "decimalLatitude", "A latitude lies between -90 and 90 degrees."),
            .. Unless(session.Longitude is null or (>= -180 and <= 180), "FLD402", "decimalLongitude", "A longitude lies between -180 and 180 degrees."),
            .. Unless(session.Latitude is null == session.Longitude is null, "FLD403", "decimalLatitude", "Latitude and longitude go together."),
            .. Unless(
                session.CoordinateUncertainty is null or (> 0 and < 20_100_000), "FLD404", "coordinateUncertaintyInMeters",
                "An uncertainty is above zero and below half the Earth's girth; leave it out where it is unknown."),
            .. Unless(session.Elevation is null or (> -500 and < 9000), "FLD405", "minimumElevationInMeters", "No ground lies at this height."),
            .. Unless(!IsInFuture(session.Start, now) && !IsInFuture(session.End, now), "FLD406", "eventDate", "The date lies in the future."),
            .. Unless(session.End is not { } end || !end.IsBefore(session.Start), "FLD407", "eventDate", "The session ends before it starts."),
            .. Unless(
                session.CountryCode.Length == 0 || CountryCode().IsMatch(session.CountryCode), "FLD408", "countryCode",
                "A country code is two capital letters of ISO 3166-1."),
            .. Text("recordedBy", [.. session.RecordedBy]),
            .. Text("eventRemarks", session.Name, session.Locality, session.Habitat, session.SamplingProtocol, session.Remarks),
            .. List("recordedBy", session.RecordedBy),
        ];
    }

    /// <summary>Checks a subject.</summary>
    /// <param name="subject">The subject.</param>
    /// <param name="now">Present moment.</param>
    public static IReadOnlyList<FieldDiagnostic> Check(FieldSubject subject, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(subject);
        return
        [
            .. Unless(
                !Qualifier().IsMatch(subject.ScientificName), "FLD411", "scientificName",
                "A name with cf., aff. or a question mark is not a scientific name; put the doubt into the qualifier."),
            .. Unless(subject.IndividualCount is null or >= 1, "FLD412", "individualCount", "At least one was seen."),
            .. Unless(subject.HoldStart is null || subject.HoldStart <= now + ClockSlack, "FLD413", "hold start", "The date lies in the future."),
            .. Unless(subject.HoldEnd is null || subject.HoldEnd <= now + ClockSlack, "FLD413", "hold end", "The date lies in the future."),
            .. Unless(
                subject.HoldEnd is null || (subject.HoldStart is { } start && subject.HoldEnd >= start), "FLD414", "hold end",
                "The hold ends before it starts."),
            .. Unless(subject.HoldLimit is null || subject.HoldLimit > TimeSpan.Zero, "FLD415", "hold limit", "A limit is above zero."),
            .. Unless(BasisOfRecord().IsMatch(subject.BasisOfRecord), "FLD416", "basisOfRecord", "Darwin Core has no such kind of record."),
            .. Unless(Enum.IsDefined(subject.Sensitivity), "FLD419", "place made coarser", "A place is Open, or coarse by a Hundredth or a Tenth of a degree, or Withheld."),
            .. Text("scientificName", subject.ScientificName, subject.VernacularName, subject.TaxonRank, subject.IdentificationQualifier),
            .. Text("occurrenceRemarks", [subject.Sex, subject.LifeStage, subject.Behaviour, subject.Remarks, .. subject.IdentifiedBy]),
            .. List("identifiedBy", subject.IdentifiedBy),
        ];
    }

    /// <summary>Checks a frame.</summary>
    /// <param name="frame">The frame.</param>
    /// <param name="now">Present moment.</param>
    public static IReadOnlyList<FieldDiagnostic> Check(FieldFrame frame, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(frame);
        double?[] numbers = [frame.ExposureTime, frame.FNumber, frame.Iso, frame.FocalLength, frame.MicrometresPerPixel];
        return
        [
            .. Unless(
                frame.FileName.Length > 0 && frame.FileName.AsSpan().IndexOfAny('/', '\\') < 0, "FLD421", "identifier",
                "A frame has a file name, without any folder."),
            .. Unless(!IsInFuture(frame.Taken, now), "FLD422", "created", "The date lies in the future."),
            .. Unless(
                Array.TrueForAll(numbers, number => number is null || (double.IsFinite(number.Value) && number > 0)), "FLD423", frame.FileName,
                "Exposure time, f-number, ISO speed, focal length and scale are above zero; leave out what is unknown."),
            .. Text("title", frame.FileName, frame.Caption, frame.Creator, frame.Licence, frame.Lens, frame.Framing, frame.SetUp),
        ];
    }

    /// <summary>Checks a measurement.</summary>
    /// <param name="measurement">The measurement.</param>
    public static IReadOnlyList<FieldDiagnostic> Check(FieldMeasurement measurement)
    {
        ArgumentNullException.ThrowIfNull(measurement);
        return
        [
            .. Unless(measurement.Type.Length > 0, "FLD431", "measurementType", "A measurement says what was measured."),
            .. Unless(measurement.Value.Length > 0, "FLD432", "measurementValue", "A measurement has a value."),
            .. Text("measurementValue", measurement.Type, measurement.Value, measurement.Unit, measurement.Accuracy, measurement.Method),
        ];
    }

    /// <summary>Checks every record of a log.</summary>
    /// <param name="log">The log.</param>
    /// <param name="now">Present moment.</param>
    public static IReadOnlyList<FieldDiagnostic> Check(LogSnapshot log, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(log);
        return
        [
            .. log.Sessions.SelectMany(session => Check(session, now)),
            .. log.Subjects.SelectMany(subject => Check(subject, now)),
            .. log.Frames.SelectMany(frame => Check(frame, now)),
            .. log.Measurements.SelectMany(Check),
        ];
    }

    private static bool IsInFuture(FieldDate? date, DateTimeOffset now) => date?.IsAfter(now + ClockSlack) ?? false;

    private static IEnumerable<FieldDiagnostic> Unless(bool holds, string code, string term, string message) =>
        holds ? [] : [new FieldDiagnostic(code, term, message)];

    // Control characters cannot be carried by every format that the log is exported to.
    private static IEnumerable<FieldDiagnostic> Text(string term, params string[] texts) => Unless(
        Array.TrueForAll(texts, text => !text.Any(character => char.IsControl(character) && character is not ('\n' or '\t'))),
        "FLD441", term, "Text holds no control characters but line ends (\\n) and tabs.");

    private static IEnumerable<FieldDiagnostic> List(string term, IReadOnlyList<string> names) => Unless(
        names.All(name => name.Trim().Length > 0 && name == name.Trim() && !name.Contains('|', StringComparison.Ordinal)),
        "FLD442", term, "Names in a list are not blank and hold no vertical bar, which parts them on export.");

    [GeneratedRegex("^[A-Z]{2}$", RegexOptions.None, 1000)]
    private static partial Regex CountryCode();

    [GeneratedRegex(@"(?<![\p{L}.])(cf|aff|nr)\.|\?", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Qualifier();

    [GeneratedRegex(
        "^(HumanObservation|MachineObservation|PreservedSpecimen|LivingSpecimen|MaterialEntity|MaterialSample|FossilSpecimen|Occurrence)$",
        RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex BasisOfRecord();
}
