using StudioKit.Field.Log;

namespace StudioKit.FieldFiles.Log;

/// <summary>The tables of a log file, version by version.</summary>
internal static class LogSchema
{
    /// <summary>Marks the file as a StudioKit log: the letters SKFL.</summary>
    public const int ApplicationId = 0x534B464C;

    /// <summary>Scripts that bring a file from each version to the next; a file's version is how many have run.</summary>
    public static readonly string[] Steps =
    [
        """
        CREATE TABLE session (
            id TEXT PRIMARY KEY NOT NULL, name TEXT NOT NULL, start TEXT NOT NULL, end TEXT, locality TEXT NOT NULL, country_code TEXT NOT NULL,
            habitat TEXT NOT NULL, latitude REAL, longitude REAL, coordinate_uncertainty REAL, elevation REAL, recorded_by TEXT NOT NULL,
            sampling_protocol TEXT NOT NULL, remarks TEXT NOT NULL);
        CREATE TABLE subject (
            id TEXT PRIMARY KEY NOT NULL, session_id TEXT NOT NULL REFERENCES session (id), scientific_name TEXT NOT NULL,
            identification_qualifier TEXT NOT NULL, vernacular_name TEXT NOT NULL, taxon_rank TEXT NOT NULL, identified_by TEXT NOT NULL,
            sex TEXT NOT NULL, life_stage TEXT NOT NULL, individual_count INTEGER, behaviour TEXT NOT NULL, basis_of_record TEXT NOT NULL,
            sensitivity TEXT NOT NULL, hold_start TEXT, hold_end TEXT, hold_limit REAL, released INTEGER, remarks TEXT NOT NULL);
        CREATE TABLE frame (
            id TEXT PRIMARY KEY NOT NULL, subject_id TEXT NOT NULL REFERENCES subject (id), file_name TEXT NOT NULL, taken TEXT,
            exposure_time REAL, f_number REAL, iso REAL, focal_length REAL, micrometres_per_pixel REAL, caption TEXT NOT NULL,
            creator TEXT NOT NULL, licence TEXT NOT NULL);
        CREATE TABLE measurement (
            id TEXT PRIMARY KEY NOT NULL, subject_id TEXT NOT NULL REFERENCES subject (id), type TEXT NOT NULL, value TEXT NOT NULL,
            unit TEXT NOT NULL, accuracy TEXT NOT NULL, method TEXT NOT NULL);
        CREATE INDEX subject_of_session ON subject (session_id);
        CREATE INDEX frame_of_subject ON frame (subject_id);
        CREATE INDEX measurement_of_subject ON measurement (subject_id);
        """,
        """
        ALTER TABLE frame ADD COLUMN lens TEXT NOT NULL DEFAULT '';
        ALTER TABLE frame ADD COLUMN framing TEXT NOT NULL DEFAULT '';
        ALTER TABLE frame ADD COLUMN set_up TEXT NOT NULL DEFAULT '';
        ALTER TABLE session ADD COLUMN seal TEXT NOT NULL DEFAULT '';
        ALTER TABLE subject ADD COLUMN seal TEXT NOT NULL DEFAULT '';
        ALTER TABLE frame ADD COLUMN seal TEXT NOT NULL DEFAULT '';
        ALTER TABLE measurement ADD COLUMN seal TEXT NOT NULL DEFAULT '';
        CREATE TABLE label (short_id TEXT PRIMARY KEY NOT NULL, kind TEXT NOT NULL, record TEXT NOT NULL, place INTEGER NOT NULL);
        CREATE TABLE change (number INTEGER PRIMARY KEY, at TEXT NOT NULL, action TEXT NOT NULL, target INTEGER);
        CREATE TABLE changed_record (
            change INTEGER NOT NULL REFERENCES change (number), place INTEGER NOT NULL, kind TEXT NOT NULL, short_id TEXT NOT NULL,
            row INTEGER NOT NULL, before TEXT, after TEXT, seal TEXT NOT NULL);
        CREATE INDEX changed_record_of_change ON changed_record (change);
        CREATE INDEX label_of_record ON label (record);
        """,
    ];

    /// <summary>The version that this program writes.</summary>
    public static int Version => Steps.Length;

    public static readonly LogTable<FieldSession> Sessions = new(
        LogRecordKind.Session,
        [
            ("id", s => s.Id), ("name", s => s.Name), ("start", s => s.Start), ("end", s => s.End), ("locality", s => s.Locality),
            ("country_code", s => s.CountryCode), ("habitat", s => s.Habitat), ("latitude", s => s.Latitude), ("longitude", s => s.Longitude),
            ("coordinate_uncertainty", s => s.CoordinateUncertainty), ("elevation", s => s.Elevation), ("recorded_by", s => s.RecordedBy),
            ("sampling_protocol", s => s.SamplingProtocol), ("remarks", s => s.Remarks),
        ],
        row => new FieldSession
        {
            Id = row.Text("id"),
            Name = row.Text("name"),
            Start = row.Date("start") ?? throw new LogValueException("start", "holds no date"),
            End = row.Date("end"),
            Locality = row.Text("locality"),
            CountryCode = row.Text("country_code"),
            Habitat = row.Text("habitat"),
            Latitude = row.Number("latitude"),
            Longitude = row.Number("longitude"),
            CoordinateUncertainty = row.Number("coordinate_uncertainty"),
            Elevation = row.Number("elevation"),
            RecordedBy = row.Names("recorded_by"),
            SamplingProtocol = row.Text("sampling_protocol"),
            Remarks = row.Text("remarks"),
        });

    public static readonly LogTable<FieldSubject> Subjects = new(
        LogRecordKind.Subject,
        [
            ("id", s => s.Id), ("session_id", s => s.SessionId), ("scientific_name", s => s.ScientificName),
            ("identification_qualifier", s => s.IdentificationQualifier), ("vernacular_name", s => s.VernacularName),
            ("taxon_rank", s => s.TaxonRank), ("identified_by", s => s.IdentifiedBy), ("sex", s => s.Sex), ("life_stage", s => s.LifeStage),
            ("individual_count", s => s.IndividualCount), ("behaviour", s => s.Behaviour), ("basis_of_record", s => s.BasisOfRecord),
            ("sensitivity", s => s.Sensitivity), ("hold_start", s => s.HoldStart), ("hold_end", s => s.HoldEnd),
            ("hold_limit", s => s.HoldLimit), ("released", s => s.Released), ("remarks", s => s.Remarks),
        ],
        row => new FieldSubject
        {
            Id = row.Text("id"),
            SessionId = row.Text("session_id"),
            ScientificName = row.Text("scientific_name"),
            IdentificationQualifier = row.Text("identification_qualifier"),
            VernacularName = row.Text("vernacular_name"),
            TaxonRank = row.Text("taxon_rank"),
            IdentifiedBy = row.Names("identified_by"),
            Sex = row.Text("sex"),
            LifeStage = row.Text("life_stage"),
            IndividualCount = row.Count("individual_count"),
            Behaviour = row.Text("behaviour"),
            BasisOfRecord = row.Text("basis_of_record"),
            Sensitivity = row.Sensitivity("sensitivity"),
            HoldStart = row.Moment("hold_start"),
            HoldEnd = row.Moment("hold_end"),
            HoldLimit = row.Span("hold_limit"),
            Released = row.Flag("released"),
            Remarks = row.Text("remarks"),
        });

    public static readonly LogTable<FieldFrame> Frames = new(
        LogRecordKind.Frame,
        [
            ("id", f => f.Id), ("subject_id", f => f.SubjectId), ("file_name", f => f.FileName), ("taken", f => f.Taken),
            ("exposure_time", f => f.ExposureTime), ("f_number", f => f.FNumber), ("iso", f => f.Iso), ("focal_length", f => f.FocalLength),
            ("micrometres_per_pixel", f => f.MicrometresPerPixel), ("caption", f => f.Caption), ("creator", f => f.Creator), ("licence", f => f.Licence),
            ("lens", f => f.Lens), ("framing", f => f.Framing), ("set_up", f => f.SetUp),
        ],
        row => new FieldFrame
        {
            SubjectId = row.Text("subject_id"),
            FileName = row.Text("file_name"),
            Taken = row.Date("taken"),
            ExposureTime = row.Number("exposure_time"),
            FNumber = row.Number("f_number"),
            Iso = row.Number("iso"),
            FocalLength = row.Number("focal_length"),
            MicrometresPerPixel = row.Number("micrometres_per_pixel"),
            Caption = row.Text("caption"),
            Creator = row.Text("creator"),
            Licence = row.Text("licence"),
            Lens = row.TextOrEmpty("lens"),
            Framing = row.TextOrEmpty("framing"),
            SetUp = row.TextOrEmpty("set_up"),
        });

    public static readonly LogTable<FieldMeasurement> Measurements = new(
        LogRecordKind.Measurement,
        [
            ("id", m => m.Id), ("subject_id", m => m.SubjectId), ("type", m => m.Type), ("value", m => m.Value), ("unit", m => m.Unit),
            ("accuracy", m => m.Accuracy), ("method", m => m.Method),
        ],
        row => new FieldMeasurement
        {
            Id = row.Text("id"),
            SubjectId = row.Text("subject_id"),
            Type = row.Text("type"),
            Value = row.Text("value"),
            Unit = row.Text("unit"),
            Accuracy = row.Text("accuracy"),
            Method = row.Text("method"),
        });

    /// <summary>All tables, each after those that its rows belong to.</summary>
    public static readonly StoredRows[] Tables = [Sessions, Subjects, Frames, Measurements];

    /// <summary>The table of a kind of record.</summary>
    public static StoredRows Of(LogRecordKind kind) => Tables[(int)kind];
}
