using System.Globalization;
using StudioKit.Field.Log;
using StudioKit.FieldFiles.Log;

namespace StudioKit.Benchmarks;

/// <summary>Logs of any length, with outings, animals, pictures and sizes in the proportions of a season's log.</summary>
internal static class InventedLog
{
    private const int SubjectsOfSession = 8;
    private const int FramesOfSubject = 3;

    // A session, its subjects, and of each its frames and one measurement.
    private const int RecordsOfSession = 1 + (SubjectsOfSession * (2 + FramesOfSubject));

    private static readonly (string Scientific, string Everyday, string Rank)[] Kinds =
    [
        ("Dolomedes", "raft spider", "genus"), ("Deilephila elpenor", "elephant hawk-moth", "species"), ("Drosera rotundifolia", "round-leaved sundew", "species"),
        ("Rana temporaria", "common frog", "species"), ("Carabus", "ground beetle", "genus"),
    ];

    private static readonly string[] Places = ["Wisplow Fen", "Harrow Heath", "Mossend Carr", "Reedling Mere"];

    private static readonly DateTimeOffset First = new(2019, 4, 6, 19, 0, 0, TimeSpan.FromHours(1));

    /// <summary>A log of about so many records: a session more or less.</summary>
    public static LogSnapshot Of(int records)
    {
        var sessions = Enumerable.Range(0, Math.Max(1, records / RecordsOfSession)).ToList();
        var subjects = sessions.SelectMany(session => Enumerable.Range(session * SubjectsOfSession, SubjectsOfSession)).ToList();
        return new LogSnapshot(
            [.. sessions.Select(Session)],
            [.. subjects.Select(Subject)],
            [.. subjects.SelectMany(subject => Enumerable.Range(subject * FramesOfSubject, FramesOfSubject)).Select(Frame)],
            [.. subjects.Select(Measurement)]);
    }

    /// <summary>Writes such a log to a file that is not there yet.</summary>
    public static void Write(int records, string path)
    {
        using var log = FieldLog.Open(path, TimeProvider.System, () => "").Value ?? throw new IOException($"{path} cannot be opened.");
        if (log.Save(Of(records), LogAction.Imported) is [var fault, ..])
        {
            throw new IOException(fault.ToString());
        }
    }

    private static string Id(string kind, int number) => string.Create(CultureInfo.InvariantCulture, $"urn:uuid:01900000-{kind}-7000-8000-{number:x12}");

    private static string SessionId(int session) => Id("0001", session);

    private static string SubjectId(int subject) => Id("0002", subject);

    // An evening every day, at one of a few places or near it.
    private static DateTimeOffset Start(int session) => First.AddDays(session % 2400);

    private static FieldSession Session(int session) => new()
    {
        Id = SessionId(session),
        Name = string.Create(CultureInfo.InvariantCulture, $"evening {session + 1}"),
        Start = Start(session),
        End = Start(session).AddHours(3),
        Locality = Places[session % Places.Length],
        CountryCode = "ZZ",
        Habitat = "alkaline fen",
        Latitude = Math.Round(52.6 + (0.0137 * (session % 97)), 5),
        Longitude = Math.Round(-21.5 - (0.0171 * (session % 89)), 5),
        CoordinateUncertainty = 30,
        Elevation = 2,
        RecordedBy = ["A. Sedge", "B. Rush"],
        SamplingProtocol = "white-background portrait",
        Remarks = session % 3 == 0 ? "light rain" : "",
    };

    private static FieldSubject Subject(int subject)
    {
        var (scientific, everyday, rank) = Kinds[subject % Kinds.Length];
        var taken = Start(subject / SubjectsOfSession).AddMinutes(15 * (subject % SubjectsOfSession));
        return new FieldSubject
        {
            Id = SubjectId(subject),
            SessionId = SessionId(subject / SubjectsOfSession),
            ScientificName = scientific,
            VernacularName = everyday,
            TaxonRank = rank,
            IdentifiedBy = ["A. Sedge"],
            LifeStage = "adult",
            IndividualCount = 1,
            Sensitivity = subject % 80 == 0 ? PlaceSensitivity.Tenth : PlaceSensitivity.Open,
            HoldStart = taken,
            HoldEnd = taken.AddMinutes(8),
            HoldLimit = TimeSpan.FromMinutes(10),
            Released = true,
        };
    }

    private static FieldFrame Frame(int frame)
    {
        var subject = frame / FramesOfSubject;
        return new FieldFrame
        {
            SubjectId = SubjectId(subject),
            FileName = string.Create(CultureInfo.InvariantCulture, $"F{frame:000000}.jpg"),
            Taken = Start(subject / SubjectsOfSession).AddMinutes(15 * (subject % SubjectsOfSession)).AddSeconds(20 * (frame % FramesOfSubject)),
            ExposureTime = 0.005,
            FNumber = 11 + (frame % FramesOfSubject),
            Iso = 100,
            FocalLength = 100,
            MicrometresPerPixel = 5.625,
            Caption = frame % FramesOfSubject == 0 ? "from above" : "",
            Creator = "A. Sedge",
            Licence = "https://creativecommons.org/licenses/by/4.0/",
            Framing = "whole animal",
            SetUp = "white",
        };
    }

    private static FieldMeasurement Measurement(int subject) => new()
    {
        Id = Id("0004", subject),
        SubjectId = SubjectId(subject),
        Type = "body length",
        Value = string.Create(CultureInfo.InvariantCulture, $"{5 + (subject % 170 * 0.1):0.0}"),
        Unit = "mm",
        Accuracy = "0.2",
        Method = "from a scaled picture",
    };
}
