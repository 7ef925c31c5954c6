using StudioKit.Field.Log;

namespace StudioKit.Field.Tests.Log;

/// <summary>Invented records; the place lies in the open ocean, in a country code that ISO 3166-1 leaves to its users.</summary>
internal static class LogSamples
{
    public static readonly DateTimeOffset Now = new(2026, 5, 9, 18, 0, 0, TimeSpan.Zero);

    public static readonly FieldSession Session = new()
    {
        Id = "session-1",
        Name = "Wisplow Fen, evening",
        Start = new DateTimeOffset(2026, 5, 9, 14, 0, 0, TimeSpan.FromHours(1)),
        End = new DateTimeOffset(2026, 5, 9, 17, 30, 0, TimeSpan.FromHours(1)),
        Locality = "Boardwalk, \"north\" end,\nsecond post",
        CountryCode = "ZZ",
        Habitat = "alkaline fen",
        Latitude = 52.61234,
        Longitude = -21.54321,
        CoordinateUncertainty = 30,
        Elevation = 2,
        RecordedBy = ["A. Sedge", "B. Rush"],
        SamplingProtocol = "white-background portrait",
        Remarks = "light rain",
    };

    public static readonly FieldSubject Subject = new()
    {
        Id = "subject-1",
        SessionId = "session-1",
        ScientificName = "Dolomedes",
        IdentificationQualifier = "cf. plantarius",
        VernacularName = "raft spider",
        TaxonRank = "genus",
        IdentifiedBy = ["A. Sedge"],
        Sex = "female",
        LifeStage = "adult",
        IndividualCount = 1,
        Behaviour = "sat on a leaf",
        HoldStart = new DateTimeOffset(2026, 5, 9, 14, 10, 0, TimeSpan.FromHours(1)),
        HoldEnd = new DateTimeOffset(2026, 5, 9, 14, 18, 30, TimeSpan.FromHours(1)),
        HoldLimit = TimeSpan.FromMinutes(10),
        Released = true,
        Remarks = "= calm",
    };

    public static readonly FieldFrame Frame = new()
    {
        SubjectId = "subject-1",
        FileName = "spider-001.jpg",
        Taken = new DateTimeOffset(2026, 5, 9, 14, 12, 3, TimeSpan.FromHours(1)),
        ExposureTime = 0.005,
        FNumber = 16,
        Iso = 100,
        FocalLength = 100,
        MicrometresPerPixel = 5.625,
        Caption = "Raft spider, from above",
        Creator = "A. Sedge",
        Licence = "https://creativecommons.org/licenses/by/4.0/",
    };

    public static readonly FieldMeasurement Measurement = new()
    {
        Id = "measurement-1",
        SubjectId = "subject-1",
        Type = "body length",
        Value = "18.5",
        Unit = "mm",
        Accuracy = "0.2",
        Method = "from a scaled picture",
    };

    public static LogSnapshot Snapshot => new([Session], [Subject], [Frame], [Measurement]);
}
